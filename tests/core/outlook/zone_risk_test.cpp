// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/zone_risk.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <cmath>
#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

/// The small catalogue's model, or one with changes.
class RiskOf
{
public:
    explicit RiskOf(const std::string& ownChanges = {})
        : m_catalogue(test::smallCatalogue(ownChanges))
    {
    }

    [[nodiscard]] ZoneBelief belief(const RecordBuilder& builder, const std::string& zone,
                                    const std::string& today) const
    {
        return *zoneBelief(builder.build(), m_catalogue, m_model, builder.zone(zone), day(today));
    }
    [[nodiscard]] ZoneRisk operator()(const RecordBuilder& builder, const std::string& zone,
                                      const std::string& today) const
    {
        return zoneRisk(belief(builder, zone, today), m_catalogue);
    }
    [[nodiscard]] const OutlookModel& model() const { return m_model; }

private:
    Catalogue m_catalogue;
    OutlookModel m_model{m_catalogue};
};

RecordBuilder bottomSeen(int grade, const std::string& on = "2026-05-04")
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit(on).graded("bottom", grade);
}

constexpr std::chrono::days aDay(1);

} // namespace

TEST(ZoneRisk, ItsLastDayIsTheLastOneOnWhichTheChanceIsWithinTheTolerance)
{
    const RiskOf riskOf;
    for (const int grade : {3, 4}) {
        SCOPED_TRACE(grade);
        const auto builder = bottomSeen(grade);
        const ZoneRisk risk = riskOf(builder, "bottom", "2026-05-10");
        const ZoneBelief belief = riskOf.belief(builder, "bottom", "2026-05-10");
        EXPECT_EQ(risk.tolerance, 0.02);
        ASSERT_TRUE(risk.withinUntil);
        EXPECT_LE(chanceSpentBy(belief, *risk.withinUntil), 0.02);
        EXPECT_GT(chanceSpentBy(belief, *risk.withinUntil + aDay), 0.02);
        EXPECT_EQ(risk.overOn, *risk.withinUntil + aDay);
    }
    EXPECT_FALSE(riskOf(bottomSeen(1), "bottom", "2026-05-10").withinUntil) << "a sound zone has years";
}

TEST(ZoneRisk, AgreesWithTheErlangDistributionWhereThePaceIsCertain)
{
    // Flat before the first sighting, graded 4: by Bayes' rule poor with 0.95, marked with 0.05 (the misgrading). Equal
    // rates q, no spread of pace: the time from poor is exponential, that from marked Erlang of two stages.
    const RiskOf riskOf(R"({"outlook": {"pace_sigma": 0}})");
    const double q = riskOf.model().ratesOf("suction-accumulator", false).at(3);
    const ZoneRisk risk = riskOf(bottomSeen(4), "bottom", "2026-05-04");
    const auto chance = [q](double years) {
        const double x = q * years;
        return 0.95 * -std::expm1(-x) + 0.05 * (1 - std::exp(-x) * (1 + x));
    };
    ASSERT_TRUE(risk.withinUntil);
    const auto days = static_cast<double>((*risk.withinUntil - day("2026-05-04")).count());
    EXPECT_LE(chance(days / 365.25), 0.02);
    EXPECT_GT(chance((days + 1) / 365.25), 0.02);
    for (const ChanceBy& one : risk.course)
        EXPECT_NEAR(one.chance, chance(static_cast<double>((one.by - day("2026-05-04")).count()) / 365.25), 1e-9);
}

TEST(ZoneRisk, ItsLastDayStaysTheSameWhileNothingIsSeen)
{
    const RiskOf riskOf;
    const auto onSight = riskOf(bottomSeen(3), "bottom", "2026-05-04").withinUntil;
    ASSERT_TRUE(onSight);
    for (const char* today : {"2026-06-01", "2027-05-04", "2029-01-01"})
        EXPECT_EQ(riskOf(bottomSeen(3), "bottom", today).withinUntil, onSight) << today;
}

