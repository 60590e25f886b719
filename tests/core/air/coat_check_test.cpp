// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/coat_check.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <limits>

namespace padside {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using testing::ElementsAre;
using testing::IsEmpty;

constexpr double zeroCelsiusK = 273.15;
constexpr double seaLevelPa = 101325;

MoistAir airOf(const AirReadings& readings)
{
    const auto air = moistAir(readings, seaLevelPa);
    EXPECT_TRUE(air);
    return air.value_or(MoistAir{});
}

MoistAir airAt(double celsius, double humidity)
{
    return airOf({.dryBulbK = celsius + zeroCelsiusK, .relativeHumidity = humidity, .wetBulbK = {}, .dewPointK = {}});
}

Instant moment(const char* text)
{
    const auto instant = parseInstant(text);
    EXPECT_TRUE(instant) << text;
    return instant.value_or(Instant{});
}

/// Mild and dry, four hours to dry at 20 °C, off until put on again: may be coated.
CoatDay goodDay()
{
    CoatDay day;
    day.air = airAt(20, 0.5);
    day.surfaceTemperatureK = 20 + zeroCelsiusK;
    day.wetness = Wetness::dry;
    day.product = {4 * 3600.0, 20 + zeroCelsiusK, 5 + zeroCelsiusK, 0.8, "its data sheet"};
    day.now = moment("2026-05-04T14:03:11+02:00");
    day.runs = OffUntilPutOn{};
    return day;
}

CoatAnswer answerTo(const CoatDay& day)
{
    const auto answer = coatCheck(day);
    EXPECT_TRUE(answer) << say(answer ? Sentence{} : answer.error().what);
    return answer.value_or(CoatAnswer{});
}

std::vector<CoatReasonKind> kindsOf(const CoatAnswer& answer)
{
    std::vector<CoatReasonKind> kinds;
    std::ranges::transform(answer.reasons, std::back_inserter(kinds), &CoatReason::kind);
    return kinds;
}

TEST(CoatCheck, OnAGoodDayMayCoat)
{
    const CoatAnswer answer = answerTo(goodDay());
    EXPECT_EQ(answer.verdict, CoatVerdict::mayCoat);
    EXPECT_THAT(answer.reasons, IsEmpty());
    EXPECT_EQ(instantText(*answer.keepOffUntil), "2026-05-04T18:04:00+02:00"); // rounded up to the minute
}

/// Whether the surface is far enough above the dew point, all else being well.
struct Climate
{
    MoistAir air;
    double surfaceC;
    bool may;
};

class PaintingClimate : public testing::TestWithParam<Climate>
{
};

TEST_P(PaintingClimate, IsJudgedByThreeKelvinAboveTheDewPoint)
{
    CoatDay day = goodDay();
    day.air = GetParam().air;
    day.surfaceTemperatureK = GetParam().surfaceC + zeroCelsiusK;
    EXPECT_EQ(answerTo(day).verdict == CoatVerdict::mayCoat, GetParam().may) << answerTo(day).dewPointMarginK;
}

// The first two are published go/no-go examples of a coating-inspection guide to ISO 8502-4: 16 °C, 71 %, steel 13 °C:
// no; 21 °C with 17 °C wet bulb, steel 19 °C: yes. The others are computed: margins of 2.995 K and 3.1 K (Magnus
// formula).
INSTANTIATE_TEST_SUITE_P(Published, PaintingClimate,
                         testing::Values(Climate{airAt(16, 0.71), 13, false},
                                         Climate{airOf({.dryBulbK = 21 + zeroCelsiusK,
                                                        .relativeHumidity = {},
                                                        .wetBulbK = 17 + zeroCelsiusK,
                                                        .dewPointK = {}}),
                                                 19, true},
                                         Climate{airAt(20, 0.50), 12.25, false}, Climate{airAt(20, 0.50), 12.4, true}));

// Doubling for each 10 K colder: common practice, no source; printed in guides as double at 10 °C and half at 30 °C.
TEST(DryTime, DoublesForEachTenKelvinColder)
{
    const auto ratioAt = [](double celsius) { return dryTimeAtS(1, 20 + zeroCelsiusK, celsius + zeroCelsiusK); };
    EXPECT_NEAR(ratioAt(10), 2.0, 1e-9);
    EXPECT_NEAR(ratioAt(20), 1.0, 1e-9);
    EXPECT_NEAR(ratioAt(30), 0.5, 1e-9);
    // Computed, 4 h at 20 °C.
    const auto hoursAt = [](double celsius) { return dryTimeAtS(4, 20 + zeroCelsiusK, celsius + zeroCelsiusK); };
    EXPECT_NEAR(hoursAt(5), 11.314, 0.002);
    EXPECT_NEAR(hoursAt(10), 8.0, 0.002);
    EXPECT_NEAR(hoursAt(15), 5.657, 0.002);
    EXPECT_NEAR(hoursAt(25), 2.828, 0.002);
}

TEST(CoatCheck, DriesAtTheColderOfAirAndSurface)
{
    CoatDay day = goodDay();
    day.surfaceTemperatureK = 15 + zeroCelsiusK;
    EXPECT_NEAR(*answerTo(day).dryTimeS, 5.657 * 3600, 0.002 * 3600);
    day.surfaceTemperatureK = 40 + zeroCelsiusK; // the sun on it is gone in an hour
    EXPECT_NEAR(*answerTo(day).dryTimeS, 4 * 3600, 1e-6);
}

TEST(CoatCheck, NamesEveryReasonAtOnce)
{
    CoatDay day = goodDay();
    day.air = airAt(4, 0.95);
    day.surfaceTemperatureK = 2 + zeroCelsiusK;
    day.wetness = Wetness::damp;
    day.runs = RunHours{16 * 60, 22 * 60};
    const CoatAnswer answer = answerTo(day);
    EXPECT_EQ(answer.verdict, CoatVerdict::mayNotCoat);
    EXPECT_THAT(kindsOf(answer),
                ElementsAre(CoatReasonKind::nearDewPoint, CoatReasonKind::humid, CoatReasonKind::wet,
                            CoatReasonKind::cold, CoatReasonKind::runsBeforeDry));
    EXPECT_EQ(answer.reasons.front().source, "ISO 8502-4");
    EXPECT_EQ(answer.reasons.at(1).source, "its data sheet");
    for (const CoatReason& reason : answer.reasons)
        EXPECT_FALSE(reason.source.empty());
}

TEST(CoatCheck, HoldsTheUsualHumidityUnlessTheDataSheetSaysOtherwise)
{
    CoatDay day = goodDay();
    day.surfaceTemperatureK = 30 + zeroCelsiusK;
    day.product.highestHumidity.reset();
    day.air = airAt(20, 0.85);
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoat); // 85 % is still within
    day.air = airAt(20, 0.86);
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::humid));
    day.product.highestHumidity = 0.9;
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoat);
}

