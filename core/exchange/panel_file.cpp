// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/panel_file.h"

#include "core/exchange/csv_values.h"

#include <unordered_map>

namespace padside {

namespace {

/// The last row of a unit so far.
struct Sighting
{
    double years = 0;
    std::int64_t grade = 1;
    std::size_t line = 0;
};

/// The step between two rows of one unit.
Result<PanelStep> stepBetween(const CsvValues& values, const CsvRow& row, const std::string& unit,
                              const Sighting& before, const Sighting& now)
{
    const auto line = static_cast<std::int64_t>(before.line);
    if (now.years < before.years) {
        return values.refuse(row,
                             PADSIDE_SAY("{0}, line {1}: unit {2} goes back in time since line {3}. Put its rows in "
                                         "order."),
                             {unit, line});
    }
    if (now.grade < before.grade) {
        return values.refuse(
            row,
            PADSIDE_SAY("{0}, line {1}: unit {2} goes from grade {3} to {4}, which is better; rates are "
                        "learned from decay alone. Give it another unit name after a repair."),
            {unit, before.grade, now.grade});
    }
    if (now.grade > before.grade && now.years == before.years) {
        return values.refuse(
            row, PADSIDE_SAY("{0}, line {1}: unit {2} goes from grade {3} to {4} in no time. Correct years or grade."),
            {unit, before.grade, now.grade});
    }
    return PanelStep{now.years - before.years, static_cast<Grade>(before.grade), static_cast<Grade>(now.grade)};
}

} // namespace

Result<std::vector<PanelStep>> readPanelFile(std::string_view text, std::string name)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    const CsvValues values(*table);
    const auto unitColumn = values.column("unit");
    const auto yearsColumn = values.column("years");
    const auto gradeColumn = values.column("grade");
    for (const auto* column : {&unitColumn, &yearsColumn, &gradeColumn}) {
        if (!*column)
            return tl::unexpected(column->error());
    }
    std::vector<PanelStep> steps;
    std::unordered_map<std::string, Sighting> last;
    for (const CsvRow& row : table->rows) {
        const auto years = values.number(row, *yearsColumn);
        const auto grade = values.wholeNumber(row, *gradeColumn, 1, 5);
        if (!years || !grade)
            return tl::unexpected(years ? grade.error() : years.error());
        const std::string& unit = row.cells[*unitColumn];
        const Sighting now{*years, *grade, row.line};
        const auto [place, first] = last.emplace(unit, now);
        if (first)
            continue;
        const auto step = stepBetween(values, row, unit, place->second, now);
        if (!step)
            return tl::unexpected(step.error());
        steps.push_back(*step);
        place->second = now;
    }
    if (steps.empty()) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("{0} has no unit that was seen twice, so there is no step to learn rates from."),
                       {table->name});
    }
    return steps;
}

} // namespace padside
