// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/check_rows.h"

#include <sstream>
#include <stdexcept>

namespace padside::test {

namespace {

std::vector<std::string> piecesOf(const std::string& text)
{
    std::vector<std::string> all;
    std::istringstream stream(text + ';');
    for (std::string piece; std::getline(stream, piece, ';');)
        all.push_back(piece);
    return all;
}

} // namespace

CheckRow::CheckRow(const ReferenceTable& table, std::size_t row)
    : wanted(table.text(row, "wanted"))
    , tolerance(table.number(row, "tolerance"))
    , what(table.text(row, "topic") + " " + table.text(row, "given") + " " + wanted + " (" + table.text(row, "source")
           + ")")
{
    for (const std::string& one : piecesOf(table.text(row, "given"))) {
        const auto equals = one.find('=');
        m_given[one.substr(0, equals)] = one.substr(equals + 1);
    }
    if (!table.text(row, "expected").empty())
        expected = table.number(row, "expected");
}

std::vector<CheckRow> checkRows(const std::string& fileName, const std::string& topic)
{
    const ReferenceTable table(fileName);
    std::vector<CheckRow> all;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        if (table.text(row, "topic") == topic)
            all.emplace_back(table, row);
    }
    if (all.empty())
        throw std::runtime_error("no rows of " + topic + " in " + fileName);
    return all;
}

} // namespace padside::test