TEST(CoatCheck, OfASurfaceNobodyCalledDryAsksForIt)
{
    CoatDay day = goodDay();
    day.wetness.reset();
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoatIf);
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::wetnessNotRecorded));
}

TEST(CoatCheck, WithoutKnownRunHoursAsksToKeepItOff)
{
    CoatDay day = goodDay();
    day.runs = std::monostate{};
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoatIf);
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::runHoursUnknown));
    EXPECT_FALSE(answerTo(day).runsAgain);
}

TEST(CoatCheck, WithoutADryingTimeTellsNoHour)
{
    CoatDay day = goodDay();
    day.product.dryTimeS.reset();
    EXPECT_FALSE(answerTo(day).keepOffUntil);
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoat);
    day.runs = RunHours{16 * 60, 22 * 60};
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::dryTimeUnknown));
}

TEST(CoatCheck, AsksToKeepTheUnitOffOnlyWhereItRunsBeforeTheCoatingIsDry)
{
    CoatDay day = goodDay(); // 14:03, dry at 18:04
    day.runs = RunHours{18 * 60, 22 * 60};
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::runsBeforeDry));
    day.runs = RunHours{18 * 60 + 4, 22 * 60};
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoat);
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2026-05-04T18:04:00+02:00");
}

TEST(CoatCheck, WithinItsRunHoursTheUnitRunsNow)
{
    CoatDay day = goodDay();
    for (const RunHours run : {RunHours{14 * 60, 15 * 60}, RunHours{13 * 60, 2 * 60}, RunHours{0, 0}}) {
        day.runs = run;
        EXPECT_EQ(*answerTo(day).runsAgain, day.now);
        EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::runsBeforeDry));
    }
}

TEST(CoatCheck, RunHoursMayCrossMidnight)
{
    CoatDay day = goodDay();
    day.now = moment("2026-05-04T08:00:00+02:00");
    day.runs = RunHours{22 * 60, 6 * 60};
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2026-05-04T22:00:00+02:00");
    day.now = moment("2026-05-05T05:59:00+02:00"); // still in the hours that began the evening before
    EXPECT_EQ(*answerTo(day).runsAgain, day.now);
    day.now = moment("2026-05-05T06:00:00+02:00");
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2026-05-05T22:00:00+02:00");
}

