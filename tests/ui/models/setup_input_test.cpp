// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "ui/models/setup_input.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

const InputStyle metric{{}, UnitSystem::metric};
const InputStyle customary{{}, UnitSystem::usCustomary};

Site harbour()
{
    Site site;
    site.name = "Harbour House";
    site.access = "Gate code with the caretaker";
    site.altitudeM = 12.34;
    site.air.temperatureK = 283.15;
    return site;
}

Unit roofUnit()
{
    Unit unit;
    unit.tag = "RT-1";
    unit.kind = "split-ac";
    unit.installedOn = day("2008-06-14");
    return unit;
}

} // namespace

TEST(SiteInputTest, WhatIsLeftAloneStaysExactlyAsItWas)
{
    const CheckedSite checked = checkedSite(inputOf(harbour(), metric), harbour(), metric);
    EXPECT_TRUE(checked.problems.empty());
    EXPECT_EQ(checked.site, harbour()) << "12.34 m is shown rounded, but kept";
}

TEST(SiteInputTest, ASiteNeedsANameAndNothingElse)
{
    EXPECT_TRUE(
        checkedSite({{SiteField::name, QStringLiteral("  ")}}, Site(), metric).problems.contains(SiteField::name));
    const CheckedSite named = checkedSite({{SiteField::name, QStringLiteral(" Old Mill ")}}, Site(), metric);
    EXPECT_TRUE(named.problems.empty());
    EXPECT_EQ(named.site.name, "Old Mill");
}

TEST(SiteInputTest, ABareNumberIsInThePersonsOwnUnits)
{
    SiteInput input{{SiteField::name, QStringLiteral("Mill")},
                    {SiteField::altitude, QStringLiteral("100")},
                    {SiteField::temperature, QStringLiteral("50")}};
    const CheckedSite american = checkedSite(input, Site(), customary);
    EXPECT_TRUE(american.problems.empty());
    EXPECT_NEAR(american.site.altitudeM, 30.48, 1e-9); // the international foot is 0.3048 m
    EXPECT_NEAR(american.site.air.temperatureK.value_or(0), 283.15, 1e-9); // 50 °F is 10 °C
}

TEST(SiteInputTest, EachBadFieldIsNamedAndTheOthersAreTaken)
{
    const SiteInput input{{SiteField::name, QStringLiteral("Mill")},      {SiteField::altitude, QStringLiteral("high")},
                          {SiteField::humidity, QStringLiteral("140")},   {SiteField::chloride, QStringLiteral("-1")},
                          {SiteField::springFirst, QStringLiteral("54")}, {SiteField::fallFirst, QStringLiteral("44")},
                          {SiteField::fallLast, QStringLiteral("40")}};
    const CheckedSite checked = checkedSite(input, Site(), metric);
    for (const SiteField field :
         {SiteField::altitude, SiteField::humidity, SiteField::chloride, SiteField::springFirst, SiteField::fallLast})
        EXPECT_TRUE(checked.problems.contains(field)) << static_cast<int>(field);
    EXPECT_EQ(checked.problems.size(), 5U);
    EXPECT_EQ(checked.site.name, "Mill");
}

TEST(UnitInputTest, ShowsAndTakesAUnitUnchanged)
{
    const CheckedUnit checked = checkedUnit(inputOf(roofUnit()), roofUnit(), {}, day("2026-11-25"));
    EXPECT_TRUE(checked.problems.empty());
    EXPECT_EQ(checked.unit, roofUnit());
}

TEST(UnitInputTest, ATagIsNeededAndItsOwn)
{
    UnitInput input = inputOf(roofUnit());
    EXPECT_TRUE(checkedUnit(input, Unit(), {"RT-1"}, day("2026-11-25")).problems.contains(UnitField::tag));
    input[UnitField::tag] = QString();
    EXPECT_TRUE(checkedUnit(input, Unit(), {}, day("2026-11-25")).problems.contains(UnitField::tag));
}

TEST(UnitInputTest, AKindIsNeeded)
{
    UnitInput input = inputOf(roofUnit());
    input[UnitField::kind] = QString();
    EXPECT_TRUE(checkedUnit(input, Unit(), {}, day("2026-11-25")).problems.contains(UnitField::kind));
}

TEST(UnitInputTest, AYearIsEnoughForTheDayOfInstallingButNotOneToCome)
{
    UnitInput input = inputOf(roofUnit());
    input[UnitField::installed] = QStringLiteral("2011");
    EXPECT_EQ(checkedUnit(input, Unit(), {}, day("2026-11-25")).unit.installedOn, day("2011-01-01"));
    input[UnitField::installed] = QStringLiteral("2027");
    EXPECT_TRUE(checkedUnit(input, Unit(), {}, day("2026-11-25")).problems.contains(UnitField::installed));
}

} // namespace padside::test
