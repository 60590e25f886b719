// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

using ::testing::HasSubstr;

namespace {

/// 68.5 psig boils at 40 °F (computed from the published curve; printed tables say the same).
class ChargeReadings : public VerdictTest
{
protected:
    void suctionAt40F(const std::string& line)
    {
        read("suction-pressure", "68.5 psig");
        read("suction-line-temperature", line);
    }
};

} // namespace

TEST_F(ChargeReadings, SuperheatIsTheLineAboveTheBoilingTemperature)
{
    suctionAt40F("53 F");
    read("return-wet-bulb", "67 F");
    read("outdoor-dry-bulb", "95 F");
    const auto superheat = verdict("superheat");
    ASSERT_TRUE(superheat);
    EXPECT_NEAR(superheat->value->si, 13 * fahrenheitStep, 0.05) << "40 °F: trade_checks, published correlation";
    EXPECT_EQ(superheat->judgement, Judgement::within);
}

TEST_F(ChargeReadings, AFixedOrificeIsHeldAgainstTheChart)
{
    // Printed chart: wet bulb 66 °F, outdoors 95 °F asks for 10 °F (two makers' installation instructions).
    suctionAt40F("50 F");
    read("return-wet-bulb", "66 F");
    read("outdoor-dry-bulb", "95 F");
    const auto superheat = verdict("superheat");
    ASSERT_TRUE(superheat);
    EXPECT_EQ(superheat->judgement, Judgement::within);
    EXPECT_NEAR((superheat->lowest->si + superheat->highest->si) / 2, 10 * fahrenheitStep, 0.02);
    EXPECT_FALSE(superheat->source.empty());
}

