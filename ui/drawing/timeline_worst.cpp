// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_worst.h"

#include <algorithm>
#include <set>

namespace padside {

namespace {

/// The worst band of all lanes on the day that begins at `from`. Of equal grades the unsure one counts: it may be
/// worse.
std::optional<TimelineBand> worstBand(std::span<const TimelineLane> lanes, Date from, Date to)
{
    std::optional<TimelineBand> worst;
    for (const TimelineLane& lane : lanes) {
        for (const TimelineBand& band : lane.bands) {
            if (band.from > from || band.to <= from)
                continue;
            if (!worst || band.grade > worst->grade)
                worst = TimelineBand{from, to, band.grade, band.sure};
            else if (band.grade == worst->grade)
                worst->sure = worst->sure && band.sure;
        }
    }
    return worst;
}

std::vector<TimelineBand> worstBands(std::span<const TimelineLane> lanes)
{
    std::set<Date> ends;
    for (const TimelineLane& lane : lanes) {
        for (const TimelineBand& band : lane.bands) {
            ends.insert(band.from);
            ends.insert(band.to);
        }
    }
    std::vector<TimelineBand> bands;
    for (auto end = ends.begin(); end != ends.end() && std::next(end) != ends.end(); ++end) {
        const auto worst = worstBand(lanes, *end, *std::next(end));
        if (!worst)
            continue;
        if (!bands.empty() && bands.back().to == worst->from && bands.back().grade == worst->grade
            && bands.back().sure == worst->sure)
            bands.back().to = worst->to;
        else
            bands.push_back(*worst);
    }
    return bands;
}

bool worse(const std::optional<Grade>& one, const std::optional<Grade>& than)
{
    return one && (!than || *one > *than);
}

void addMark(TimelineMark& all, const TimelineMark& mark, const std::string& zone)
{
    if (worse(mark.found, all.found)) {
        all.found = mark.found;
        all.worstZone = zone;
    }
    if (!all.notSeen)
        all.notSeen = mark.notSeen;
    ++(mark.found ? all.zonesSeen : all.zonesNotSeen);
    for (const Treatment& treatment : mark.treatments) {
        // Work on the whole part stands in each of its lanes.
        if (std::ranges::find(all.treatments, treatment.id, &Treatment::id) == all.treatments.end())
            all.treatments.push_back(treatment);
    }
    all.fitted |= mark.fitted;
    if (all.fittedBecause.empty())
        all.fittedBecause = mark.fittedBecause;
    all.photos += mark.photos;
    all.pictures.insert(all.pictures.end(), mark.pictures.begin(), mark.pictures.end());
    all.findings.insert(all.findings.end(), mark.findings.begin(), mark.findings.end());
    if (all.correction.empty())
        all.correction = mark.correction;
}

/// What the part was left as: the worst of what each zone was left as or, without work on it, found as.
std::optional<Grade> leftAs(std::span<const TimelineLane> lanes, const TimelineMark& all)
{
    std::optional<Grade> left;
    bool any = false;
    for (const TimelineLane& lane : lanes) {
        for (const TimelineMark& mark : lane.marks) {
            if (mark.on != all.on || mark.visitId != all.visitId)
                continue;
            any |= mark.left.has_value();
            const auto after = mark.left ? mark.left : mark.found;
            if (worse(after, left))
                left = after;
        }
    }
    return any ? left : std::nullopt;
}

} // namespace

TimelineLane worstOf(std::span<const TimelineLane> lanes)
{
    TimelineLane worst;
    worst.name = PADSIDE_SAY("worst of its zones");
    for (const TimelineLane& lane : lanes) {
        worst.zones.insert(worst.zones.end(), lane.zones.begin(), lane.zones.end());
        if (lane.lives.size() > worst.lives.size())
            worst.lives = lane.lives;
        for (const TimelineMark& mark : lane.marks) {
            auto known = std::ranges::find_if(worst.marks, [&mark](const TimelineMark& one) {
                return one.on == mark.on && one.visitId == mark.visitId;
            });
            if (known == worst.marks.end()) {
                TimelineMark fresh;
                fresh.on = mark.on;
                fresh.visitId = mark.visitId;
                fresh.reason = mark.reason;
                fresh.openVisit = mark.openVisit;
                worst.marks.push_back(fresh);
                known = worst.marks.end() - 1;
            }
            addMark(*known, mark, lane.name);
        }
    }
    worst.bands = worstBands(lanes);
    std::ranges::stable_sort(worst.marks, {}, &TimelineMark::on);
    for (TimelineMark& mark : worst.marks) {
        mark.left = leftAs(lanes, mark);
        if (mark.found)
            mark.notSeen.reset(); // the numeral stands; how many zones were not seen is said in words
        const auto band = std::ranges::find_if(
            worst.bands, [&mark](const TimelineBand& one) { return one.from < mark.on && one.to >= mark.on; });
        if (band != worst.bands.end())
            mark.before = band->grade;
    }
    return worst;
}

} // namespace padside
