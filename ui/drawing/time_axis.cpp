// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/time_axis.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

Date middleOf(SeasonWeeks weeks, int year)
{
    const Date first = mondayOfWeek(year, weeks.first);
    const Date last = mondayOfWeek(year, weeks.last) + std::chrono::days(6);
    return first + (last - first) / 2;
}

int yearAt(double day)
{
    return yearOf(Date(std::chrono::days(static_cast<int>(std::floor(day)))));
}

} // namespace

double dayNumber(Date date)
{
    return static_cast<double>(date.time_since_epoch().count());
}

std::vector<SeasonSpan> seasonsOf(const TimeAxis& axis, SeasonWeeks spring, SeasonWeeks fall)
{
    std::vector<SeasonSpan> seasons;
    const auto add = [&](TimeTick::Kind kind, SeasonWeeks weeks, int year) {
        const double from = std::max(axis.left, axis.x(mondayOfWeek(year, weeks.first)));
        const double to = std::min(axis.right, axis.x(mondayOfWeek(year, weeks.last) + std::chrono::days(7)));
        if (to > from)
            seasons.push_back(SeasonSpan{kind, from, to});
    };
    // ISO weeks may belong to another year than their days.
    for (int year = yearAt(axis.fromDay) - 1; year <= yearAt(axis.toDay) + 1; ++year) {
        add(TimeTick::Kind::spring, spring, year);
        add(TimeTick::Kind::fall, fall, year);
    }
    std::ranges::stable_sort(seasons, {}, &SeasonSpan::from);
    return seasons;
}

int yearStep(const TimeAxis& axis, double width)
{
    constexpr double daysPerYear = 365.2425;
    for (const int step : {1, 2, 5, 10, 20}) {
        if (step * daysPerYear * axis.pixelsPerDay() >= width)
            return step;
    }
    return 50;
}

std::vector<TimeTick> ticksOf(const TimeAxis& axis, SeasonWeeks spring, SeasonWeeks fall)
{
    std::vector<TimeTick> ticks;
    const auto add = [&](TimeTick::Kind kind, int year, Date date) {
        if (dayNumber(date) >= axis.fromDay && dayNumber(date) <= axis.toDay)
            ticks.push_back(TimeTick{kind, year, axis.x(date)});
    };
    for (int year = yearAt(axis.fromDay); year <= yearAt(axis.toDay); ++year) {
        add(TimeTick::Kind::year, year, std::chrono::year(year) / std::chrono::January / 1);
        add(TimeTick::Kind::spring, year, middleOf(spring, year));
        add(TimeTick::Kind::fall, year, middleOf(fall, year));
    }
    std::ranges::stable_sort(ticks, {}, &TimeTick::x);
    return ticks;
}

} // namespace padside
