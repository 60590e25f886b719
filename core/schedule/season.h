// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/site.h"
#include "core/record/visit.h"
#include "core/schedule/trips.h"

namespace padside {

/// A site's season for visits: whose it is and from which day to which.
struct Season
{
    VisitReason reason = VisitReason::spring; ///< spring or fall
    Window window;

    friend bool operator==(const Season&, const Season&) = default;
};

/// The spring or fall season of a calendar year, Monday of its first week to Sunday of its last (ISO 8601). South of
/// the equator the weeks are just other ones.
[[nodiscard]] Season seasonOf(const Site& site, VisitReason reason, int year);

/// The first spring (or fall) season that is not over before `day`.
[[nodiscard]] Season seasonNotOver(const Site& site, VisitReason reason, Date day);

/// The first season of either sort that begins after `day`.
[[nodiscard]] Season seasonAfter(const Site& site, Date day);

/// Whether `day` lies in one of the site's seasons.
[[nodiscard]] bool inSeason(const Site& site, Date day);

/// Whether `day` is a Saturday or a Sunday.
[[nodiscard]] bool isWeekend(Date day);

/// A day for a trip without need of a reason: in season, from Monday to Friday.
[[nodiscard]] bool isWorkingDayInSeason(const Site& site, Date day);

} // namespace padside
