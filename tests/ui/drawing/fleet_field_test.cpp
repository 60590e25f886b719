// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field.h"

#include <gtest/gtest.h>
#include <numeric>
#include <random>

namespace padside {

namespace {

UnitId unitId(std::size_t number)
{
    return UnitId(UuidBytes{static_cast<std::uint8_t>(number >> 8), static_cast<std::uint8_t>(number), 1});
}

FieldUnit fieldUnit(std::size_t number, Toll toll, double chance)
{
    return {unitId(number), QString::number(number), toll, chance, Grade::marked};
}

std::vector<FieldUnit> manyUnits(std::size_t count)
{
    std::mt19937 random(7);
    std::vector<FieldUnit> units;
    for (std::size_t at = 0; at < count; ++at) {
        const double one = static_cast<double>(random() % 1000) / 999;
        units.push_back(fieldUnit(at, static_cast<Toll>(random() % tollCount), one * one * one));
    }
    return units;
}

FleetFieldGeometry laidOut(const std::vector<FieldUnit>& units)
{
    return layOutFleetField(units, FieldSizes::forText(13, 60, 40, 34), QRectF(0, 0, 1240, 320));
}

QPointF centreOf(const FleetFieldGeometry& geometry, std::size_t unit)
{
    return geometry.marks.at(geometry.markOf(unit).value()).area.center();
}

} // namespace

TEST(FleetField, WorseIsFurtherRightAndLikelierIsHigher)
{
    const std::vector<FieldUnit> units{fieldUnit(0, Toll::nuisance, 0.3), fieldUnit(1, Toll::unit, 0.3),
                                       fieldUnit(2, Toll::unit, 0.02)};
    const FleetFieldGeometry geometry = laidOut(units);
    EXPECT_LT(centreOf(geometry, 0).x(), centreOf(geometry, 1).x());
    EXPECT_NEAR(centreOf(geometry, 0).y(), centreOf(geometry, 1).y(), 1);
    EXPECT_LT(centreOf(geometry, 1).y(), centreOf(geometry, 2).y());
}

TEST(FleetField, EveryUnitIsInExactlyOneMarkWithinItsColumn)
{
    const std::vector<FieldUnit> units = manyUnits(5000);
    const FleetFieldGeometry geometry = laidOut(units);
    std::vector<int> times(units.size(), 0);
    for (const FieldMark& mark : geometry.marks) {
        ASSERT_FALSE(mark.units.empty());
        for (const std::size_t unit : mark.units) {
            ++times[unit];
            EXPECT_EQ(units[unit].toll, mark.toll);
        }
        EXPECT_TRUE(geometry.columns[static_cast<std::size_t>(mark.toll)].adjusted(-1, -1, 1, 1).contains(mark.area));
    }
    EXPECT_EQ(std::ranges::count(times, 1), static_cast<std::ptrdiff_t>(units.size()));
}

TEST(FleetField, NoTwoMarksOverlap)
{
    for (const std::size_t count : {5U, 14U, 120U, 5000U}) {
        const FleetFieldGeometry geometry = laidOut(manyUnits(count));
        for (std::size_t one = 0; one < geometry.marks.size(); ++one) {
            for (std::size_t other = one + 1; other < geometry.marks.size(); ++other)
                EXPECT_FALSE(geometry.marks[one].area.intersects(geometry.marks[other].area)) << count;
        }
    }
}

TEST(FleetField, WhatHasNoRoomIsGatheredTheLikeliestFirst)
{
    std::vector<FieldUnit> units;
    for (std::size_t at = 0; at < 30; ++at)
        units.push_back(fieldUnit(at, Toll::charge, 0.2 + 0.0001 * static_cast<double>(at)));
    const FleetFieldGeometry geometry = laidOut(units);
    ASSERT_EQ(geometry.marks.size(), 1U);
    EXPECT_TRUE(geometry.marks[0].gathered());
    EXPECT_EQ(geometry.marks[0].units.front(), 29U);
    EXPECT_EQ(geometry.markAt(geometry.marks[0].area.center()), 0U);
}

TEST(FleetField, MarksStandWithinHalfAStepOfTheirChance)
{
    const std::vector<FieldUnit> units = manyUnits(400);
    const FleetFieldGeometry geometry = laidOut(units);
    const double reach = geometry.plot.height() - geometry.sizes.mark;
    for (std::size_t unit = 0; unit < units.size(); ++unit) {
        const double wanted
            = geometry.plot.bottom() - geometry.sizes.mark / 2 - heightOfChance(units[unit].chance) * reach;
        EXPECT_NEAR(centreOf(geometry, unit).y(), wanted, geometry.sizes.mark);
    }
}

TEST(FleetField, SmallChancesCanBeToldApart)
{
    EXPECT_EQ(heightOfChance(0), 0);
    EXPECT_EQ(heightOfChance(1), 1);
    EXPECT_GT(heightOfChance(0.02) - heightOfChance(0), 0.1);
    EXPECT_EQ(heightOfChance(1.5), 1) << "chances end at certainty";
}

TEST(FleetField, StepsReachEveryMark)
{
    const FleetFieldGeometry geometry = laidOut(manyUnits(300));
    std::vector<bool> seen(geometry.marks.size(), false);
    std::vector<std::size_t> open{0};
    seen[0] = true;
    while (!open.empty()) {
        const std::size_t here = open.back();
        open.pop_back();
        for (const FieldStep step : {FieldStep::left, FieldStep::right, FieldStep::up, FieldStep::down}) {
            const std::size_t next = markBeside(geometry, here, step);
            if (!seen[next]) {
                seen[next] = true;
                open.push_back(next);
            }
        }
    }
    EXPECT_EQ(std::ranges::count(seen, false), 0);
}

TEST(FleetField, WithoutRoomOrUnitsThereIsNothing)
{
    EXPECT_TRUE(laidOut({}).marks.empty());
    EXPECT_TRUE(
        layOutFleetField(manyUnits(3), FieldSizes::forText(13, 60, 40, 34), QRectF(0, 0, 40, 10)).marks.empty());
}

} // namespace padside
