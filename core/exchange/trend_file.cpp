// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/trend_file.h"

#include "core/exchange/csv_values.h"
#include "core/trend/theil_sen.h"

namespace padside {

Result<std::vector<TrendPoint>> readTrendFile(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    const CsvValues values(*table);
    const auto timeColumn = values.column("t_days");
    const auto valueColumn = values.column("y");
    if (!timeColumn || !valueColumn)
        return tl::unexpected(timeColumn ? valueColumn.error() : timeColumn.error());
    if (table->rows.empty())
        return problem(ProblemKind::badInput, PADSIDE_SAY("{0} has no values below its first line. Add at least one."),
                       {table->name});
    if (table->rows.size() > mostTrendPoints)
        return problem(
            ProblemKind::badInput, PADSIDE_SAY("{0} has {1} values; a trend is worked out for at most {2}."),
            {table->name, static_cast<std::int64_t>(table->rows.size()), static_cast<std::int64_t>(mostTrendPoints)});

    std::vector<TrendPoint> points;
    points.reserve(table->rows.size());
    for (const CsvRow& row : table->rows) {
        const auto time = values.number(row, *timeColumn);
        const auto value = values.number(row, *valueColumn);
        if (!time || !value)
            return tl::unexpected(time ? value.error() : time.error());
        points.push_back({*time, *value});
    }
    return points;
}

} // namespace padside
