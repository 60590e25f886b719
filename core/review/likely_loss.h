// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/toll.h"
#include "core/review/zone_chances.h"

#include <array>
#include <optional>
#include <span>
#include <string>

namespace padside {

/// The part that speaks for its unit: what a failure would cost, and how likely it is.
struct LikelyLoss
{
    PartId partId;
    std::string partKind;
    std::string position;
    Toll toll = Toll::looks;
    double chance = 0; ///< that one of its zones is spent by the day
    OutlookBy by = OutlookBy::grades; ///< what says so of its likeliest zone

    friend bool operator==(const LikelyLoss&, const LikelyLoss&) = default;
};

/// One for each horizon; empty where no part of the unit has an outlook.
using LikelyLosses = std::array<std::optional<LikelyLoss>, horizonCount>;

/// For each horizon the part with the gravest toll of those at least as likely to be spent as the assumption
/// "likely-chance" has it; of equally grave ones the likeliest. Where none is that likely: the likeliest. Zones of a
/// part are taken to fail independently.
[[nodiscard]] LikelyLosses likelyLosses(const UnitRecord& record, const Catalogue& catalogue,
                                        std::span<const ZoneChances> zones);

} // namespace padside
