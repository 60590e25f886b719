// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/verdict/zone_measure.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside::test {

using ::testing::HasSubstr;

namespace {

class ZoneMeasures : public ::testing::Test
{
protected:
    ZoneMeasures()
        : m_catalogue(*Catalogue::load(shippedCatalogue()))
    {
    }

    /// A unit whose accumulator's bottom was gauged or looked at once a year; values as typed.
    [[nodiscard]] UnitRecord record(const std::string& kind, const std::vector<double>& si, QuantityKind quantity,
                                    const std::string& unit) const
    {
        RecordBuilder builder = aUnit("HB-01");
        builder.withPart("suction-accumulator", {"crown", "bottom"});
        int year = 2020;
        for (const double value : si) {
            builder.visit(std::to_string(year++) + "-10-10", VisitReason::fall).graded("bottom", 2);
            builder.read(kind, value, quantity, unit);
        }
        UnitRecord made = builder.build();
        for (Reading& reading : made.readings) {
            reading.partId = made.parts.front().id;
            reading.zoneId = made.parts.front().zones[1].id;
        }
        return made;
    }

    [[nodiscard]] ZoneMeasure only(const UnitRecord& record) const
    {
        const auto all = zoneMeasures(record, m_catalogue);
        EXPECT_EQ(all.size(), 1U);
        return all.at(0);
    }

    Catalogue m_catalogue;
};

} // namespace

TEST_F(ZoneMeasures, AWallHasARateAndYearsLeft)
{
    UnitRecord walls = record("wall-thickness", {3.0e-3, 2.9e-3, 2.8e-3, 2.7e-3}, QuantityKind::length, "mm");
    walls.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2.2 mm", QuantityKind::length)});
    const ZoneMeasure wall = only(walls);
    ASSERT_TRUE(wall.wall && wall.wall->remainingYears);
    EXPECT_NEAR(*wall.wall->remainingYears, 5.0, 0.02) << "API 510: (2.7 - 2.2) mm over 0.1 mm a year";
    EXPECT_THAT(say(wall.wallAsked->from), HasSubstr("nameplate"));
    EXPECT_EQ(wall.verdict.judgement, Judgement::within);
}

TEST_F(ZoneMeasures, AWallAtItsLimitIsOutside)
{
    UnitRecord walls = record("wall-thickness", {3.0e-3, 2.1e-3}, QuantityKind::length, "mm");
    walls.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2.2 mm", QuantityKind::length)});
    EXPECT_EQ(only(walls).verdict.judgement, Judgement::outside);
}

TEST_F(ZoneMeasures, TheVesselsSizeTellsTheWallByTheVesselCode)
{
    UnitRecord walls = record("wall-thickness", {3.0e-3}, QuantityKind::length, "mm");
    walls.unit.refrigerant = "R-410A";
    walls.unit.nameplate.push_back({"vessel-diameter", *parseMeasure("127 mm", QuantityKind::length)});
    const ZoneMeasure wall = only(walls);
    // ASME VIII-1, appendix 1-1: t = P Ro / (S E + 0.4 P); R-410A at 49 °C: 2.98 MPa absolute, so 2.88 MPa gauge.
    EXPECT_NEAR(wall.wallAsked->metres, 2.88e6 * 0.0635 / (118e6 * 0.85 + 0.4 * 2.88e6), 0.03e-3);
    EXPECT_THAT(say(wall.wallAsked->from), HasSubstr("ASME VIII-1"));
}

TEST_F(ZoneMeasures, WithoutEitherAShareOfTheFirstReadingIsAskedForAndSaysSo)
{
    const ZoneMeasure wall = only(record("wall-thickness", {3.0e-3, 2.9e-3}, QuantityKind::length, "mm"));
    EXPECT_DOUBLE_EQ(wall.wallAsked->metres, 2.1e-3) << "70 %: common practice, no source";
    EXPECT_THAT(say(wall.wallAsked->from), HasSubstr("first reading"));
}

TEST_F(ZoneMeasures, ARustedShareGetsBothGradesFromTheAreaNeverFromEachOther)
{
    const ZoneMeasure rust = only(record("rust-share", {0.007}, QuantityKind::ratio, "pct"));
    EXPECT_THAT(say(rust.verdict.sentence), HasSubstr("Ri 3 by ISO 4628-3"));
    EXPECT_THAT(say(rust.verdict.sentence), HasSubstr("grade 6 by ASTM D610")) << "more than 0.3, at most 1 %";
    EXPECT_EQ(rust.verdict.judgement, Judgement::within);
}

TEST_F(ZoneMeasures, MuchRustIsOutsideAndItsGrowthIsTold)
{
    const ZoneMeasure rust = only(record("rust-share", {0.02, 0.12}, QuantityKind::ratio, "pct"));
    EXPECT_EQ(rust.verdict.judgement, Judgement::outside);
    EXPECT_THAT(say(rust.verdict.sentence), HasSubstr("10.0 % more a year"));
}

TEST_F(ZoneMeasures, AReadingStillBeingTypedComesAfterTheOthers)
{
    const UnitRecord walls = record("wall-thickness", {3.0e-3, 2.9e-3}, QuantityKind::length, "mm");
    const TrendPoint now{static_cast<double>(day("2022-10-10").time_since_epoch().count()), 2.5e-3};
    const auto wall = zoneMeasure(walls, m_catalogue, walls.parts[0], walls.parts[0].zones[1], "wall-thickness", now);
    ASSERT_TRUE(wall);
    EXPECT_EQ(wall->points.size(), 3U);
    EXPECT_NEAR(wall->wall->ratePerYearM, 0.4e-3, 0.01e-3) << "the short-term rate is the larger";
}

TEST_F(ZoneMeasures, WhatIsUnknownIsNoMeasure)
{
    EXPECT_TRUE(
        zoneMeasures(record("drier-drop", {1}, QuantityKind::temperatureDifference, "dK"), m_catalogue).empty());
}

} // namespace padside::test
