// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_record.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

constexpr std::size_t withinAYear = 1;

class TrackRecordOf : public testing::Test
{
protected:
    [[nodiscard]] static KeptForecast foretold(const UnitRecord& record, ZoneId zone, const std::string& on,
                                               double inAYear)
    {
        KeptForecast forecast;
        forecast.unitId = record.unit.id;
        forecast.on = day(on);
        forecast.zoneId = zone;
        forecast.chances = {inAYear / 2, inAYear, inAYear, inAYear};
        return forecast;
    }

    [[nodiscard]] TrackFigures figures(const UnitRecord& record, const std::vector<KeptForecast>& forecasts,
                                       const std::string& today) const
    {
        TrackRecord track;
        track.add(record, forecasts, m_catalogue, day(today));
        return track.summary(TrackLimits::of(m_catalogue)).all;
    }

    Catalogue m_catalogue = test::smallCatalogue();
};

RecordBuilder accumulatorSince2010()
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "shell", "bottom"}, "2010-05-01");
    return builder;
}

} // namespace

TEST_F(TrackRecordOf, ScoresWhatIsSettledAndCountsTheRest)
{
    RecordBuilder builder = accumulatorSince2010();
    builder.visit("2020-05-01").graded("crown", 2).graded("shell", 4).graded("bottom", 3);
    builder.visit("2021-05-02").graded("crown", 2).notSeen("bottom", NotSeenReason::covered).graded("shell", 5);
    const UnitRecord record = builder.build();
    const std::vector forecasts{foretold(record, builder.zone("crown"), "2020-05-01", 0.1),
                                foretold(record, builder.zone("shell"), "2020-05-01", 0.4),
                                foretold(record, builder.zone("bottom"), "2020-05-01", 0.2)};
    const TrackFigures found = figures(record, forecasts, "2021-06-01");
    EXPECT_EQ(found.forecasts, 3U);
    EXPECT_EQ(found.keptSince, day("2020-05-01"));
    EXPECT_EQ(found.nextDue, day("2022-05-01")) << "two years after";
    const Scores& year = found.horizons[withinAYear];
    EXPECT_EQ(year.settled, 1U) << "the shell was found spent a day too late to tell";
    EXPECT_EQ(year.untold, 1U);
    EXPECT_EQ(year.waiting, 1U);
    EXPECT_NEAR(year.brier, 0.01, 1e-12);
}

TEST_F(TrackRecordOf, LargeMissesAreNamedOncePerZoneTheLargestFirst)
{
    RecordBuilder builder = accumulatorSince2010();
    builder.visit("2020-05-01").graded("crown", 2).graded("shell", 4).graded("bottom", 2);
    builder.visit("2020-06-01").graded("crown", 2);
    builder.visit("2020-12-01").graded("crown", 5).graded("bottom", 2);
    builder.visit("2021-06-01").graded("shell", 3);
    const UnitRecord record = builder.build();
    const std::vector forecasts{foretold(record, builder.zone("crown"), "2020-05-01", 0.04),
                                foretold(record, builder.zone("crown"), "2020-06-01", 0.3),
                                foretold(record, builder.zone("shell"), "2020-05-01", 0.8),
                                foretold(record, builder.zone("bottom"), "2020-05-01", 0.02)};
    const TrackFigures found = figures(record, forecasts, "2021-06-01");
    ASSERT_EQ(found.misses.size(), 2U);
    EXPECT_EQ(found.misses[0].zoneId, builder.zone("crown"));
    EXPECT_EQ(found.misses[0].tag, "HB-01");
    EXPECT_EQ(say(found.misses[0].sentence),
              "Suction accumulator, crown: 4 % within one year was said on 2020-05-01; found spent on 2020-12-01, "
              "after 7 months.");
    EXPECT_EQ(say(found.misses[1].sentence),
              "Suction accumulator, shell: 80 % within one year was said on 2020-05-01; still 3 marked on 2021-06-01, "
              "after 13 months.");
    EXPECT_NEAR(found.misses[1].size(), 0.8, 1e-12);
}

TEST_F(TrackRecordOf, KeepsOnlySoManyMisses)
{
    RecordBuilder builder = accumulatorSince2010();
    builder.visit("2020-05-01").graded("crown", 2).graded("shell", 4);
    builder.visit("2021-06-01").graded("crown", 5).graded("shell", 5);
    const UnitRecord record = builder.build();
    auto crown = foretold(record, builder.zone("crown"), "2020-05-01", 0.2);
    auto shell = foretold(record, builder.zone("shell"), "2020-05-01", 0.1);
    TrackRecord track(1);
    track.add(record, std::vector{crown, shell}, m_catalogue, day("2023-06-01"));
    const auto found = track.summary(TrackLimits::of(m_catalogue)).all;
    ASSERT_EQ(found.misses.size(), 1U);
    EXPECT_EQ(found.misses[0].zoneId, builder.zone("shell"));
}

