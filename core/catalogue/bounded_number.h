// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/json_object.h"

#include <cmath>
#include <string_view>

namespace padside {

/// A bound as it stands in a sentence, with as many decimals as it needs.
[[nodiscard]] inline Number boundOf(double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 6 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10)
        ++decimals;
    return {value, decimals};
}

/// A figure between the bounds; anything else is reported.
[[nodiscard]] inline double readBetween(JsonObject& fields, std::string_view field, double lowest, double highest)
{
    const double value = fields.number(field);
    if (!(value >= lowest && value <= highest)) {
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: must lie between {1} and {2}."),
                                {boundOf(lowest), boundOf(highest)});
    }
    return value;
}

/// As readBetween, from anything above 0.
[[nodiscard]] inline double readAboveZero(JsonObject& fields, std::string_view field, double highest)
{
    const double value = readBetween(fields, field, 0, highest);
    if (value == 0)
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: must be above 0."));
    return value;
}

} // namespace padside
