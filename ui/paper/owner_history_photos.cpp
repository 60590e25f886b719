// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The worst places through the years.

#include "ui/paper/owner_history_content.h"

#include <algorithm>

namespace padside {

namespace {

constexpr std::size_t mostRows = 4;
constexpr std::size_t photosInRow = 4;

/// One photograph of each visit, oldest first: as found where there is one.
std::vector<const Photo*> photosOf(const std::vector<Photo>& photos, ZoneId zone)
{
    std::vector<const Photo*> found;
    for (const Photo& photo : photos) {
        if (photo.zoneId != zone)
            continue;
        if (found.empty() || found.back()->visitId != photo.visitId)
            found.push_back(&photo);
        else if (photo.phase == Phase::asFound && found.back()->phase != Phase::asFound)
            found.back() = &photo;
    }
    return found;
}

/// The first, the last, and others evenly between.
std::vector<const Photo*> spread(const std::vector<const Photo*>& all)
{
    if (all.size() <= photosInRow)
        return all;
    std::vector<const Photo*> some;
    for (std::size_t i = 0; i < photosInRow; ++i)
        some.push_back(all[i * (all.size() - 1) / (photosInRow - 1)]);
    return some;
}

Mark gradeAt(const std::vector<Finding>& findings, const Photo& photo)
{
    Mark mark = NoMark{};
    for (const Finding& finding : findings) {
        if (finding.visitId == photo.visitId && finding.zoneId == photo.zoneId && finding.phase == photo.phase)
            mark = finding.seen() ? Mark(*finding.grade()) : Mark(NotSeenMark{});
    }
    return mark;
}

/// The zones likeliest to be spent that were photographed at least so often.
std::vector<PhotoRow> rowsOf(const OwnerView& view, std::size_t fewest)
{
    std::vector<PhotoRow> rows;
    const std::vector<Photo> photos = standing(view.record.photos);
    const std::vector<Finding> findings = standing(view.record.findings);
    for (const LeadingOutlook& zone : view.input.forecast.leading) {
        if (rows.size() == mostRows)
            break;
        const std::vector<const Photo*> of = photosOf(photos, zone.zoneId);
        if (of.size() < fewest)
            continue;
        PhotoRow row;
        row.zone = view.words.zone(zone.zoneId);
        for (const Photo* photo : spread(of))
            row.photos.push_back({photo->id, view.words.day(photo->on), gradeAt(findings, *photo)});
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

PhotoRowsBlock photoYearsSection(const OwnerView& view)
{
    PhotoRowsBlock block;
    block.heading = OwnerText::tr("The places likeliest to be spent, through the years");
    block.rows = rowsOf(view, 2);
    if (block.rows.empty()) // a single photograph shows no years, but better that than none
        block.rows = rowsOf(view, 1);
    return block;
}

} // namespace padside
