// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/record/grade.h"
#include "core/record/id.h"
#include "core/record/severity.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// That a person has read a flag and said why it may stand.
struct FlagAcknowledged
{
    AcknowledgementId id;
    Date on{};
    std::string by; ///< may be empty
    std::string reason; ///< never empty

    friend bool operator==(const FlagAcknowledged&, const FlagAcknowledged&) = default;
};

/// A reason to worry, with its evidence, in one sentence.
struct Flag
{
    std::string rule; ///< id of the rule ("worse-by-a-grade")
    Severity severity = Severity::look;
    UnitId unitId;
    std::optional<PartId> partId; ///< empty: about the unit as a whole
    std::optional<ZoneId> zoneId;
    Sentence sentence; ///< what and why
    Sentence clears; ///< what would clear it
    std::vector<FindingId> evidence; ///< the findings it rests on, oldest first
    std::vector<ChargeId> charges{}; ///< the refrigerant entries it rests on, by day
    std::vector<ReadingId> readings{}; ///< the readings it rests on, oldest first
    std::string aspect{}; ///< which of several things the rule looks at, where it looks at several ("superheat")
    std::optional<Grade> grade{}; ///< of its zone, last known
    std::optional<double> extent{}; ///< how bad by the rule's own measure (a chance, a share, a rate); larger is worse
    std::optional<FlagAcknowledged> acknowledged{}; ///< empty: it stands

    friend bool operator==(const Flag&, const Flag&) = default;
};

} // namespace padside
