// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/subject.h"
#include "core/flags/zone_view.h"

namespace padside {

/// The arguments {0} {1} {2} for a zone.
[[nodiscard]] inline std::vector<Argument> subjectOf(const ZoneView& view)
{
    return subjectOf(view.record, view.catalogue, view.part, &view.zone);
}

/// A grade takes two places in a sentence: its numeral and its word, "3 marked".
[[nodiscard]] inline Argument numeralOf(Grade grade)
{
    return static_cast<std::int64_t>(numeral(grade));
}
[[nodiscard]] inline Argument nameOf(Grade grade)
{
    return Word{std::string(wordOf(grade))};
}

/// A stretch of time is told in days up to two months, then in months, rounded.
[[nodiscard]] inline bool toldInDays(Date from, Date to)
{
    return (to - from).count() < 61;
}
[[nodiscard]] inline Argument daysIn(Date from, Date to)
{
    return static_cast<std::int64_t>((to - from).count());
}
[[nodiscard]] inline Argument monthsIn(Date from, Date to)
{
    return Number{yearsBetween(from, to) * 12, 0};
}

} // namespace padside
