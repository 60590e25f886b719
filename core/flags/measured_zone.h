// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/flags/zone_view.h"
#include "core/verdict/zone_measure.h"

#include <string_view>
#include <vector>

namespace padside {

/// The standing readings of this kind at the zone, oldest first: what a flag about it rests on.
[[nodiscard]] inline std::vector<ReadingId> readingsOf(const ZoneView& zone, std::string_view kind)
{
    std::vector<ReadingId> ids;
    for (const Reading& reading : zone.record.readings) {
        if (reading.kind == kind && reading.zoneId == zone.zone.id)
            ids.push_back(reading.id);
    }
    return ids;
}

} // namespace padside
