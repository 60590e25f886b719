// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/likely_loss.h"

#include <tuple>
#include <utility>

namespace padside {

namespace {

/// A part of zones that have an outlook, by each horizon; empty without any.
std::optional<std::array<LikelyLoss, horizonCount>> lossesOf(const Part& part, const Catalogue& catalogue,
                                                             std::span<const ZoneChances> zones)
{
    const auto chances = chancesOfPart(part.id, zones);
    if (!chances)
        return std::nullopt;
    const PartKind* kind = catalogue.partKind(part.kind);
    std::array<LikelyLoss, horizonCount> losses;
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        losses[horizon] = {part.id,
                           part.kind,
                           part.position,
                           kind != nullptr ? tollOf(*kind) : Toll::looks,
                           (*chances)[horizon],
                           OutlookBy::grades};
        double likeliest = -1;
        for (const ZoneChances& zone : zones) {
            if (zone.partId != part.id || zone.spent[horizon] <= likeliest)
                continue;
            likeliest = zone.spent[horizon];
            losses[horizon].by = zone.by[horizon];
        }
    }
    return losses;
}

} // namespace

LikelyLosses likelyLosses(const UnitRecord& record, const Catalogue& catalogue, std::span<const ZoneChances> zones)
{
    const double likely = catalogue.assumption("likely-chance");
    LikelyLosses losses;
    const auto weight = [likely](const LikelyLoss& loss) {
        const bool counts = loss.chance >= likely;
        return std::tuple(counts, counts ? loss.toll : Toll::looks, loss.chance);
    };
    for (const Part& part : record.parts) {
        auto of = lossesOf(part, catalogue, zones);
        for (std::size_t horizon = 0; of && horizon < horizonCount; ++horizon) {
            LikelyLoss& loss = (*of)[horizon];
            if (!losses[horizon] || weight(loss) > weight(*losses[horizon]))
                losses[horizon] = std::move(loss);
        }
    }
    return losses;
}

} // namespace padside
