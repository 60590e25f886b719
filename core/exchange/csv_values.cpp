// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/csv_values.h"

#include "core/exchange/blanks.h"

#include <charconv>
#include <cmath>

namespace padside {

namespace {

template <typename Value> std::optional<Value> readWhole(std::string_view text)
{
    Value value{};
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc() || read.ptr != text.data() + text.size())
        return std::nullopt;
    return value;
}

} // namespace

Result<std::size_t> CsvValues::column(std::string_view name) const
{
    if (const auto place = m_table.column(name))
        return *place;
    std::string there;
    for (const std::string& one : m_table.columns)
        there += (there.empty() ? "" : ", ") + one;
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("{0} has no column “{1}”; its columns are: {2}. Name it in the first line."),
                   {m_table.name, std::string(name), there});
}

Result<double> CsvValues::number(const CsvRow& row, std::size_t column) const
{
    const auto value = readWhole<double>(withoutBlanks(row.cells[column]));
    if (!value || !std::isfinite(*value))
        return refuse(row, PADSIDE_SAY("{0}, line {1}: “{2}” in the column “{3}” is not a number. Write it like 12.5."),
                      {row.cells[column], m_table.columns[column]});
    return *value;
}

Result<std::int64_t> CsvValues::wholeNumber(const CsvRow& row, std::size_t column, std::int64_t least,
                                            std::int64_t most) const
{
    const auto value = readWhole<std::int64_t>(withoutBlanks(row.cells[column]));
    if (!value || *value < least || *value > most)
        return refuse(row,
                      PADSIDE_SAY("{0}, line {1}: “{2}” in the column “{3}” is not a whole number from {4} to {5}."),
                      {row.cells[column], m_table.columns[column], least, most});
    return *value;
}

tl::unexpected<Problem> CsvValues::refuse(const CsvRow& row, std::string pattern,
                                          const std::vector<Argument>& more) const
{
    std::vector<Argument> arguments{m_table.name, static_cast<std::int64_t>(row.line)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return problem(ProblemKind::badInput, std::move(pattern), std::move(arguments));
}

} // namespace padside
