// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/move_risk.h"
#include "core/review/record_at.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using testing::HasSubstr;
using testing::IsEmpty;

class MoveRisks : public testing::Test
{
protected:
    [[nodiscard]] SiteSeason season(std::vector<MovedTrip> moves = {}) const
    {
        return siteSeason({std::make_shared<const ReviewedUnit>(reviewedUnit(m_record, m_catalogue, m_model, m_today))},
                          std::move(moves), m_today);
    }

    /// The trip that looks at the bottom.
    [[nodiscard]] std::size_t tripFor(const SiteSeason& season) const
    {
        for (std::size_t i = 0; i < season.trips.size(); ++i) {
            for (const SeasonCheck& check : season.trips[i].checks) {
                if (std::ranges::find(check.check().zones, m_bottom) != check.check().zones.end())
                    return i;
            }
        }
        throw std::logic_error("no trip looks at the bottom");
    }

    [[nodiscard]] double exact(Date on) const
    {
        return chanceSpentBy(*zoneBelief(m_record, m_catalogue, m_model, m_bottom, m_today), on);
    }

    Date m_today = day("2026-05-05");
    Catalogue m_catalogue = test::smallCatalogue();
    OutlookModel m_model{m_catalogue};
    UnitRecord m_record = aUnit("HB-01")
                              .withPart("suction-accumulator", {"crown", "bottom"})
                              .visit("2026-05-04")
                              .graded("crown", 1)
                              .graded("bottom", 4)
                              .build();
    ZoneId m_bottom = m_record.parts[0].zones[1].id;
};

} // namespace

TEST_F(MoveRisks, ALaterDayLiftsTheChanceThatTheWorstZoneIsSpentUnseen)
{
    const SiteSeason plan = season();
    const std::size_t trip = tripFor(plan);
    const Date from = plan.trips[trip].on;
    const Date to = from + std::chrono::days(60);
    const MoveRisk risk = riskOfMove(plan, trip, plan.costOfMove(trip, to));
    ASSERT_TRUE(risk.worst);
    EXPECT_EQ(risk.worst->zoneId, m_bottom);
    EXPECT_NEAR(risk.worst->before, exact(from), 0.05 * exact(from));
    EXPECT_NEAR(risk.worst->after, exact(to), 0.05 * exact(to));
    EXPECT_GT(risk.anyAfter, risk.anyBefore);
    const auto sentences = riskSentences(risk, m_catalogue);
    ASSERT_EQ(sentences.size(), 2U);
    EXPECT_THAT(say(sentences[0]),
                testing::StartsWith("The chance that something is already spent when you look at it rises from "));
    EXPECT_THAT(say(sentences[0]),
                testing::EndsWith(" if you go on " + isoText(to) + " instead of " + isoText(from) + "."));
    EXPECT_THAT(
        say(sentences[1]),
        testing::StartsWith(
            "Suction accumulator, bottom (HB-01): the chance that it is spent before you see it rises most, from "));
    EXPECT_THAT(say(sentences[1]), testing::EndsWith(", past the 2 % tolerated."));
}

TEST_F(MoveRisks, AnEarlierDayCostsNoRisk)
{
    const SiteSeason plan = season();
    const std::size_t trip = tripFor(plan);
    const MoveRisk risk = riskOfMove(plan, trip, plan.costOfMove(trip, plan.trips[trip].on - std::chrono::days(3)));
    EXPECT_FALSE(risk.worst);
    EXPECT_THAT(riskSentences(risk, m_catalogue), IsEmpty());
}

TEST_F(MoveRisks, ATripOnAChosenDaySaysWhatThatRisksAgainstTheDayWorkedOut)
{
    const SiteSeason plan = season();
    const Date from = plan.trips[tripFor(plan)].on;
    const Date to = from + std::chrono::days(60);
    const SiteSeason chosen = season({{from, to}});
    const MoveRisk risk = riskOfMove(chosen, tripFor(chosen), chosen.costOfChoice(tripFor(chosen)));
    ASSERT_TRUE(risk.worst);
    EXPECT_EQ(risk.on, to);
    EXPECT_EQ(risk.instead, from);
    EXPECT_NEAR(risk.worst->before, exact(from), 0.05 * exact(from));
    EXPECT_NEAR(risk.worst->after, exact(to), 0.05 * exact(to));
}

TEST_F(MoveRisks, AKeptDayRisksNothingUntilTheOutlookWantsAnEarlierOneAndThenItIsSaid)
{
    const SiteSeason plan = season();
    const std::size_t trip = tripFor(plan);
    const auto kept = plan.movesWithKept(trip, m_catalogue);
    const SiteSeason same = season(kept);
    EXPECT_EQ(same.trips[trip].on, plan.trips[trip].on);
    EXPECT_FALSE(riskOfMove(same, trip, same.costOfChoice(trip)).worst);

    // A promise to look at it, made since, asks for it ten days before.
    const Date day = plan.trips[trip].on;
    m_record.followUps.push_back({});
    FollowUp& promise = m_record.followUps.back();
    promise.unitId = m_record.unit.id;
    promise.madeAt = m_record.visits.back().id;
    promise.zoneId = m_bottom;
    promise.earliest = m_today;
    promise.latest = day - std::chrono::days(10);
    const SiteSeason later = season(kept);
    const std::size_t stays = tripFor(later);
    ASSERT_EQ(later.trips[stays].on, day) << "the kept day stays";
    EXPECT_EQ(later.trips[stays].daysLate(), 10);
    const MoveRisk risk = riskOfMove(later, stays, later.costOfChoice(stays));
    ASSERT_TRUE(risk.worst);
    EXPECT_EQ(risk.instead, day - std::chrono::days(10));
    EXPECT_GT(risk.worst->after, risk.worst->before);
    EXPECT_THAT(riskSentences(risk, m_catalogue), testing::SizeIs(2));
}

TEST_F(MoveRisks, WhatIsAsGoodAsSpentAnywayIsNotSaidToRise)
{
    const SiteSeason plan = season();
    const std::size_t trip = tripFor(plan);
    MoveRisk risk = riskOfMove(plan, trip, plan.costOfMove(trip, plan.trips[trip].on + std::chrono::days(60)));
    ASSERT_TRUE(risk.worst);
    risk.anyBefore = 0.99;
    risk.anyAfter = 0.999;
    EXPECT_THAT(riskSentences(risk, m_catalogue), testing::SizeIs(1)) << "the worst zone only";
}

TEST_F(MoveRisks, WhatAnotherTripSeesInTimeIsNotAtRisk)
{
    // Moved so early that the bottom's window has not begun: another trip serves it on the day it would have had.
    const SiteSeason plan = season();
    const std::size_t trip = tripFor(plan);
    const MoveCost cost = plan.costOfMove(trip, m_today);
    ASSERT_EQ(cost.servedOn.size(), plan.trips[trip].checks.size());
    ASSERT_FALSE(cost.tooEarly.empty());
    EXPECT_GT(cost.servedOn.front(), m_today);
    const MoveRisk risk = riskOfMove(plan, trip, cost);
    EXPECT_NEAR(risk.anyAfter, risk.anyBefore, 0.01);
}

} // namespace padside
