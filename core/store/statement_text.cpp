// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/statement_text.h"

#include <vector>

namespace padside {

namespace {

std::vector<std::string> splitColumns(std::string_view columns)
{
    std::vector<std::string> names;
    while (!columns.empty()) {
        const std::size_t comma = columns.find(", ");
        names.emplace_back(columns.substr(0, comma));
        columns = comma == std::string_view::npos ? std::string_view() : columns.substr(comma + 2);
    }
    return names;
}

} // namespace

std::string selectText(std::string_view columns, std::string_view rest)
{
    return "SELECT " + std::string(columns) + " FROM " + std::string(rest);
}

QString insertText(std::string_view table, std::string_view columns)
{
    std::string places;
    for (std::size_t i = 0; i < splitColumns(columns).size(); ++i)
        places += i == 0 ? "?" : ", ?";
    return QString::fromStdString("INSERT INTO " + std::string(table) + " (" + std::string(columns) + ") VALUES ("
                                  + places + ")");
}

QString upsertText(std::string_view table, std::string_view columns, std::string_view key)
{
    std::string sets;
    for (const std::string& name : splitColumns(columns))
        sets.append(sets.empty() ? "" : ", ").append(name).append(" = excluded.").append(name);
    return insertText(table, columns)
        + QString::fromStdString(" ON CONFLICT (" + std::string(key) + ") DO UPDATE SET " + sets);
}

} // namespace padside
