// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

using ::testing::HasSubstr;

/// Air of 90 °F and 60 %: dew point 74.2 °F (computed from ASHRAE Fundamentals' formulas).
class Sweating : public VerdictTest
{
protected:
    Sweating()
    {
        m_conditions.airTemperatureK = (90 + 459.67) / 1.8;
        m_conditions.relativeHumidity = 0.6;
    }
};

TEST_F(Sweating, ASuctionLineBelowTheDewPointIsWet)
{
    read("suction-line-temperature", "55 F");
    const auto wet = verdict("sweating");
    ASSERT_TRUE(wet);
    EXPECT_NEAR(wet->value->si, (55 - 74.2) * fahrenheitStep, 0.06);
    EXPECT_THAT(say(wet->sentence), HasSubstr("is wet"));
}

TEST_F(Sweating, BelowFreezingItFrosts)
{
    read("suction-line-temperature", "28 F");
    EXPECT_THAT(said("sweating"), HasSubstr("frosts"));
}

TEST_F(Sweating, AWarmShellStaysDry)
{
    read("shell-temperature", "100 F");
    EXPECT_EQ(judgementOf("sweating"), Judgement::within);
}

TEST_F(Sweating, WithoutTheDaysHumidityNothingIsSaid)
{
    m_conditions.relativeHumidity.reset();
    read("suction-line-temperature", "55 F");
    EXPECT_FALSE(verdict("sweating"));
}

} // namespace padside::test
