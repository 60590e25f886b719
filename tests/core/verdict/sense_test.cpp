// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

using ::testing::HasSubstr;

class Sense : public VerdictTest
{
};

TEST_F(Sense, AWetBulbAboveTheAirIsQuestioned)
{
    read("return-dry-bulb", "70 F");
    read("return-wet-bulb", "72 F");
    EXPECT_EQ(judgementOf("wet-bulb-above-dry-bulb"), Judgement::doubtful);
}

TEST_F(Sense, ASuctionLineWarmerThanAnyAirAroundIsQuestioned)
{
    read("outdoor-dry-bulb", "90 F");
    read("return-dry-bulb", "75 F");
    read("suction-line-temperature", "96 F");
    EXPECT_EQ(judgementOf("suction-line-hot"), Judgement::doubtful);
    EXPECT_THAT(said("suction-line-hot"), HasSubstr("right pipe"));
}

TEST_F(Sense, ALiquidLineColderThanTheOutdoorAirIsQuestioned)
{
    read("outdoor-dry-bulb", "90 F");
    read("liquid-line-temperature", "80 F");
    EXPECT_EQ(judgementOf("liquid-line-cold"), Judgement::doubtful);
}

TEST_F(Sense, SwappedHosesAreQuestioned)
{
    read("suction-pressure", "230 psig");
    read("liquid-pressure", "70 psig");
    EXPECT_EQ(judgementOf("pressures-swapped"), Judgement::doubtful);
}

TEST_F(Sense, KilopascalsTypedAsPsigAreQuestioned)
{
    read("outdoor-dry-bulb", "35 C");
    read("return-dry-bulb", "24 C");
    read("suction-pressure", "472 psig"); // 472 kPa was meant
    EXPECT_EQ(judgementOf("boiling-above-return-air"), Judgement::doubtful);
    EXPECT_THAT(said("boiling-above-return-air"), HasSubstr("another unit of measure"));
}

TEST_F(Sense, CondensingBelowTheOutdoorAirIsQuestioned)
{
    read("outdoor-dry-bulb", "95 F");
    read("liquid-pressure", "150 psig");
    EXPECT_EQ(judgementOf("condensing-below-outdoor"), Judgement::doubtful);
}

TEST_F(Sense, HeatingHasItsOwnSense)
{
    m_conditions.running = Running::heating;
    read("return-dry-bulb", "70 F");
    read("supply-dry-bulb", "95 F");
    read("outdoor-dry-bulb", "40 F");
    read("liquid-line-temperature", "35 F");
    EXPECT_TRUE(verdicts().empty()) << "a warm supply and a cold liquid line are right in heating";
}

TEST_F(Sense, OrdinaryReadingsAreNotQuestioned)
{
    read("outdoor-dry-bulb", "90 F");
    read("return-dry-bulb", "75 F");
    read("return-wet-bulb", "63 F");
    read("supply-dry-bulb", "56 F");
    read("suction-pressure", "68 psig");
    read("suction-line-temperature", "52 F");
    read("liquid-pressure", "240 psig");
    read("liquid-line-temperature", "102 F");
    for (const Verdict& verdict : verdicts())
        EXPECT_NE(verdict.judgement, Judgement::doubtful) << say(verdict.sentence);
}

} // namespace padside::test
