// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/flags/rule.h"

namespace padside {

/// Grade 5: act.
[[nodiscard]] std::optional<Worry> spent(const ZoneView& zone);

/// The chance that it is spent before the next visit is over its tolerance. Look, plan or act by
/// how likely it is ("spent-plan-chance", "spent-act-chance"); only look where no more than looks or a nuisance are at
/// stake. Silent where it is known to be spent, and where it would be no more than a look and notSeenTooLong() asks for
/// the same.
[[nodiscard]] std::optional<Worry> spentBeforeNextVisit(const ZoneView& zone);

/// A part that can hurt someone, at grade 4 or worse.
[[nodiscard]] std::optional<Worry> safetyPartPoor(const ZoneView& zone);

/// A part that normally ends the unit, or of which no spare is made, at grade 4 or worse. Dirt doesn't count.
[[nodiscard]] std::optional<Worry> endOfUnitPartPoor(const ZoneView& zone);

/// Found worse than the grade that earlier work left it at. Dirt that came back counts from grade 4.
[[nodiscard]] std::optional<Worry> treatedButWorseAgain(const ZoneView& zone);

/// The last step to a worse grade went faster, per grade, than the step before it; or it was two grades or more after
/// the zone had held its grade. A step lasts from the first sighting at one grade to the first sighting at the next
/// worse one, so that visits without a change in between don't hide the pace. Short steps say nothing and are left out.
[[nodiscard]] std::optional<Worry> worseFaster(const ZoneView& zone);

/// Found a grade or more worse than when it was last seen.
[[nodiscard]] std::optional<Worry> worseByAGrade(const ZoneView& zone);

/// Not seen for too long, or never seen though a visit was closed since the part was fitted.
[[nodiscard]] std::optional<Worry> notSeenTooLong(const ZoneView& zone);

/// Found better than when it was last seen, with no work in between on record: one of the two grades is doubtful.
[[nodiscard]] std::optional<Worry> betterWithoutWork(const ZoneView& zone);

/// Found wet or damp at grade 3 or worse, and not coated since: rust goes on under water. Look.
[[nodiscard]] std::optional<Worry> wetAndBare(const ZoneView& zone);

/// The wall is at what must be left (act), or has few years left by its rate (plan); see core/verdict/zone_measure.h.
[[nodiscard]] std::optional<Worry> wallNearMinimum(const ZoneView& zone);

/// The rusted share grows by at least "rust-growing-share" a year: by the trend if there are points enough, else by the
/// last two readings.
[[nodiscard]] std::optional<Worry> rustGrowing(const ZoneView& zone);

// About the unit as a whole:

/// One for each part of which a spare is made, or was: the chance that one of its zones that decay is spent is over its
/// tolerance before an ordered spare would be there (the supply's lead time, an assumption). Act where one is known to
/// be spent, else plan or look by how likely that is. Looks alone need no spare in time, nor does a part that is to be
/// had at once ("spare-at-once-days").
[[nodiscard]] std::vector<Worry> orderSpareNow(const UnitView& unit);

/// A reading of the last visit that took any is outside its limit, as left where it was taken again. One flag for each.
[[nodiscard]] std::vector<Worry> readingOutside(const UnitView& unit);

/// The last fall's compressor shell was hardly warmer than the air: the crankcase heater does not work.
[[nodiscard]] std::vector<Worry> crankcaseHeaterCold(const UnitView& unit);

/// A capacitor, an insulation resistance or a contactor's drop is inside its limit but will leave it, by its Theil-Sen
/// slope over at least four readings, before "drift-months" are over.
[[nodiscard]] std::vector<Worry> readingDrifting(const UnitView& unit);

/// Refrigerant had to be added a second time within the months of "top-up-again-months", or more than
/// "top-up-season-share" of the full charge within one season. Common practice, no source; long before any limit of
/// a rule, from which on it is to be acted upon. A charge recovered and put back, or a first charge, is no addition
/// (core/ledger). Clears when a part that holds the charge is repaired or replaced on the day of the last addition or
/// later, or when those months have gone by without another one.
[[nodiscard]] std::vector<Worry> chargeAddedAgain(const UnitView& unit);

} // namespace padside
