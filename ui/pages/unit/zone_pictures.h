// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <span>
#include <vector>

namespace padside {

/// One photograph of a zone, with what was found when it was taken.
struct ZonePicture
{
    PhotoId photo;
    Date on{};
    Phase phase = Phase::asFound;
    std::optional<Grade> grade;
    std::optional<NotSeenReason> notSeen;
    std::string caption;
    bool paired = false; ///< as found and as left of one visit stand side by side; this is the second
    bool newPart = false; ///< the first one of a part that took another's place

    friend bool operator==(const ZonePicture&, const ZonePicture&) = default;
};

/// The photographs of a zone and of the same zone of the parts before, by date; as found before as left.
[[nodiscard]] std::vector<ZonePicture> zonePictures(const UnitRecord& record, std::span<const ZoneId> zones);

} // namespace padside
