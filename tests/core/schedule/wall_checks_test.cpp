// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using testing::HasSubstr;
using testing::IsEmpty;

class WallChecks : public testing::Test
{
protected:
    WallChecks()
        : m_catalogue(*Catalogue::load(shippedCatalogue()))
    {
    }

    /// An accumulator whose bottom was gauged on 10 October of each year from 2020 on; 2.2 mm must be left.
    [[nodiscard]] static UnitRecord gauged(const std::vector<double>& metres)
    {
        auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
        int year = 2020;
        for (const double wall : metres) {
            builder.visit(std::to_string(year++) + "-10-10", VisitReason::fall).graded("bottom", 2);
            builder.read("wall-thickness", wall, QuantityKind::length, "mm");
        }
        UnitRecord record = builder.build();
        for (Reading& reading : record.readings) {
            reading.partId = record.parts.front().id;
            reading.zoneId = record.parts.front().zones.front().id;
        }
        record.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2.2 mm", QuantityKind::length)});
        return record;
    }

    [[nodiscard]] std::vector<Check> on(const UnitRecord& record, const std::string& today) const
    {
        return wallChecks(record, m_catalogue, day(today));
    }

    Catalogue m_catalogue;
};

} // namespace

TEST_F(WallChecks, AWallIsMeasuredAgainAfterHalfOfItsRemainingLife)
{
    // API 510: (2.7 - 2.2) mm at 0.1 mm a year leave 5 years; half of them after the last reading.
    const auto checks = on(gauged({3.0e-3, 2.9e-3, 2.8e-3, 2.7e-3}), "2025-10-01");
    ASSERT_EQ(checks.size(), 1U);
    const Date expected = day("2023-10-10") + std::chrono::days(913);
    EXPECT_LE(std::abs((checks[0].latest - expected).count()), 5);
    EXPECT_LT(checks[0].earliest, checks[0].latest);
    EXPECT_EQ(say(checks[0].what), "Suction accumulator, bottom: measure the wall");
    EXPECT_THAT(say(checks[0].why), HasSubstr("has about 5.0 years left"));
    EXPECT_EQ(checks[0].zones, std::vector{*checks[0].zoneId});
    EXPECT_THAT(checks[0].conditions, testing::Contains(Condition::dry));
}

TEST_F(WallChecks, AWallWithYearsToGoIsLeftOutUntilItsWindowIsNear)
{
    const UnitRecord thick = gauged({5.00e-3, 4.95e-3, 4.90e-3, 4.85e-3}); // 53 years: at most 10 between readings
    EXPECT_THAT(on(thick, "2023-11-01"), IsEmpty());
    ASSERT_EQ(on(thick, "2029-01-01").size(), 1U);
    EXPECT_EQ(on(thick, "2029-01-01")[0].latest, day("2033-10-09")) << "ten years of 365.25 days, rounded down";
}

TEST_F(WallChecks, AWallAtItsLimitIsOverdue)
{
    const auto checks = on(gauged({3.0e-3, 2.1e-3}), "2021-11-01");
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].latest, day("2021-10-10"));
}

TEST_F(WallChecks, WithoutAWallMeasuredOrOnceThePartIsGoneThereAreNone)
{
    EXPECT_THAT(on(gauged({}), "2026-06-01"), IsEmpty());
    UnitRecord gone = gauged({3.0e-3, 2.9e-3, 2.8e-3, 2.7e-3});
    gone.parts.front().removedOn = day("2024-05-04");
    EXPECT_THAT(on(gone, "2026-04-01"), IsEmpty());
}

} // namespace padside
