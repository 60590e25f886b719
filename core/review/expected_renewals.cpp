// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/expected_renewals.h"

#include "core/outlook/forecast.h"

namespace padside {

namespace {

constexpr int longAfterAnyCoat = 50; // years; a coat's life is at most 30

std::vector<double> spentByOfNew(const DecayingPart& part, const OutlookModel& model, int years)
{
    std::vector<double> chances;
    std::vector<Belief> zones(part.zones.size(), Belief(model.pace(), Grade::sound));
    for (int year = 1; year <= years; ++year) {
        double none = 1;
        for (std::size_t zone = 0; zone < zones.size(); ++zone) {
            zones[zone].carryForward(*model.chainOf(part.part->kind, false), bareSpeed(*part.zones[zone]));
            none *= 1 - zones[zone].chanceSpent();
        }
        chances.push_back(1 - none);
    }
    return chances;
}

} // namespace

std::vector<DecayingPart> decayingParts(const UnitRecord& record, const Catalogue& catalogue,
                                        std::span<const ZoneBelief> beliefs)
{
    std::vector<DecayingPart> parts;
    for (const Part& part : record.parts) {
        DecayingPart one{&part, catalogue.partKind(part.kind), {}};
        for (const ZoneBelief& belief : beliefs) {
            if (belief.trail.partId == part.id && !belief.trail.soils)
                one.zones.push_back(&belief);
        }
        if (one.kind != nullptr && !one.zones.empty())
            parts.push_back(std::move(one));
    }
    return parts;
}

double chanceSpentBy(const DecayingPart& part, Date by)
{
    double none = 1;
    for (const ZoneBelief* zone : part.zones)
        none *= 1 - chanceSpentBy(*zone, by);
    return 1 - none;
}

double bareSpeed(const ZoneBelief& zone)
{
    return zone.trail.clock.speedOn(addMonths(zone.trail.today, longAfterAnyCoat * monthsAYear));
}

std::vector<double> renewals(std::span<const double> firstSpentBy, std::span<const double> nextSpentBy)
{
    const auto inStep = [](std::span<const double> spentBy, std::size_t step) {
        return spentBy[step] - (step > 0 ? spentBy[step - 1] : 0);
    };
    std::vector<double> all;
    for (std::size_t step = 0; step < firstSpentBy.size(); ++step) {
        double expected = inStep(firstSpentBy, step);
        for (std::size_t before = 0; before < step; ++before)
            expected += all[before] * inStep(nextSpentBy, step - before - 1);
        all.push_back(expected);
    }
    return all;
}

std::vector<double> expectedRenewals(const DecayingPart& part, const OutlookModel& model, Date today, int years)
{
    std::vector<double> first;
    for (int year = 1; year <= years; ++year)
        first.push_back(chanceSpentBy(part, addMonths(today, year * monthsAYear)));
    return renewals(first, spentByOfNew(part, model, years));
}

std::vector<double> expectedRenewalsOfNew(const DecayingPart& part, const OutlookModel& model, int years)
{
    const std::vector<double> spentBy = spentByOfNew(part, model, years);
    return renewals(spentBy, spentBy);
}

} // namespace padside