TEST_F(TrackRecordOf, ARangeIsToldWhereNoEndLiesBetweenTwoVisits)
{
    struct Case
    {
        const char* early;
        const char* late;
        std::size_t RangeCoverage::*counted;
    };
    RecordBuilder builder = accumulatorSince2010();
    builder.visit("2020-05-01").graded("crown", 3);
    builder.visit("2021-05-01").graded("crown", 4);
    builder.visit("2022-05-01").graded("crown", 5);
    const UnitRecord record = builder.build();
    for (const Case& one : {Case{"2021-01-01", "2022-08-01", &RangeCoverage::inside},
                            Case{"2022-06-01", "2022-08-01", &RangeCoverage::before},
                            Case{"2020-08-01", "2021-04-01", &RangeCoverage::after},
                            Case{"2021-08-01", "2022-08-01", &RangeCoverage::untold},
                            Case{"2021-01-01", "2022-01-01", &RangeCoverage::untold},
                            Case{"2021-01-01", "2023-01-01", &RangeCoverage::waiting}}) {
        auto forecast = foretold(record, builder.zone("crown"), "2020-05-01", 0.5);
        forecast.dates.early = day(one.early);
        forecast.dates.middle = forecast.dates.early;
        forecast.dates.late = day(one.late);
        const RangeCoverage range = figures(record, {forecast}, "2022-09-01").range;
        EXPECT_EQ(range.*one.counted, 1U) << one.early << " to " << one.late;
        EXPECT_EQ(range.settled() + range.untold + range.waiting, 1U);
    }
}

TEST_F(TrackRecordOf, EachEndOfTheRangesIsScoredByItself)
{
    RecordBuilder builder = accumulatorSince2010();
    builder.visit("2020-05-01").graded("crown", 3);
    builder.visit("2021-05-01").graded("crown", 4);
    const UnitRecord record = builder.build();
    auto forecast = foretold(record, builder.zone("crown"), "2020-05-01", 0.5);
    forecast.dates.early = day("2021-01-01");
    forecast.dates.middle = day("2024-01-01");
    const TrackFigures found = figures(record, {forecast}, "2021-06-01");
    EXPECT_EQ(found.ends[0].scores.settled, 1U);
    EXPECT_EQ(found.ends[0].scores.spent, 0U);
    EXPECT_NEAR(found.ends[0].scores.expected, 0.1, 1e-12);
    EXPECT_EQ(found.ends[1].scores.waiting, 1U);
    EXPECT_EQ(found.ends[2].scores.waiting, 1U) << "later than is reckoned";
}

TEST_F(TrackRecordOf, TheOrderOfUnitsDoesNotMatter)
{
    RecordBuilder one = accumulatorSince2010();
    one.visit("2020-05-01").graded("crown", 2);
    one.visit("2021-06-01").graded("crown", 5);
    RecordBuilder other = aUnit("HB-02");
    other.withPart("suction-accumulator", {"crown"}, "2010-05-01");
    other.visit("2020-05-01").graded("crown", 4);
    other.visit("2021-06-01").graded("crown", 4);
    const UnitRecord first = one.build();
    const UnitRecord second = other.build();
    const std::vector ofFirst{foretold(first, one.zone("crown"), "2020-05-01", 0.1)};
    const std::vector ofSecond{foretold(second, other.zone("crown"), "2020-05-01", 0.9)};
    TrackRecord forth;
    forth.add(first, ofFirst, m_catalogue, day("2023-01-01"));
    forth.add(second, ofSecond, m_catalogue, day("2023-01-01"));
    TrackRecord back;
    back.add(second, ofSecond, m_catalogue, day("2023-01-01"));
    back.add(first, ofFirst, m_catalogue, day("2023-01-01"));
    const auto limits = TrackLimits::of(m_catalogue);
    ASSERT_EQ(forth.summary(limits).all.misses.size(), 2U);
    for (std::size_t i = 0; i < 2; ++i)
        EXPECT_EQ(forth.summary(limits).all.misses[i].sentence, back.summary(limits).all.misses[i].sentence);
    EXPECT_NEAR(forth.summary(limits).all.horizons[withinAYear].brier,
                back.summary(limits).all.horizons[withinAYear].brier, 1e-15);
}

} // namespace padside
