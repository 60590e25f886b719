// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

#include <limits>

namespace padside::test {

class MeasuredReadings : public VerdictTest
{
};

TEST_F(MeasuredReadings, AsLeftTakesTheAirAsFound)
{
    const std::vector<Taken> found{{"outdoor-dry-bulb", {}, 305, {}}, {"suction-pressure", {}, 4e5, {}}};
    const auto left = withAirAsFound({{"suction-pressure", {}, 5e5, {}}}, found);
    ASSERT_EQ(left.size(), 2U) << "the pressure as found is not the pressure as left";
    EXPECT_EQ(left[0].si, 5e5);
    EXPECT_EQ(left[1].kind, "outdoor-dry-bulb");
}

TEST_F(MeasuredReadings, AirTakenAgainAsLeftStands)
{
    const auto left = withAirAsFound({{"outdoor-dry-bulb", {}, 300, {}}}, {{"outdoor-dry-bulb", {}, 305, {}}});
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].si, 300);
}

TEST_F(MeasuredReadings, NothingTakenSaysNothing)
{
    EXPECT_TRUE(verdicts().empty());
}

TEST_F(MeasuredReadings, NoNumberThatIsNoneReachesAPerson)
{
    const double nonsense[] = {std::nan(""), std::numeric_limits<double>::infinity(), -1e300, 1e300, 0.0};
    for (const double value : nonsense) {
        std::vector<Taken> taken;
        for (const ReadingKind& kind : m_catalogue.readingKinds())
            taken.push_back({kind.code, {}, value, {}});
        for (const Metering metering : {Metering::fixedOrifice, Metering::thermostaticValve, Metering::unknown}) {
            m_unit.metering = metering;
            const Measured measured(taken, taken, m_unit, 0, m_conditions, m_catalogue);
            for (const Verdict& verdict : verdictsOn(measured)) {
                const std::string text = say(verdict.sentence);
                EXPECT_EQ(text.find("nan"), std::string::npos) << text;
                EXPECT_EQ(text.find("inf "), std::string::npos) << text;
            }
        }
    }
}

} // namespace padside::test
