// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway.h"

#include "ui/drawing/cutaway_words.h"

#include <algorithm>

namespace padside {

namespace {

/// How much a zone asks to be shown: the worst known grade, then looked for in vain, then nothing.
int gravity(const ZoneHistory& history)
{
    if (history.known)
        return 1 + numeral(history.known->grade);
    return history.notSeenSince ? 1 : 0;
}

int gravity(const Finding& finding)
{
    const auto grade = finding.grade();
    return grade ? 1 + numeral(*grade) : 1;
}

CutawayPart nameOnly(const Part& part, const CutawayWords& words)
{
    CutawayPart shown;
    shown.id = part.id;
    shown.kind = part.kind;
    shown.position = part.position;
    shown.name = words.partName(part);
    shown.zone = part.zones.empty() ? ZoneId() : part.zones.front().id;
    return shown;
}

/// Today's finding that holds for a zone: as left where that was graded, else as found.
const Finding* holding(const std::vector<Finding>& findings, ZoneId zone, VisitId visit)
{
    const Finding* found = nullptr;
    for (const Finding& finding : findings) {
        if (finding.visitId != visit || finding.zoneId != zone)
            continue;
        if (!found || (finding.phase == Phase::asLeft && finding.seen())
            || (found->phase == Phase::asLeft && !found->seen()))
            found = &finding;
    }
    return found;
}

} // namespace

CutawayContent cutawayOf(const UnitRecord& record, const UnitReview& review, const Catalogue& catalogue,
                         const Speaker& speaker)
{
    const CutawayWords words(record, catalogue, speaker);
    CutawayContent content{record.unit.kind, {}};
    for (const Part* part : fittedParts(record, catalogue, review.today)) {
        CutawayPart shown = nameOnly(*part, words);
        const ZoneHistory* worst = nullptr;
        for (const ZoneHistory& history : review.zones) {
            if (history.partId == part->id && (!worst || gravity(history) > gravity(*worst)))
                worst = &history;
        }
        if (worst && gravity(*worst) > 0) {
            shown.zone = worst->zoneId;
            if (worst->known)
                shown.grade = worst->known->grade;
            shown.notSeen = worst->notSeenSince.has_value();
            shown.sentence = words.lastFound(*part, *worst);
        } else {
            shown.sentence = words.nothingRecorded(*part);
        }
        content.parts.push_back(std::move(shown));
    }
    return content;
}

CutawayContent cutawayOfVisit(const UnitRecord& record, VisitId visit, const Catalogue& catalogue,
                              const Speaker& speaker)
{
    CutawayContent content{record.unit.kind, {}};
    const Visit* here = findVisit(record, visit);
    if (!here)
        return content;
    const CutawayWords words(record, catalogue, speaker);
    const std::vector<Finding> findings = standing(record.findings);
    for (const Part* part : fittedParts(record, catalogue, here->on)) {
        CutawayPart shown = nameOnly(*part, words);
        const Finding* worst = nullptr;
        std::optional<ZoneId> open;
        std::size_t looked = 0;
        for (const Zone& zone : part->zones) {
            const Finding* finding = holding(findings, zone.id, visit);
            looked += finding ? 1 : 0;
            if (!finding && !open)
                open = zone.id;
            if (finding && (!worst || gravity(*finding) > gravity(*worst)))
                worst = finding;
        }
        if (worst) {
            shown.grade = worst->grade();
            shown.notSeen = !shown.grade;
            shown.zone = worst->zoneId;
        }
        shown.zone = open.value_or(shown.zone);
        shown.sentence = worst ? words.foundAtVisit(*part, *worst, looked) : words.notLookedAtYet(*part);
        content.parts.push_back(std::move(shown));
    }
    return content;
}

} // namespace padside
