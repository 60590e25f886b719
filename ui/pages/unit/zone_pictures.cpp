// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/zone_pictures.h"

#include <algorithm>

namespace padside {

namespace {

/// What was found of the photographed zone in the photograph's phase of the visit; as left falls back to nothing.
const Finding* findingOf(const std::vector<Finding>& findings, const Photo& photo)
{
    const auto finding = std::ranges::find_if(findings, [&photo](const Finding& one) {
        return one.visitId == photo.visitId && one.zoneId == photo.zoneId && one.phase == photo.phase;
    });
    return finding == findings.end() ? nullptr : &*finding;
}

} // namespace

std::vector<ZonePicture> zonePictures(const UnitRecord& record, std::span<const ZoneId> zones)
{
    const std::vector<Finding> findings = standing(record.findings);
    std::vector<Photo> photos = standing(record.photos);
    std::erase_if(photos, [zones](const Photo& photo) {
        return !photo.zoneId || std::ranges::find(zones, *photo.zoneId) == zones.end();
    });
    std::ranges::stable_sort(photos, {}, [](const Photo& photo) { return std::pair(photo.on, photo.phase); });
    std::vector<ZonePicture> pictures;
    const Photo* before = nullptr;
    for (const Photo& photo : photos) {
        ZonePicture picture;
        picture.photo = photo.id;
        picture.on = photo.on;
        picture.phase = photo.phase;
        picture.caption = photo.caption;
        if (const Finding* finding = findingOf(findings, photo)) {
            picture.grade = finding->grade();
            if (!finding->seen())
                picture.notSeen = std::get<NotSeenReason>(finding->sight);
        }
        picture.paired = before && before->visitId == photo.visitId && before->zoneId == photo.zoneId
            && before->phase == Phase::asFound && photo.phase == Phase::asLeft;
        picture.newPart = before && before->zoneId != photo.zoneId;
        pictures.push_back(picture);
        before = &photo;
    }
    return pictures;
}

} // namespace padside
