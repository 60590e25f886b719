// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/visit_summary_content.h"

#include <algorithm>

namespace padside {

namespace {

constexpr std::size_t mostPairs = 4; ///< on an ordinary visit the summary then stays within two pages

/// The photographs of one zone that may stand side by side.
struct Candidate
{
    const ZoneChange* change = nullptr; ///< null: photographed without a finding
    ZoneId zone;
    const Photo* asFound = nullptr; ///< the last of its phase at this visit
    const Photo* asLeft = nullptr;
    const Photo* earlier = nullptr;
    int shownPhotos() const { return asFound && asLeft ? 2 : 1; }
};

/// How much a zone's pictures tell: what got worse first, then work, then what is in poor state.
int telling(const Candidate& candidate)
{
    int rank = candidate.asFound && candidate.asLeft ? 40 : 0;
    const ZoneChange* change = candidate.change;
    if (!change)
        return rank;
    if (change->kind == ZoneChangeKind::worse)
        rank += 50;
    else if (change->kind == ZoneChangeKind::betterAfterWork || change->kind == ZoneChangeKind::betterWithoutWork)
        rank += 30;
    if (change->asFound)
        rank += 4 * numeral(*change->asFound);
    if (candidate.earlier)
        rank += 5;
    return rank;
}

Mark gradeAtPhoto(const SummaryView& view, const Photo& photo)
{
    Mark mark = NoMark{};
    for (const Finding& finding : standing(view.input.record.findings)) {
        if (finding.visitId == photo.visitId && finding.zoneId == photo.zoneId && finding.phase == photo.phase)
            mark = finding.seen() ? Mark(*finding.grade()) : Mark(NotSeenMark{});
    }
    return mark;
}

PaperPhoto captioned(const SummaryView& view, const Photo& photo, const QString& label)
{
    return {photo.id, QStringLiteral("%1, %2").arg(label, view.words.day(photo.on)), gradeAtPhoto(view, photo)};
}

PhotoPair pairOf(const SummaryView& view, const Candidate& candidate)
{
    PhotoPair pair;
    pair.zone = view.words.zone(candidate.zone);
    if (candidate.asFound && candidate.asLeft) {
        pair.first = captioned(view, *candidate.asFound, SummaryText::tr("As found"));
        pair.second = captioned(view, *candidate.asLeft, SummaryText::tr("As left"));
        return pair;
    }
    const Photo& today = candidate.asFound ? *candidate.asFound : *candidate.asLeft;
    const QString label = candidate.asFound ? SummaryText::tr("Today") : SummaryText::tr("As left");
    if (candidate.earlier) {
        pair.first = captioned(view, *candidate.earlier, SummaryText::tr("Last time"));
        pair.second = captioned(view, today, label);
    } else {
        pair.first = captioned(view, today, label);
    }
    return pair;
}

std::vector<Candidate> candidates(const SummaryView& view, const std::vector<Photo>& photos)
{
    std::vector<Candidate> found;
    for (const Photo& photo : photos) {
        if (photo.visitId != view.visit.id || !photo.zoneId)
            continue;
        auto candidate = std::ranges::find(found, *photo.zoneId, &Candidate::zone);
        if (candidate == found.end()) {
            found.push_back({nullptr, *photo.zoneId, nullptr, nullptr, nullptr});
            candidate = found.end() - 1;
            const auto change = std::ranges::find(view.changes.zones, *photo.zoneId, &ZoneChange::zoneId);
            candidate->change = change == view.changes.zones.end() ? nullptr : &*change;
        }
        (photo.phase == Phase::asFound ? candidate->asFound : candidate->asLeft) = &photo;
    }
    for (const Photo& photo : photos) {
        if (photo.on >= view.visit.on || photo.visitId == view.visit.id || !photo.zoneId)
            continue;
        const auto candidate = std::ranges::find(found, *photo.zoneId, &Candidate::zone);
        if (candidate != found.end() && (!candidate->earlier || candidate->earlier->on <= photo.on))
            candidate->earlier = &photo;
    }
    std::ranges::stable_sort(found, [](const Candidate& a, const Candidate& b) { return telling(a) > telling(b); });
    return found;
}

} // namespace

PhotoBlock photoSection(const SummaryView& view)
{
    PhotoBlock block;
    block.heading = SummaryText::tr("Photographs");
    const std::vector<Photo> photos = standing(view.input.record.photos);
    auto more = static_cast<int>(std::ranges::count(photos, view.visit.id, &Photo::visitId));
    for (const Candidate& candidate : candidates(view, photos)) {
        if (block.pairs.size() == mostPairs)
            break;
        block.pairs.push_back(pairOf(view, candidate));
        more -= candidate.shownPhotos();
    }
    if (more > 0)
        block.closing = SummaryText::tr("More of this visit in the record: %1").arg(more);
    return block;
}

} // namespace padside
