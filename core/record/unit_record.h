// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/acknowledgement.h"
#include "core/record/entry.h"
#include "core/record/site.h"
#include "core/record/unit.h"
#include "core/record/unit_assumption.h"
#include "core/record/visit.h"

#include <vector>

namespace padside {

/// Everything kept about one unit, as plain data. Visits are in order of date (then of opening); entries in order of
/// date, then of their being entered. Corrected entries are still there: see standing().
struct UnitRecord
{
    Site site;
    Unit unit;
    std::vector<Part> parts; ///< fitted and removed
    std::vector<Visit> visits;
    std::vector<Finding> findings;
    std::vector<Reading> readings;
    std::vector<Treatment> treatments;
    std::vector<Photo> photos;
    std::vector<ChargeEntry> charges;
    std::vector<FollowUp> followUps;
    std::vector<Acknowledgement> acknowledgements; ///< of flags, taken back ones too; by the time they were made
    std::vector<UnitAssumption> assumptions; ///< by code

    friend bool operator==(const UnitRecord&, const UnitRecord&) = default;
};

/// The entries that hold today: those no later correction stands for. Order is kept.
[[nodiscard]] std::vector<Finding> standing(const std::vector<Finding>& entries);
[[nodiscard]] std::vector<Reading> standing(const std::vector<Reading>& entries);
[[nodiscard]] std::vector<Treatment> standing(const std::vector<Treatment>& entries);
[[nodiscard]] std::vector<Photo> standing(const std::vector<Photo>& entries);
[[nodiscard]] std::vector<ChargeEntry> standing(const std::vector<ChargeEntry>& entries);

/// The same without copying them; they stay in `entries`.
[[nodiscard]] std::vector<const Finding*> standingAmong(const std::vector<Finding>& entries);
[[nodiscard]] std::vector<const Reading*> standingAmong(const std::vector<Reading>& entries);
[[nodiscard]] std::vector<const Treatment*> standingAmong(const std::vector<Treatment>& entries);

/// The part, zone or visit with this key, or nullptr.
[[nodiscard]] const Part* findPart(const UnitRecord& record, PartId id);
[[nodiscard]] const Zone* findZone(const UnitRecord& record, ZoneId id);
[[nodiscard]] const Part* partOfZone(const UnitRecord& record, ZoneId id);
[[nodiscard]] const Visit* findVisit(const UnitRecord& record, VisitId id);

} // namespace padside