TEST(ZoneRisk, LooksInVainDontMoveTheLastDayThoughTheUnitRan)
{
    const RiskOf riskOf;
    const auto seen = bottomSeen(3);
    const auto inVain = RecordBuilder(seen).visit("2026-09-20").notSeen("bottom", NotSeenReason::running);
    const ZoneRisk before = riskOf(seen, "bottom", "2026-10-01");
    const ZoneRisk after = riskOf(inVain, "bottom", "2026-10-01");
    EXPECT_EQ(after.withinUntil, before.withinUntil);
    EXPECT_LT(after.course.front().chance, before.course.front().chance) << "but it was not spent while it ran";
}

TEST(ZoneRisk, OverAlreadyMeansFromToday)
{
    const ZoneRisk risk = RiskOf()(bottomSeen(4, "2024-05-04"), "bottom", "2026-05-04");
    EXPECT_EQ(risk.overOn, day("2026-05-04"));
    ASSERT_TRUE(risk.withinUntil);
    EXPECT_LT(*risk.withinUntil, day("2024-12-01"));
}

TEST(ZoneRisk, WithoutABeginningThereIsNoLastDay)
{
    const auto never = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    const ZoneRisk risk = RiskOf()(never, "bottom", "2026-05-04");
    EXPECT_FALSE(risk.withinUntil);
    EXPECT_TRUE(risk.overOn) << "flat over sound to poor";
    const auto old = aUnit("HB-01").withPart("suction-accumulator", {"bottom"}, "1990-05-04");
    EXPECT_TRUE(RiskOf()(old, "bottom", "2026-05-04").withinUntil);
}

TEST(ZoneRisk, TheLeastToleratedConsequenceOfItsPartCountsUnlessTheZoneHasItsOwn)
{
    const auto risk = [](const std::string& own) { return RiskOf(own)(bottomSeen(3), "bottom", "2026-05-10"); };
    EXPECT_EQ(risk("").toleratedAs, Consequence::lossOfCharge);
    const ZoneRisk looks
        = risk(R"({"part_kinds": {"suction-accumulator": {"zones": {"bottom": {"tolerated_as": "looks"}}}}})");
    EXPECT_EQ(looks.toleratedAs, Consequence::looks);
    EXPECT_EQ(looks.tolerance, 0.2);
    const ZoneRisk stricter = risk(R"({"assumptions": {"spent-tolerance-ends-unit": {"value": 0.001}}})");
    EXPECT_EQ(stricter.toleratedAs, Consequence::endsUnit);
    EXPECT_LT(*stricter.withinUntil, *risk("").withinUntil);
}

TEST(ZoneRisk, AToleranceMayBeAsSmallOrAsLargeAsItsBounds)
{
    const auto tolerance = [](const std::string& value) {
        return test::smallCatalogue(R"({"assumptions": {"spent-tolerance-looks": {"value": )" + value + "}}}")
            .spentTolerance(Consequence::looks);
    };
    EXPECT_EQ(tolerance("0.0001"), 0.0001);
    EXPECT_EQ(tolerance("0.5"), 0.5);
    EXPECT_THROW(static_cast<void>(tolerance("0")), std::invalid_argument) << "no check could ever be early enough";
    EXPECT_THROW(static_cast<void>(tolerance("0.51")), std::invalid_argument);
}

TEST(ZoneRisk, ItsCourseIsCloseToTheBeliefOnEveryDayAndNeverFalls)
{
    const RiskOf riskOf;
    for (const int grade : {2, 3, 4}) {
        const auto builder = bottomSeen(grade).treated("bottom", TreatmentKind::brushAndCoat);
        const ZoneRisk risk = riskOf(builder, "bottom", "2028-12-01"); // the coat ends within the course
        const ZoneBelief belief = riskOf.belief(builder, "bottom", "2028-12-01");
        double before = 0;
        for (Date on = day("2028-12-01"); on <= addMonths(day("2028-12-01"), riskMonths); on += 5 * aDay) {
            const double exact = chanceSpentBy(belief, on);
            EXPECT_NEAR(risk.chanceOn(on), exact, 0.05 * exact + 0.001) << grade << " " << isoText(on);
            EXPECT_GE(risk.chanceOn(on), before);
            before = risk.chanceOn(on);
        }
    }
}

} // namespace padside