TEST(CoatCheck, TheCoatingMayBeDryOnlyOnAnotherDate)
{
    CoatDay day = goodDay();
    day.now = moment("2026-12-31T21:30:00-05:00");
    const CoatAnswer answer = answerTo(day);
    EXPECT_EQ(instantText(*answer.keepOffUntil), "2027-01-01T01:30:00-05:00");
    EXPECT_EQ(isoText(localDate(*answer.keepOffUntil)), "2027-01-01");
    day.runs = RunHours{1 * 60, 3 * 60}; // after midnight, before it is dry
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2027-01-01T01:00:00-05:00");
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::runsBeforeDry));
}

/// Central Europe in 2026 (Directive 2000/84/EC: last Sundays of March and October, 01:00 UTC).
minutes parisOffset(std::chrono::sys_seconds utc)
{
    const bool summer = utc >= moment("2026-03-29T01:00:00+00:00").utc && utc < moment("2026-10-25T01:00:00+00:00").utc;
    return summer ? minutes(120) : minutes(60);
}

TEST(CoatCheck, FollowsTheClockIntoSummerTime)
{
    CoatDay day = goodDay();
    day.offsetAt = parisOffset;
    day.now = moment("2026-03-29T00:30:00+01:00");
    day.runs = RunHours{5 * 60, 9 * 60};
    // Four hours later the clock shows five and a half, not four and a half.
    EXPECT_EQ(instantText(*answerTo(day).keepOffUntil), "2026-03-29T05:30:00+02:00");
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2026-03-29T05:00:00+02:00");
    EXPECT_THAT(kindsOf(answerTo(day)), ElementsAre(CoatReasonKind::runsBeforeDry));
}

TEST(CoatCheck, FollowsTheClockOutOfSummerTime)
{
    CoatDay day = goodDay();
    day.offsetAt = parisOffset;
    day.now = moment("2026-10-25T00:30:00+02:00");
    day.runs = RunHours{4 * 60, 9 * 60};
    EXPECT_EQ(instantText(*answerTo(day).keepOffUntil), "2026-10-25T03:30:00+01:00");
    EXPECT_EQ(instantText(*answerTo(day).runsAgain), "2026-10-25T04:00:00+01:00");
    EXPECT_EQ(answerTo(day).verdict, CoatVerdict::mayCoat);
}

TEST(CoatCheck, RefusesWhatCannotBe)
{
    static constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
    const auto refused = [](auto change) {
        CoatDay day = goodDay();
        change(day);
        return !coatCheck(day).has_value();
    };
    EXPECT_TRUE(refused([](CoatDay& day) { day.surfaceTemperatureK = notANumber; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.surfaceTemperatureK = 20; })); // degrees Celsius given as kelvin
    EXPECT_TRUE(refused([](CoatDay& day) { day.product.dryTimeS = 0; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.product.dryTimeS = notANumber; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.product.highestHumidity = 80; })); // percent given as a share
    EXPECT_TRUE(refused([](CoatDay& day) { day.product.referenceTemperatureK = notANumber; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.product.lowestTemperatureK = 5; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.runs = RunHours{-1, 60}; }));
    EXPECT_TRUE(refused([](CoatDay& day) { day.runs = RunHours{60, 1440}; }));
}

TEST(CoatCheck, KeepsTheDaysConditionsInOneSentence)
{
    CoatDay day = goodDay();
    day.air = airAt(20, 0.6); // dew point 12.0 °C in the table of the coating-inspection guide
    day.surfaceTemperatureK = 14 + zeroCelsiusK;
    EXPECT_EQ(say(coatConditions(day, answerTo(day))),
              "Air 20.0 °C, 60.0 %; surface 14.0 °C, 2.0 K above the dew point of 12.0 °C.");
    day.surfaceTemperatureK = 5 + zeroCelsiusK; // the vessel of a unit that ran a minute ago
    EXPECT_EQ(say(coatConditions(day, answerTo(day))),
              "Air 20.0 °C, 60.0 %; surface 5.0 °C, 7.0 K below the dew point of 12.0 °C.");
}

TEST(CoatCheck, IsNeverFasterWhereItIsColder)
{
    CoatDay day = goodDay();
    double before = 0;
    for (double celsius = 40; celsius > -20; celsius -= 2.5) {
        day.surfaceTemperatureK = celsius + zeroCelsiusK;
        const double span = *answerTo(day).dryTimeS;
        EXPECT_GE(span, before);
        EXPECT_TRUE(std::isfinite(span));
        before = span;
    }
}

} // namespace

} // namespace padside
