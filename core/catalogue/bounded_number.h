// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/json_object.h"

#include <string_view>

namespace padside {

/// A figure between the bounds; anything else is reported.
[[nodiscard]] inline double readBetween(JsonObject& fields, std::string_view field, double lowest, double highest)
{
    const double value = fields.number(field);
    if (!(value >= lowest && value <= highest)) {
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: must lie between {1} and {2}."),
                                {Number{lowest, 1}, Number{highest, 1}});
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
