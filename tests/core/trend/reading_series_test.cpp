// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/reading_series.h"
#include "tests/support/record_builder.h"

#include <array>
#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;

constexpr std::array resets{TreatmentKind::replace, TreatmentKind::clean};

double daysOf(const std::string& iso)
{
    return static_cast<double>(day(iso).time_since_epoch().count());
}

/// A record whose readings all belong to the zone "shell".
struct ShellRecord
{
    UnitRecord record;
    SeriesKey key;
};

ShellRecord shellRecord(const test::RecordBuilder& builder)
{
    ShellRecord made{builder.build(), {"wall", std::nullopt, builder.zone("shell")}};
    made.key.partId = partOfZone(made.record, *made.key.zoneId)->id;
    for (Reading& reading : made.record.readings) {
        reading.partId = made.key.partId;
        reading.zoneId = made.key.zoneId;
    }
    return made;
}

test::RecordBuilder& wall(test::RecordBuilder& builder, double metres)
{
    return builder.read("wall", metres, QuantityKind::length, "mm");
}

test::RecordBuilder threeYears()
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"shell", "bottom"});
    wall(builder.visit("2023-05-02"), 0.005);
    wall(builder.visit("2024-05-02"), 0.004);
    wall(builder.visit("2025-05-02"), 0.003);
    return builder;
}

} // namespace

TEST(ReadingSeries, HoldsEveryReadingOfItsKindOldestFirst)
{
    auto builder = threeYears();
    builder.read("superheat", 5, QuantityKind::temperatureDifference, "dK");
    const ShellRecord made = shellRecord(builder);
    const std::vector<TrendPoint> expected{
        {daysOf("2023-05-02"), 0.005}, {daysOf("2024-05-02"), 0.004}, {daysOf("2025-05-02"), 0.003}};
    EXPECT_EQ(seriesSinceReset(made.record, made.key, resets), expected);
}

TEST(ReadingSeries, StartsAnewAfterATreatmentThatResetsIt)
{
    auto builder = threeYears();
    builder.treated("shell", TreatmentKind::clean);
    wall(builder.visit("2026-05-02"), 0.0029);
    const ShellRecord made = shellRecord(builder);
    // The reading as found on the day of the cleaning was of the time before.
    EXPECT_EQ(seriesSinceReset(made.record, made.key, resets),
              (std::vector<TrendPoint>{{daysOf("2026-05-02"), 0.0029}}));
}

TEST(ReadingSeries, AReadingAsLeftOnTheDayOfTheResetIsTheFirstOfTheNewSeries)
{
    auto builder = threeYears();
    builder.treated("shell", TreatmentKind::clean);
    wall(builder, 0.0031);
    ShellRecord made = shellRecord(builder);
    made.record.readings.back().phase = Phase::asLeft;
    EXPECT_EQ(seriesSinceReset(made.record, made.key, resets),
              (std::vector<TrendPoint>{{daysOf("2025-05-02"), 0.0031}}));
}

TEST(ReadingSeries, ATreatmentOfAnotherZoneOrOfAnotherKindResetsNothing)
{
    auto builder = threeYears();
    builder.treated("bottom", TreatmentKind::clean).treated("shell", TreatmentKind::grease);
    const ShellRecord made = shellRecord(builder);
    EXPECT_EQ(seriesSinceReset(made.record, made.key, resets).size(), 3U);
}

TEST(ReadingSeries, ATreatmentOfTheWholePartResetsEachOfItsZones)
{
    auto builder = threeYears();
    builder.treated("bottom", TreatmentKind::clean);
    ShellRecord made = shellRecord(builder);
    made.record.treatments.back().zoneId.reset();
    EXPECT_TRUE(seriesSinceReset(made.record, made.key, resets).empty());
    made.key.partId.reset(); // the part is found by its zone
    for (Reading& reading : made.record.readings)
        reading.partId.reset();
    EXPECT_TRUE(seriesSinceReset(made.record, made.key, resets).empty());
}

TEST(ReadingSeries, ACorrectedTreatmentOrReadingDoesNotCount)
{
    auto builder = threeYears();
    builder.treated("shell", TreatmentKind::clean);
    ShellRecord made = shellRecord(builder);
    Treatment corrected = made.record.treatments.back();
    corrected.correction = Correction<TreatmentId>{corrected.id, "it was greased"};
    corrected.id = TreatmentId(UuidBytes{1});
    corrected.kind = TreatmentKind::grease;
    made.record.treatments.push_back(corrected);
    Reading reading = made.record.readings.front();
    reading.correction = Correction<ReadingId>{reading.id, "typing error"};
    reading.id = ReadingId(UuidBytes{2});
    reading.value.si = 0.0055;
    made.record.readings.push_back(reading);
    const std::vector<TrendPoint> expected{
        {daysOf("2023-05-02"), 0.0055}, {daysOf("2024-05-02"), 0.004}, {daysOf("2025-05-02"), 0.003}};
    EXPECT_EQ(seriesSinceReset(made.record, made.key, resets), expected);
}

TEST(ReadingSeries, WithoutAResetTheReadingAsFoundStandsForTheDay)
{
    auto builder = threeYears();
    wall(builder, 0.0035);
    ShellRecord made = shellRecord(builder);
    made.record.readings.back().phase = Phase::asLeft;
    const auto series = seriesSinceReset(made.record, made.key, resets);
    ASSERT_EQ(series.size(), 3U);
    EXPECT_EQ(series.back(), (TrendPoint{daysOf("2025-05-02"), 0.003}));
}

} // namespace padside
