// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/likely_loss.h"

#include <tuple>

namespace padside {

namespace {

/// A part on one day, of zones that have an outlook; empty without any.
std::optional<LikelyLoss> lossOf(const Part& part, const Catalogue& catalogue, std::span<const ZoneChances> zones,
                                 std::size_t day)
{
    LikelyLoss loss{part.id, part.kind, part.position, Toll::looks, 0, OutlookBy::grades};
    double none = 1;
    double likeliest = -1;
    for (const ZoneChances& zone : zones) {
        if (zone.partId != part.id)
            continue;
        const double chance = zone.spent[day];
        none *= 1 - chance;
        if (chance > likeliest) {
            likeliest = chance;
            loss.by = zone.by[day];
        }
    }
    if (likeliest < 0)
        return std::nullopt;
    loss.chance = 1 - none;
    if (const PartKind* kind = catalogue.partKind(part.kind))
        loss.toll = tollOf(*kind);
    return loss;
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
    for (std::size_t day = 0; day < horizonCount; ++day) {
        for (const Part& part : record.parts) {
            const auto loss = lossOf(part, catalogue, zones, day);
            if (loss && (!losses[day] || weight(*loss) > weight(*losses[day])))
                losses[day] = loss;
        }
    }
    return losses;
}

std::array<double, horizonCount> stopChances(const UnitRecord& record, const Catalogue& catalogue,
                                             std::span<const ZoneChances> zones)
{
    std::array<double, horizonCount> chances{};
    for (std::size_t day = 0; day < horizonCount; ++day) {
        double none = 1;
        for (const ZoneChances& zone : zones) {
            const Part* part = findPart(record, zone.partId);
            const PartKind* kind = part != nullptr ? catalogue.partKind(part->kind) : nullptr;
            if (kind != nullptr && stopsUnit(*kind))
                none *= 1 - zone.spent[day];
        }
        chances[day] = 1 - none;
    }
    return chances;
}

} // namespace padside
