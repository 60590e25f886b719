// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/csv.h"

#include "core/exchange/blanks.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/utf8.h"

#include <algorithm>
#include <charconv>

namespace padside {

namespace {

std::int64_t lineNumber(std::size_t line)
{
    return static_cast<std::int64_t>(line);
}

/// Nothing where the text is UTF-8 throughout.
std::optional<Problem> encodingProblem(std::string_view text, const std::string& name)
{
    const std::size_t good = utf8Length(text);
    if (good == text.size())
        return std::nullopt;
    const auto line = std::ranges::count(text.substr(0, good), '\n') + 1;
    return Problem{ProblemKind::badInput,
                   {PADSIDE_SAY("{0}, line {1}: this is not UTF-8 text. Save the file as “CSV UTF-8” and try again."),
                    {name, static_cast<std::int64_t>(line)}}};
}

std::optional<Problem> headingProblem(const CsvRow& heading, const std::vector<std::string>& columns,
                                      const std::string& name)
{
    const auto refuse = [&](std::string pattern, std::vector<Argument> more) {
        std::vector<Argument> arguments{name, lineNumber(heading.line)};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return Problem{ProblemKind::badInput, {std::move(pattern), std::move(arguments)}};
    };
    if (columns.size() == 1 && columns.front().find_first_of(";\t") != std::string::npos)
        return refuse(
            PADSIDE_SAY("{0}, line {1}: the values are not separated by commas. Save the file with commas and decimal "
                        "points."),
            {});
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].empty())
            return refuse(PADSIDE_SAY("{0}, line {1}: column {2} has no name. The first line must name every column."),
                          {lineNumber(i + 1)});
        if (std::count(columns.begin(), columns.end(), columns[i]) > 1)
            return refuse(PADSIDE_SAY("{0}, line {1}: the column “{2}” is there twice. Leave only one of them."),
                          {columns[i]});
    }
    return std::nullopt;
}

/// The line of column names; its own faults are those of the whole file.
Result<std::vector<std::string>> readHeading(CsvReader& reader, const std::string& name)
{
    reader.skipEmptyLines();
    if (reader.atEnd())
        return problem(ProblemKind::badInput, PADSIDE_SAY("{0} is empty. Its first line must name the columns."),
                       {name});
    const Result<CsvRow> row = reader.next();
    if (!row)
        return tl::unexpected(row.error());
    std::vector<std::string> columns;
    std::ranges::transform(row->cells, std::back_inserter(columns),
                           [](const std::string& cell) { return std::string(withoutBlanks(cell)); });
    if (const auto bad = headingProblem(*row, columns, name))
        return tl::unexpected(*bad);
    return columns;
}

/// Nothing where the row has as many cells as the table has columns.
std::optional<Problem> lengthProblem(const CsvRow& row, const CsvTable& table)
{
    if (row.cells.size() == table.columns.size())
        return std::nullopt;
    return Problem{
        ProblemKind::badInput,
        {PADSIDE_SAY("{0}, line {1}: values in this line: {2}, but columns: {3}. Make them agree."),
         {table.name, lineNumber(row.line), lineNumber(row.cells.size()), lineNumber(table.columns.size())}}};
}

/// Nothing where all cells are UTF-8.
std::optional<Problem> cellEncodingProblem(const CsvRow& row, const std::string& name)
{
    for (const std::string& cell : row.cells) {
        if (utf8Length(cell) != cell.size())
            return Problem{ProblemKind::badInput,
                           {PADSIDE_SAY("{0}, line {1}: this is not UTF-8 text. Save the file as “CSV UTF-8” and try "
                                        "again."),
                            {name, lineNumber(row.line)}}};
    }
    return std::nullopt;
}

bool isNumber(std::string_view text)
{
    if (text.starts_with('+'))
        text.remove_prefix(1);
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    return read.ec == std::errc() && read.ptr == text.data() + text.size();
}

} // namespace

std::optional<std::size_t> CsvTable::column(std::string_view columnName) const
{
    const auto found = std::ranges::find(columns, columnName);
    if (found == columns.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - columns.begin());
}

Result<CsvTable> readCsv(std::string_view text, std::string name)
{
    if (const auto bad = encodingProblem(text, name))
        return tl::unexpected(*bad);
    CsvTable table{std::move(name), {}, {}};
    CsvReader reader(text, table.name);
    Result<std::vector<std::string>> columns = readHeading(reader, table.name);
    if (!columns)
        return tl::unexpected(columns.error());
    table.columns = std::move(*columns);
    for (reader.skipEmptyLines(); !reader.atEnd(); reader.skipEmptyLines()) {
        Result<CsvRow> row = reader.next();
        if (!row)
            return tl::unexpected(row.error());
        if (const auto bad = lengthProblem(*row, table))
            return tl::unexpected(*bad);
        table.rows.push_back(std::move(*row));
    }
    return table;
}

Result<CsvSalvage> salvageCsv(std::string_view text, std::string name)
{
    CsvSalvage salvage{CsvTable{std::move(name), {}, {}}, {}};
    CsvTable& table = salvage.table;
    CsvReader reader(text, table.name);
    Result<std::vector<std::string>> columns = readHeading(reader, table.name);
    if (!columns)
        return tl::unexpected(columns.error());
    table.columns = std::move(*columns);
    for (const std::string& column : table.columns) {
        if (utf8Length(column) != column.size())
            return tl::unexpected(*encodingProblem(text, table.name));
    }
    for (reader.skipEmptyLines(); !reader.atEnd(); reader.skipEmptyLines()) {
        const std::size_t line = reader.line();
        Result<CsvRow> row = reader.next();
        if (!row) {
            salvage.faults.push_back({line, row.error().what});
            reader.passBadRow();
            continue;
        }
        auto bad = cellEncodingProblem(*row, table.name);
        if (!bad)
            bad = lengthProblem(*row, table);
        if (bad)
            salvage.faults.push_back({line, std::move(bad->what)});
        else
            table.rows.push_back(std::move(*row));
    }
    return salvage;
}

std::string csvLine(std::span<const std::string> cells)
{
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string cell = cells[i];
        if (!cell.empty() && std::string_view("=+-@\t\r").find(cell.front()) != std::string_view::npos
            && !isNumber(cell))
            cell.insert(0, 1, '\'');
        const bool alone = cells.size() == 1 && cell.empty(); // an empty line would be no row
        const bool quoted = alone || cell.find_first_of(",\"\r\n") != std::string::npos || cell.starts_with(' ')
            || cell.ends_with(' ');
        if (i > 0)
            line += ',';
        if (quoted)
            line += '"';
        for (const char character : cell) {
            if (character == '"')
                line += '"';
            line += character;
        }
        if (quoted)
            line += '"';
    }
    return line + "\r\n";
}

} // namespace padside
