// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/date.h"
#include "core/record/site.h"

#include <vector>

namespace padside {

/// A mark on the axis: the first of January, or the middle of a season's weeks.
struct TimeTick
{
    enum class Kind { year, spring, fall };

    Kind kind = Kind::year;
    int year = 0;
    double x = 0;

    friend bool operator==(const TimeTick&, const TimeTick&) = default;
};

/// Maps days to a horizontal distance. Days are counted from 1970-01-01 and may have fractions while zooming.
struct TimeAxis
{
    double fromDay = 0;
    double toDay = 1; ///< greater than fromDay
    double left = 0; ///< where fromDay lies
    double right = 1; ///< where toDay lies

    [[nodiscard]] double x(Date date) const { return xOfDay(static_cast<double>(date.time_since_epoch().count())); }
    [[nodiscard]] double xOfDay(double day) const { return left + (day - fromDay) * pixelsPerDay(); }
    [[nodiscard]] double dayAt(double x) const { return fromDay + (x - left) / pixelsPerDay(); }
    [[nodiscard]] double pixelsPerDay() const { return (right - left) / (toDay - fromDay); }

    friend bool operator==(const TimeAxis&, const TimeAxis&) = default;
};

/// Where a season's weeks lie on the axis.
struct SeasonSpan
{
    TimeTick::Kind kind = TimeTick::Kind::spring;
    double from = 0;
    double to = 0;

    friend bool operator==(const SeasonSpan&, const SeasonSpan&) = default;
};

/// The weeks of spring and fall, as the site has them, cut off at the axis' ends; from left to right.
[[nodiscard]] std::vector<SeasonSpan> seasonsOf(const TimeAxis& axis, SeasonWeeks spring, SeasonWeeks fall);

/// Every how many years a year can be written where a number takes `width`: 1, 2, 5, 10, 20 or 50.
[[nodiscard]] int yearStep(const TimeAxis& axis, double width);

/// The ticks between the axis' ends, from left to right. A season's tick stands in the middle of the site's weeks.
[[nodiscard]] std::vector<TimeTick> ticksOf(const TimeAxis& axis, SeasonWeeks spring, SeasonWeeks fall);

/// The day number of a date.
[[nodiscard]] double dayNumber(Date date);

} // namespace padside
