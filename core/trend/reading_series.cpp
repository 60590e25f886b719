// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/reading_series.h"

#include <algorithm>

namespace padside {

namespace {

bool treats(const Treatment& treatment, const SeriesKey& key)
{
    if (!key.partId || treatment.partId != *key.partId)
        return false;
    return !treatment.zoneId || treatment.zoneId == key.zoneId;
}

std::optional<Date> lastReset(const UnitRecord& record, const SeriesKey& key, std::span<const TreatmentKind> resets)
{
    std::optional<Date> last;
    for (const Treatment* treatment : standingAmong(record.treatments)) {
        if (treats(*treatment, key) && std::ranges::find(resets, treatment->kind) != resets.end()
            && (!last || treatment->on > *last))
            last = treatment->on;
    }
    return last;
}

} // namespace

std::vector<TrendPoint> seriesSinceReset(const UnitRecord& record, const SeriesKey& given,
                                         std::span<const TreatmentKind> resets)
{
    SeriesKey key = given;
    if (key.zoneId && !key.partId) {
        if (const Part* part = partOfZone(record, *key.zoneId))
            key.partId = part->id;
    }
    const auto belongs = [&](const Reading& reading) {
        return reading.kind == given.readingKind && reading.zoneId == given.zoneId
            && (reading.partId == given.partId || reading.partId == key.partId);
    };
    if (std::ranges::none_of(record.readings, belongs))
        return {}; // as with most zones
    const std::optional<Date> reset = lastReset(record, key, resets);
    std::vector<const Reading*> readings = standingAmong(record.readings);
    std::erase_if(readings, [&](const Reading* reading) {
        const bool afterReset
            = !reset || reading->on > *reset || (reading->on == *reset && reading->phase == Phase::asLeft);
        return !belongs(*reading) || !afterReset;
    });
    std::ranges::stable_sort(readings, [](const Reading* left, const Reading* right) {
        return left->on != right->on ? left->on < right->on : left->phase < right->phase;
    });

    std::vector<TrendPoint> points;
    points.reserve(readings.size());
    const Reading* before = nullptr;
    for (const Reading* reading : readings) {
        const bool onlyTheWork
            = before && before->on == reading->on && reading->phase == Phase::asLeft && before->phase == Phase::asFound;
        if (onlyTheWork)
            continue;
        points.push_back({static_cast<double>(reading->on.time_since_epoch().count()), reading->value.si});
        before = reading;
    }
    return points;
}

} // namespace padside