TEST_F(ChargeReadings, SixDegreesFahrenheitOffIsWatchedAndElevenIsOutside)
{
    suctionAt40F("56.1 F");
    read("return-wet-bulb", "66 F");
    read("outdoor-dry-bulb", "95 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::watch) << "California Title 24: within 5 °F";
}

TEST_F(ChargeReadings, MuchTooHighIsOutsideAndSaysWhatItMeans)
{
    suctionAt40F("70 F");
    read("return-wet-bulb", "66 F");
    read("outdoor-dry-bulb", "95 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::outside);
    EXPECT_THAT(said("superheat"), HasSubstr("less refrigerant than it could boil"));
}

TEST_F(ChargeReadings, WhereTheChartHasADashThereIsNoTargetAndItSaysSo)
{
    suctionAt40F("50 F");
    read("return-wet-bulb", "52 F");
    read("outdoor-dry-bulb", "95 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::unjudged);
    EXPECT_THAT(said("superheat"), HasSubstr("no target"));
}

TEST_F(ChargeReadings, TheNameplateGoesBeforeChartAndRules)
{
    onPlate("superheat-target", "20 F");
    suctionAt40F("60 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::within);
    EXPECT_THAT(verdict("superheat")->source, HasSubstr("nameplate"));
}

TEST_F(ChargeReadings, AThermostaticValveIsHeldAgainstItsWideRange)
{
    m_unit.metering = Metering::thermostaticValve;
    suctionAt40F("66 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::outside) << "California Title 24: 4 to 25 °F";
    EXPECT_NEAR(verdict("superheat")->highest->si, 25 * fahrenheitStep, 0.02);
}

TEST_F(ChargeReadings, UnknownMeteringGivesTheSuperheatButNoTarget)
{
    m_unit.metering = Metering::unknown;
    suctionAt40F("53 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::unjudged);
    EXPECT_THAT(said("superheat"), HasSubstr("metered"));
}

TEST_F(ChargeReadings, ColderThan55FOutdoorsTheChargeIsNotJudged)
{
    suctionAt40F("53 F");
    read("outdoor-dry-bulb", "54 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::unjudged) << "California Title 24: outdoors at least 55 °F";
    EXPECT_THAT(said("superheat"), HasSubstr("weigh it"));
}

TEST_F(ChargeReadings, HeatingIsNoTimeToJudgeTheCharge)
{
    m_conditions.running = Running::heating;
    suctionAt40F("53 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::unjudged);
}

TEST_F(ChargeReadings, ALineColderThanTheBoilingTemperatureIsQuestionedNotRefused)
{
    suctionAt40F("35 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::doubtful);
    EXPECT_THAT(said("superheat"), HasSubstr("a reading is off"));
}

TEST_F(ChargeReadings, PsiaTypedForPsigIsRecognisedAndTheGaugePressureTold)
{
    // 68.5 psig is 83.2 psia; typed as psig it boils near 50 °F, above a line of 48 °F.
    read("suction-pressure", "83.2 psig");
    read("suction-line-temperature", "48 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::doubtful);
    EXPECT_THAT(said("superheat"), HasSubstr("absolute"));
    EXPECT_THAT(said("superheat"), HasSubstr("472 kPa")) << "68.5 psig";
}

TEST_F(ChargeReadings, TheSitesAltitudeCounts)
{
    m_unit.refrigerant = "R-410A";
    m_unit.metering = Metering::thermostaticValve;
    read("suction-pressure", "118 psig");
    read("suction-line-temperature", "52 F");
    const double atSea = verdict("superheat")->value->si;
    m_altitudeM = 1524; // 5 000 ft
    const double high = verdict("superheat")->value->si;
    EXPECT_NEAR(high - atSea, 1.1 * fahrenheitStep, 0.06) << "computed: 1.1 °F on R-410A at 118 psig at 5 000 ft";
}

TEST_F(ChargeReadings, SubcoolingIsHeldAgainstTheNameplate)
{
    onPlate("subcooling-target", "10 F");
    read("liquid-pressure", "226.4 psig"); // R-22 condenses at 110 °F, published correlation
    read("liquid-line-temperature", "99 F");
    read("outdoor-dry-bulb", "90 F");
    EXPECT_NEAR(verdict("subcooling")->value->si, 11 * fahrenheitStep, 0.05);
    EXPECT_EQ(judgementOf("subcooling"), Judgement::within) << "California Title 24: within 3 °F";
}

TEST_F(ChargeReadings, ALiquidLineWarmerThanItCondensesIsQuestioned)
{
    read("liquid-pressure", "226.4 psig");
    read("liquid-line-temperature", "113 F");
    EXPECT_EQ(judgementOf("subcooling"), Judgement::doubtful);
    EXPECT_THAT(said("subcooling"), HasSubstr("vapour in the line"));
}

TEST_F(ChargeReadings, AFixedOrificeIsNotJudgedBySubcooling)
{
    read("liquid-pressure", "226.4 psig");
    read("liquid-line-temperature", "99 F");
    EXPECT_EQ(judgementOf("subcooling"), Judgement::unjudged);
    EXPECT_THAT(said("subcooling"), HasSubstr("fixed orifice"));
}

TEST_F(ChargeReadings, SplitsComeFromPressureAndAir)
{
    read("outdoor-dry-bulb", "90 F");
    read("liquid-pressure", "260.0 psig"); // 120 °F
    EXPECT_NEAR(verdict("condenser-split")->value->si, 30 * fahrenheitStep, 0.06);
    read("return-dry-bulb", "75 F");
    read("suction-pressure", "68.5 psig");
    EXPECT_NEAR(verdict("evaporator-split")->value->si, 35 * fahrenheitStep, 0.06);
    EXPECT_EQ(judgementOf("evaporator-split"), Judgement::within) << "common practice, no source: 35 °F";
}

TEST_F(ChargeReadings, AnUnknownRefrigerantHasNoAnswerAndIsNamed)
{
    m_unit.refrigerant = "R-999Z";
    suctionAt40F("50 F");
    EXPECT_EQ(judgementOf("superheat"), Judgement::unjudged);
    EXPECT_THAT(said("superheat"), HasSubstr("R-999Z"));
}

TEST_F(ChargeReadings, APressureOutsideTheCurveHasNoAnswer)
{
    m_unit.refrigerant = "R-410A";
    read("liquid-pressure", "700 psig");
    read("liquid-line-temperature", "120 F");
    EXPECT_EQ(judgementOf("subcooling"), Judgement::unjudged);
    EXPECT_FALSE(said("subcooling").empty());
}

TEST_F(ChargeReadings, SuperheatFallsWhenThePressureRises)
{
    double last = 1e9;
    for (int psig = 20; psig <= 120; psig += 5) {
        const Measured one(
            {{"suction-pressure", {}, psig * 6894.757293168, {}}, {"suction-line-temperature", {}, 330.0, {}}}, {},
            m_unit, 0, m_conditions, m_catalogue);
        ASSERT_TRUE(one.superheatK()) << psig;
        EXPECT_LT(*one.superheatK(), last);
        last = *one.superheatK();
    }
}

} // namespace padside::test
