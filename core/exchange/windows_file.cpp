// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/windows_file.h"

#include "core/exchange/csv_values.h"

#include <array>

namespace padside {

namespace {

Date dayOf(std::int64_t number)
{
    return Date(std::chrono::days(number));
}

} // namespace

Result<WindowsFile> readWindowsFile(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    const CsvValues values(*table);
    std::array<std::size_t, 4> columns{};
    constexpr std::array<std::string_view, 4> columnNames{"id", "unit", "lo", "hi"};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto column = values.column(columnNames[i]);
        if (!column)
            return tl::unexpected(column.error());
        columns[i] = *column;
    }

    WindowsFile file;
    for (const CsvRow& row : table->rows) {
        const auto low = values.wholeNumber(row, columns[2], -farthestDay, farthestDay);
        const auto high = values.wholeNumber(row, columns[3], -farthestDay, farthestDay);
        if (!low || !high)
            return tl::unexpected(low ? high.error() : low.error());
        if (*high < *low)
            return values.refuse(
                row, PADSIDE_SAY("{0}, line {1}: the window ends on day {3}, before it begins on day {2}. Swap them."),
                {*low, *high});
        file.ids.push_back(row.cells[columns[0]]);
        file.units.push_back(row.cells[columns[1]]);
        file.windows.push_back({dayOf(*low), dayOf(*high)});
    }
    return file;
}

} // namespace padside
