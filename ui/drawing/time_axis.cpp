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

} // namespace

double dayNumber(Date date)
{
    return static_cast<double>(date.time_since_epoch().count());
}

std::vector<TimeTick> ticksOf(const TimeAxis& axis, SeasonWeeks spring, SeasonWeeks fall)
{
    const auto yearAt = [](double day) { return yearOf(Date(std::chrono::days(static_cast<int>(std::floor(day))))); };
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
