// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

class CrankcaseHeater : public VerdictTest
{
protected:
    CrankcaseHeater() { m_conditions.running = Running::off; }
};

TEST_F(CrankcaseHeater, KeepsTheShellTenDegreesFahrenheitWarmer)
{
    read("outdoor-dry-bulb", "40 F");
    read("shell-temperature", "55 F");
    EXPECT_EQ(judgementOf("crankcase-heater"), Judgement::within) << "hermetic compressor service handbook: 10 °F";
}

TEST_F(CrankcaseHeater, AShellAsColdAsTheAirHasNone)
{
    read("outdoor-dry-bulb", "40 F");
    read("shell-temperature", "41 F");
    EXPECT_EQ(judgementOf("crankcase-heater"), Judgement::outside);
}

TEST_F(CrankcaseHeater, IsNotJudgedOnARunningUnit)
{
    m_conditions.running = Running::cooling;
    read("outdoor-dry-bulb", "40 F");
    read("shell-temperature", "80 F");
    EXPECT_EQ(judgementOf("crankcase-heater"), Judgement::unjudged);
}

TEST_F(CrankcaseHeater, TheDaysAirServesWhereNoOutdoorReadingWasTaken)
{
    m_conditions.airTemperatureK = 278.15;
    read("shell-temperature", "15 C");
    EXPECT_NEAR(verdict("crankcase-heater")->value->si, 10, 1e-9);
}

} // namespace padside::test
