// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/unit_life.h"

#include <algorithm>
#include <cstring>
#include <fmt/format.h>

namespace padside {

namespace {

/// One skin for a whole part, so that its zones' pictures fit together; a replacement has its own.
std::uint64_t skinOf(const ZoneState& zone)
{
    std::uint64_t key = 0;
    std::memcpy(&key, zone.partId.bytes().data() + 8, sizeof key);
    return mixed(key);
}

void takePhoto(Telling& telling, const ZoneState& zone, Phase phase, std::optional<Wetness> wetness)
{
    UnitLife& life = telling.life;
    PhotoOrder order;
    order.subject = *zone.nature->picture;
    order.unitKey = life.skin;
    order.moment = mixed(life.skin + life.orders.size() * 13 + 5);
    Weathering& weathering = order.weathering;
    weathering.skin = skinOf(zone);
    weathering.coat = zone.coat;
    weathering.verdigris = zone.nature->remarks == Remarks::copper;
    weathering.wet = wetness == Wetness::wet ? 1.0 : wetness == Wetness::damp ? 0.35 : 0.0;
    if (zone.nature->remarks == Remarks::dirt) {
        weathering.dirt = (zone.decay - 1) / 3.4;
        weathering.decay = 1.7
            + 0.12 * yearsBetween(*life.record.unit.installedOn, telling.visit.on) * std::min(1.5, life.place->pace);
        weathering.decay = std::min(weathering.decay, 3.6);
    } else {
        weathering.decay = zone.decay;
    }

    auto photo = telling.entry<Photo, PhotoId>();
    photo.zoneId = zone.id;
    photo.phase = phase;
    photo.mediaType = "image/jpeg";
    photo.originalName = fmt::format("IMG_{:04}.jpg", 1000 + (life.skin >> 8) % 700 * 12 + life.orders.size());
    photo.width = 1280;
    photo.height = 960;
    photo.takenAt = photo.enteredAt;
    if (phase == Phase::asLeft && zone.coat > 0.9)
        photo.caption = "after coating";
    life.record.photos.push_back(std::move(photo));
    life.orders.push_back(order);
}

const Finding* foundToday(const Telling& telling, const ZoneState& zone, Phase phase)
{
    const auto& findings = telling.life.record.findings;
    const auto found = std::find_if(findings.rbegin(), findings.rend(), [&](const Finding& one) {
        return one.visitId == telling.visit.id && one.zoneId == zone.id && one.phase == phase && one.seen();
    });
    return found == findings.rend() ? nullptr : &*found;
}

} // namespace

void tellPhotosAsFound(Telling& telling)
{
    UnitLife& life = telling.life;
    if (!life.photographed)
        return;
    int taken = 0;
    for (const ZoneState& zone : life.zones) {
        const Finding* finding = zone.nature->picture ? foundToday(telling, zone, Phase::asFound) : nullptr;
        if (!finding)
            continue;
        const bool scripted = life.scenario->story == Story::seafrontVessel && zone.nature->zone == "bottom";
        const Grade grade = *finding->grade();
        const double wanted = grade >= Grade::poor ? 0.34 : grade == Grade::marked ? 0.15 : 0.04;
        if (!scripted && (taken >= 2 || !telling.dice.chance(wanted)))
            continue;
        takePhoto(telling, zone, Phase::asFound, finding->wetness);
        ++taken;
    }
}

void tellPhotosAsLeft(Telling& telling)
{
    UnitLife& life = telling.life;
    if (!life.photographed)
        return;
    // What was photographed before the work and then worked on is photographed again.
    const std::vector<Photo> before = life.record.photos;
    for (const Photo& photo : before) {
        if (photo.visitId != telling.visit.id || photo.phase != Phase::asFound)
            continue;
        const auto zone
            = std::ranges::find_if(life.zones, [&](const ZoneState& one) { return one.id == photo.zoneId; });
        if (zone != life.zones.end() && foundToday(telling, *zone, Phase::asLeft))
            takePhoto(telling, *zone, Phase::asLeft,
                      zone->nature->remarks == Remarks::dirt ? Wetness::damp : Wetness::dry);
    }
}

} // namespace padside
