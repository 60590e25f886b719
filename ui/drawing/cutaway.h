// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/review/unit_review.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// One fitted part as the cutaway tells it.
struct CutawayPart
{
    PartId id;
    std::string kind; ///< code of the part kind; with the position it finds the part's place in the drawing
    std::string position; ///< empty where the unit has only one
    QString name;
    ZoneId zone; ///< the zone to go to: the worst, or at a visit the first not looked at yet; null if it has none
    std::optional<Grade> grade; ///< the worst that stands among its zones
    bool notSeen = false; ///< without a grade: looked for in vain; with one: not seen since
    QString sentence; ///< what was last found, for caption, tooltip and screen reader

    friend bool operator==(const CutawayPart&, const CutawayPart&) = default;
};

/// What the drawing of an opened unit shows; plain data.
struct CutawayContent
{
    std::string unitKind;
    std::vector<CutawayPart> parts; ///< in the catalogue's order

    friend bool operator==(const CutawayContent&, const CutawayContent&) = default;
};

/// What stands today, by the unit's review.
[[nodiscard]] CutawayContent cutawayOf(const UnitRecord& record, const UnitReview& review, const Catalogue& catalogue,
                                       const Speaker& speaker);

/// What one visit found so far: parts not looked at yet are empty. A zone left better than found counts as left.
[[nodiscard]] CutawayContent cutawayOfVisit(const UnitRecord& record, VisitId visit, const Catalogue& catalogue,
                                            const Speaker& speaker);

} // namespace padside
