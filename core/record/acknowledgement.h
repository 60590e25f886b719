// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/grade.h"
#include "core/record/id.h"
#include "core/record/severity.h"

#include <optional>
#include <string>

namespace padside {

/// A person has read a flag and says why it may stand as it is. What it was like then is kept, so that the flag comes
/// back when it gets worse.
struct Acknowledgement
{
    AcknowledgementId id;
    UnitId unitId;
    std::string rule; ///< id of the flag's rule
    std::optional<PartId> partId; ///< as the flag names them
    std::optional<ZoneId> zoneId;
    Severity severity = Severity::look; ///< of the flag on that day
    std::optional<Grade> grade; ///< of the zone, last seen by then
    std::optional<double> extent; ///< how bad by the rule's own measure; larger is worse
    std::string reason; ///< never empty
    std::string technician;
    Instant at;
    std::optional<Instant> takenBackAt;

    friend bool operator==(const Acknowledgement&, const Acknowledgement&) = default;
};

} // namespace padside
