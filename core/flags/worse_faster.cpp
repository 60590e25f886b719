// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <span>

namespace padside {

namespace {

/// From the first sighting at one grade to the first sighting at the next worse one.
struct Step
{
    SeenGrade from;
    SeenGrade to;

    [[nodiscard]] int grades() const { return numeral(to.grade) - numeral(from.grade); }
    [[nodiscard]] double days() const { return static_cast<double>((to.on - from.on).count()); }
    [[nodiscard]] double gradesPerDay() const { return grades() / days(); }
};

/// The step that ends at seen.back(); empty unless that sighting is worse than the one before it.
std::optional<Step> stepTo(std::span<const SeenGrade> seen, std::size_t& startsAt)
{
    if (seen.size() < 2 || seen.back().grade <= seen[seen.size() - 2].grade)
        return std::nullopt;
    startsAt = seen.size() - 2;
    while (startsAt > 0 && seen[startsAt - 1].grade == seen[startsAt].grade)
        --startsAt;
    return Step{seen[startsAt], seen.back()};
}

Severity severityOf(Grade now)
{
    return now >= Grade::marked ? Severity::plan : Severity::look;
}

} // namespace

std::optional<Worry> worseFaster(const ZoneView& zone)
{
    const std::span<const SeenGrade> seen(zone.history.seen);
    const double fewestDays = zone.catalogue.assumption("faster-minimum-days");
    std::size_t start = 0;
    const auto step = stepTo(seen, start);
    if (!step || step->days() < fewestDays || zone.history.known->grade <= step->from.grade)
        return std::nullopt;

    Worry worry;
    worry.severity = severityOf(step->to.grade);
    worry.clears = Sentence{PADSIDE_SAY("Seen no worse at the next visit, or worked on and left at {0} {1} or better."),
                            {numeralOf(step->from.grade), nameOf(step->from.grade)}};
    std::size_t startBefore = 0;
    if (const auto before = stepTo(seen.first(start + 1), startBefore)) {
        if (before->days() < fewestDays
            || step->gradesPerDay() < before->gradesPerDay() * zone.catalogue.assumption("faster-factor"))
            return std::nullopt;
        worry.sentence
            = about(subjectOf(zone),
                    PADSIDE_SAY("{0}{1}, {2}: from {3} {4} to {5} {6} in {7} months, before that from {8} {9} to {3} "
                                "{4} in {10} months; "
                                "getting worse faster."),
                    {numeralOf(step->from.grade), nameOf(step->from.grade), numeralOf(step->to.grade),
                     nameOf(step->to.grade), monthsIn(step->from.on, step->to.on), numeralOf(before->from.grade),
                     nameOf(before->from.grade), monthsIn(before->from.on, before->to.on)});
        worry.evidence = {before->from.findingId, step->from.findingId, step->to.findingId};
        return worry;
    }

    const SeenGrade& lastHeld = seen[seen.size() - 2];
    if (step->grades() < 2 || static_cast<double>((lastHeld.on - step->from.on).count()) < fewestDays)
        return std::nullopt;
    worry.sentence = about(
        subjectOf(zone),
        PADSIDE_SAY(
            "{0}{1}, {2}: held at {3} {4} from {5} to {6}, then {7} grades worse by {8}; getting worse faster."),
        {numeralOf(step->from.grade), nameOf(step->from.grade), step->from.on, lastHeld.on,
         static_cast<std::int64_t>(step->grades()), step->to.on});
    worry.evidence = {step->from.findingId, lastHeld.findingId, step->to.findingId};
    return worry;
}

} // namespace padside
