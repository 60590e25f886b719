// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"

#include "core/exchange/csv.h"
#include "core/exchange/json_rows.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <ostream>

namespace padside {

namespace {

const std::map<std::string, AnswerForm>& formNames()
{
    static const std::map<std::string, AnswerForm> names{{"table", AnswerForm::table},
                                                         {"json", AnswerForm::json},
                                                         {"csv", AnswerForm::csv},
                                                         {"ics", AnswerForm::icalendar}};
    return names;
}

std::string cellText(const nlohmann::ordered_json& row, const std::string& key)
{
    const auto cell = row.find(key);
    if (cell == row.end() || cell->is_null())
        return "";
    if (cell->is_string())
        return cell->get<std::string>();
    if (cell->is_array()) {
        std::string joined;
        for (const auto& item : *cell)
            joined += (joined.empty() ? "" : " ") + (item.is_string() ? item.get<std::string>() : item.dump());
        return joined;
    }
    return cell->dump();
}

/// Width in characters, not bytes: what UTF-8 continues is not counted.
std::size_t widthOf(const std::string& text)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0) != 0x80; }));
}

void writeTable(const Answer& answer, std::ostream& out)
{
    if (answer.rows.empty()) {
        out << answer.whenEmpty << '\n';
        return;
    }
    std::vector<std::size_t> widths;
    for (const auto& column : answer.shown) {
        std::size_t width = widthOf(column.heading);
        for (const auto& row : answer.rows)
            width = std::max(width, widthOf(cellText(row, column.key)));
        widths.push_back(width);
    }
    const auto line = [&](const auto& textOf) {
        std::string text;
        for (std::size_t i = 0; i < answer.shown.size(); ++i) {
            const std::string cell = textOf(answer.shown[i]);
            text += cell;
            if (i + 1 < answer.shown.size())
                text += std::string(widths[i] - widthOf(cell) + 2, ' ');
        }
        out << text << '\n';
    };
    line([](const Answer::Shown& column) { return column.heading; });
    for (const auto& row : answer.rows)
        line([&](const Answer::Shown& column) { return cellText(row, column.key); });
}

void writeCsv(const Answer& answer, std::ostream& out)
{
    out << csvLine(answer.keys);
    for (const auto& row : answer.rows) {
        std::vector<std::string> cells;
        for (const std::string& key : answer.keys)
            cells.push_back(cellText(row, key));
        out << csvLine(cells);
    }
}

} // namespace

void addFormOption(CLI::App& command, AnswerForm& form, const std::vector<AnswerForm>& forms)
{
    std::map<std::string, AnswerForm> names;
    std::string shownNames;
    for (const auto& [name, value] : formNames()) {
        if (std::ranges::count(forms, value) == 0)
            continue;
        names.emplace(name, value);
        shownNames += (shownNames.empty() ? "" : "|") + name;
    }
    command.add_option("--as", form, "how to write the answer")
        ->transform(CLI::CheckedTransformer(names))
        ->type_name(shownNames)
        ->default_str("table");
}

void write(const Answer& answer, AnswerForm form, std::ostream& out)
{
    switch (form) {
    case AnswerForm::table:
        writeTable(answer, out);
        break;
    case AnswerForm::csv:
        writeCsv(answer, out);
        break;
    case AnswerForm::json:
    case AnswerForm::icalendar:
        out << nlohmann::ordered_json(answer.rows).dump(2) << '\n';
        break;
    }
}

} // namespace padside
