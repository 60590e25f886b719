// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/unit_choice.h"

#include <gtest/gtest.h>

namespace padside {

using enum QuantityKind;

TEST(UnitChoiceOfAPerson, IsTheSystemsUntilTheyChooseOtherwise)
{
    UnitChoice choice = UnitSystem::usCustomary;
    EXPECT_EQ(shownUnit(temperature, choice).code, "degF");
    choice.own[gaugePressure] = "barg";
    EXPECT_EQ(shownUnit(gaugePressure, choice).code, "barg");
    EXPECT_EQ(shownUnit(temperature, choice).code, "degF") << "the others stay";
    EXPECT_EQ(fittingUnit(gaugePressure, choice, 1e6).code, "barg");
}

TEST(UnitChoiceOfAPerson, ForgetsAUnitThatIsNotOfItsQuantity)
{
    UnitChoice choice = UnitSystem::metric;
    choice.own[mass] = "degC";
    choice.own[length] = "cubit";
    EXPECT_EQ(shownUnit(mass, choice).code, "kg");
    EXPECT_EQ(shownUnit(length, choice).code, "mm");
}

TEST(UnitChoiceOfAPerson, DoesNotReachWhatIsReadInAUnitOfItsOwn)
{
    UnitChoice choice = UnitSystem::usCustomary;
    choice.own[gaugePressure] = "barg";
    EXPECT_EQ(unitFor(gaugePressure, choice, "kPag", "psig").code, "barg") << "a suction pressure";
    EXPECT_EQ(unitFor(gaugePressure, choice, "Pag", "inwc").code, "inwc") << "a static pressure is no bar";
    EXPECT_EQ(unitFor(gaugePressure, choice, "", "").code, "barg");
}

TEST(UnitChoiceOfAPerson, KeepsResistancesInTheUnitThatFitsThem)
{
    const UnitChoice choice = UnitSystem::metric;
    EXPECT_EQ(fittingUnit(resistance, choice, 2e8).code, "Mohm");
}

} // namespace padside
