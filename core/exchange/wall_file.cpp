// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/wall_file.h"

#include "core/exchange/blanks.h"
#include "core/exchange/csv_values.h"

#include <algorithm>
#include <set>

namespace padside {

namespace {

struct DatedWall
{
    Date on;
    double thicknessM = 0;
};

Result<DatedWall> wallOf(const CsvValues& values, const CsvRow& row, std::size_t dateColumn, std::size_t wallColumn)
{
    constexpr double mostMm = 1000;
    const auto on = parseDate(withoutBlanks(row.cells[dateColumn]));
    if (!on)
        return values.refuse(row, PADSIDE_SAY("{0}, line {1}: “{2}” is no date. Write it like 2026-05-04."),
                             {row.cells[dateColumn]});
    const auto wall = values.number(row, wallColumn);
    if (!wall)
        return tl::unexpected(wall.error());
    if (!(*wall > 0 && *wall <= mostMm))
        return values.refuse(row,
                             PADSIDE_SAY("{0}, line {1}: a wall of “{2}” mm can't be. Check the reading and its unit."),
                             {row.cells[wallColumn]});
    return DatedWall{*on, *wall / 1000};
}

} // namespace

Result<WallFile> readWallFile(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    const CsvValues values(*table);
    const auto dateColumn = values.column("date");
    const auto wallColumn = values.column("thickness_mm");
    if (!dateColumn || !wallColumn)
        return tl::unexpected(dateColumn ? wallColumn.error() : dateColumn.error());
    if (table->rows.empty())
        return problem(ProblemKind::badInput, PADSIDE_SAY("{0} has no values below its first line. Add at least one."),
                       {table->name});
    std::vector<DatedWall> walls;
    std::set<Date> days;
    for (const CsvRow& row : table->rows) {
        const auto wall = wallOf(values, row, *dateColumn, *wallColumn);
        if (!wall)
            return tl::unexpected(wall.error());
        if (!days.insert(wall->on).second)
            return values.refuse(row, PADSIDE_SAY("{0}, line {1}: there is a reading of {2} already. Keep one a day."),
                                 {wall->on});
        walls.push_back(*wall);
    }
    std::ranges::sort(walls, {}, &DatedWall::on);
    WallFile file{{}, walls.back().on};
    for (const DatedWall& wall : walls)
        file.readings.push_back({yearsBetween(walls.front().on, wall.on), wall.thicknessM});
    return file;
}

} // namespace padside
