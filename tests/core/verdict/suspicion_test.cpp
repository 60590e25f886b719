// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

using ::testing::HasSubstr;

/// The patterns of the trade (common practice, no source), on readings as they come: outdoors 90 °F, return air 75 °F
/// with a wet bulb of 64 °F, R-22; the nameplate asks for 9 °F of superheat and 10 °F of subcooling.
class Suspicions : public VerdictTest
{
protected:
    Suspicions()
    {
        onPlate("superheat-target", "9 F");
        onPlate("subcooling-target", "10 F");
        read("outdoor-dry-bulb", "90 F");
        read("return-dry-bulb", "75 F");
    }

    void pressures(const std::string& suction, const std::string& suctionLine, const std::string& liquid,
                   const std::string& liquidLine)
    {
        read("suction-pressure", suction);
        read("suction-line-temperature", suctionLine);
        read("liquid-pressure", liquid);
        read("liquid-line-temperature", liquidLine);
    }

    [[nodiscard]] std::vector<Suspicion> suspicions() const { return suspicionsFrom(verdicts(), m_unit); }
    [[nodiscard]] std::string first() const
    {
        const auto all = suspicions();
        return all.empty() ? "" : all.front().code;
    }
};

TEST_F(Suspicions, HighSuperheatLowSubcoolingLowPressuresIsLowCharge)
{
    pressures("43.1 psig", "52 F", "180 psig", "92 F"); // boils at 20 °F, superheat 32; condenses near 94 °F
    EXPECT_EQ(first(), "low-charge");
    const auto all = suspicions();
    EXPECT_GE(all.front().speaksFor.size(), 3U);
    EXPECT_THAT(say(all.front().decides), HasSubstr("leak"));
}

TEST_F(Suspicions, HighSuperheatAndHighSubcoolingIsARestriction)
{
    pressures("43.1 psig", "52 F", "226.4 psig", "91 F"); // subcooling 19
    EXPECT_EQ(first(), "restriction");
}

TEST_F(Suspicions, TheDrierTellsARestriction)
{
    pressures("43.1 psig", "52 F", "226.4 psig", "91 F");
    const double before = suspicions().front().weight;
    read("drier-drop", "6 F");
    EXPECT_GT(suspicions().front().weight, before);
}

TEST_F(Suspicions, LowSuperheatHighSubcoolingHighHeadIsTooMuchCharge)
{
    pressures("84.1 psig", "51 F", "311.5 psig", "108 F"); // boils 50, superheat 1; condenses 135 °F, subcooling 26
    EXPECT_EQ(first(), "overcharge");
}

TEST_F(Suspicions, LowSuperheatLowSuctionAndAColdSupplyIsLowAirflow)
{
    pressures("43.1 psig", "21 F", "195.9 psig", "91 F"); // boils 20, superheat 1; condenses 100, subcooling 9
    read("return-wet-bulb", "63 F");
    read("supply-dry-bulb", "50 F");
    EXPECT_EQ(first(), "low-airflow");
}

TEST_F(Suspicions, HighSuctionLowHeadIsACompressorThatPumpsLittle)
{
    pressures("121.4 psig", "72 F", "174 psig", "91.5 F"); // boils 70; condenses 92
    EXPECT_EQ(first(), "not-pumping");
}

TEST_F(Suspicions, OnlyTheHeadHighIsTheOutdoorCoil)
{
    pressures("68.5 psig", "49 F", "295 psig", "119.5 F"); // condenses near 130 °F, subcooling 10.5
    EXPECT_EQ(first(), "dirty-condenser");
}

TEST_F(Suspicions, WhatSpeaksAgainstIsToldToo)
{
    pressures("43.1 psig", "52 F", "180 psig", "92 F");
    for (const Suspicion& one : suspicions()) {
        if (one.code == "restriction") {
            EXPECT_FALSE(one.speaksAgainst.empty()) << "low subcooling speaks against it";
        }
    }
}

TEST_F(Suspicions, ReadingsAsAskedForRaiseNone)
{
    pressures("68.5 psig", "49 F", "241 psig", "104 F"); // superheat 9; condenses 114 °F, subcooling 10
    EXPECT_TRUE(suspicions().empty()) << suspicions().front().code;
}

TEST_F(Suspicions, OneReadingAloneRaisesNone)
{
    read("suction-pressure", "43.1 psig");
    EXPECT_TRUE(suspicions().empty());
}

TEST_F(Suspicions, QuestionedReadingsCountForNothing)
{
    pressures("230 psig", "52 F", "70 psig", "92 F"); // hoses swapped
    EXPECT_TRUE(suspicions().empty());
}

TEST_F(Suspicions, AreRankedTheLikeliestFirst)
{
    pressures("43.1 psig", "52 F", "180 psig", "92 F");
    const auto all = suspicions();
    EXPECT_TRUE(std::ranges::is_sorted(all, std::greater{}, &Suspicion::weight));
}

} // namespace padside::test
