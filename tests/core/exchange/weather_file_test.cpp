// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/weather_file.h"
#include "tests/support/made_up_weather.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

constexpr double zeroCelsius = 273.15;

WeatherFile read(const std::string& text)
{
    const auto file = readWeatherFile(text, "w");
    EXPECT_TRUE(file) << (file ? "" : say(file.error().what));
    return file ? *file : WeatherFile{};
}

std::string refusal(const std::string& text)
{
    const auto file = readWeatherFile(text, "w");
    EXPECT_FALSE(file);
    return file ? std::string() : say(file.error().what);
}

std::string firstFault(const std::string& text)
{
    const WeatherFile file = read(text);
    EXPECT_EQ(file.skipped, 1U);
    return file.faults.empty() ? std::string() : say(file.faults.front().what);
}

double hoursOf(const WeatherFile& file)
{
    double hours = 0;
    for (const WeatherStep& step : file.steps)
        hours += step.hours;
    return hours;
}

const std::string epwHead = "LOCATION,Old Mill,-,XXX,x,0,45,10,1,20\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n";
const std::string csvHead = "time,temperature_C,rh_percent\n";
const std::string good = "2026-05-04 14:00,20,50\n";

std::string epwRow(const std::string& dryBulb, const std::string& dewPoint, const std::string& humidity)
{
    return "2026,1,1,1,0,?9?9," + dryBulb + "," + dewPoint + "," + humidity + ",101325,0,0\n";
}

} // namespace

TEST(WeatherFile, AnEpwYearIsHours)
{
    const WeatherFile file = read(madeUpEpw(8760));
    EXPECT_EQ(file.place, "Nowhere");
    EXPECT_EQ(file.steps.size(), 8760U);
    EXPECT_EQ(file.skipped, 0U);
    EXPECT_NEAR(hoursOf(file), 8760, 1e-6);
    EXPECT_TRUE(file.notes.empty());
}

TEST(WeatherFile, EpwAndCsvHoursAndQuarterHoursGiveTheSameMeans)
{
    const WeatherYear year = digestWeather(read(madeUpEpw(8760)).steps, 281.15).value();
    for (const std::string& text : {madeUpEpw(8760, 4), madeUpWeatherCsv(8760), madeUpWeatherCsv(8760, 4)}) {
        const WeatherYear other = digestWeather(read(text).steps, 281.15).value();
        EXPECT_NEAR(other.hours, 8760, 1e-6);
        EXPECT_NEAR(other.meanTemperatureK, year.meanTemperatureK, 0.01);
        EXPECT_NEAR(other.meanHumidity, year.meanHumidity, 0.001);
        EXPECT_NEAR(other.wetHours, year.wetHours, 40);
        EXPECT_NEAR(other.sweatingShare, year.sweatingShare, 0.003);
    }
    EXPECT_GT(year.wetHours, 1000);
    EXPECT_GT(year.sweatingShare, 0.1);
}

TEST(WeatherFile, ALeapYearHas8784Hours)
{
    EXPECT_NEAR(hoursOf(read(madeUpWeatherCsv(8784))), 8784, 1e-6);
}

// The EPW data dictionary: 99.9 °C and 999 % stand for a value that is missing.
TEST(WeatherFile, CodesForMissingValuesAreGapsNotValues)
{
    const WeatherFile file = read(epwHead + epwRow("20", "9.3", "50") + epwRow("99.9", "9.3", "50")
                                  + epwRow("20", "99.9", "999") + epwRow("20", "99.9", "999."));
    EXPECT_EQ(file.steps.size(), 1U);
    EXPECT_EQ(file.skipped, 3U);
    EXPECT_EQ(file.gaps, 3U);
    EXPECT_EQ(say(file.faults[0].what), "w, line 4: the temperature is missing. The row is skipped.");
    EXPECT_EQ(say(file.faults[1].what), "w, line 5: the humidity is missing. The row is skipped.");

    const WeatherFile csv = read(csvHead + good + "2026-05-04 15:00,,50\n2026-05-04 16:00,20,NA\n"
                                 + "2026-05-04 17:00,-9999,50\n2026-05-04 18:00,nan,50\n2026-05-04 19:00,21,60\n");
    EXPECT_EQ(csv.steps.size(), 2U);
    EXPECT_EQ(csv.gaps, 4U);
    EXPECT_NEAR(hoursOf(csv), 2, 1e-12); // a gap is no weather
}

// 20 °C and 50 %: dew point 9.3 °C in published tables.
TEST(WeatherFile, ADewPointStandsInForAMissingHumidity)
{
    EXPECT_NEAR(read(epwHead + epwRow("20", "9.27", "999")).steps.front().humidity, 0.5, 0.002);
    EXPECT_NEAR(read("temperature_C,dew_point_C\n20,9.27\n").steps.front().humidity, 0.5, 0.002);
    EXPECT_NE(firstFault(epwHead + epwRow("20", "9", "50") + epwRow("20", "21", "999")).find("dew point"),
              std::string::npos);
}

TEST(WeatherFile, BadRowsCostOnlyThemselvesAndAreNamed)
{
    EXPECT_EQ(firstFault(epwHead + epwRow("20", "9", "50") + epwRow("warm", "9", "50")),
              "w, line 4: “warm” is no temperature of air (from -90 °C to 70 °C). The row is skipped.");
    EXPECT_EQ(firstFault(epwHead + epwRow("20", "9", "50") + "2026,1,1,1\n"),
              "w, line 4: values in this row: 4, but the humidity is the ninth. The row is skipped.");
    EXPECT_EQ(firstFault(csvHead + good + "2026-05-04 15:00,20,120\n"),
              "w, line 3: “120” is no relative humidity from 0 to 110 %. The row is skipped.");
    EXPECT_EQ(firstFault(csvHead + good + "2026-02-30 15:00,20,50\n"),
              "w, line 3: “2026-02-30 15:00” is no time. Write it like 2026-05-04 14:00. The row is skipped.");
    EXPECT_EQ(firstFault(csvHead + good + "2026-05-04 15:00,20\n"),
              "w, line 3: values in this row: 2, but columns: 3. The row is skipped.");
    EXPECT_EQ(firstFault(csvHead + good + "2026-05-04 15:00,\"20,50\n"),
              "w, line 3: a quotation mark is out of place. The row is skipped.");
    for (const char* number : {"inf", "1e999", "-1e999", "0x10", "2 0", "20C", "71", "-91"})
        EXPECT_NE(firstFault(csvHead + good + "2026-05-04 15:00," + number + ",50\n").find(number), std::string::npos);
}

TEST(WeatherFile, OnlyTheFirstFaultsAreKeptButAllAreCounted)
{
    std::string text = csvHead + good;
    for (int i = 0; i < 500; ++i)
        text += "2026-05-04 15:00,x,50\n";
    const WeatherFile file = read(text);
    EXPECT_EQ(file.skipped, 500U);
    ASSERT_EQ(file.faults.size(), mostWeatherFaults);
    EXPECT_EQ(file.faults.back().line, 22U);
}

TEST(WeatherFile, ColumnsAreFoundByTheirNamesAndUnits)
{
    const auto step = [](const std::string& text) { return read(text).steps.front(); };
    EXPECT_NEAR(step("Relative humidity (%),Dew point (°F),Air temperature [°F]\n50,48,68\n").temperatureK,
                20 + zeroCelsius, 1e-9);
    EXPECT_NEAR(step("T_K,RH_fraction\n293.15,0.5\n").temperatureK, 20 + zeroCelsius, 1e-9);
    EXPECT_NEAR(step("T_K,RH_fraction\n293.15,0.5\n").humidity, 0.5, 1e-12);
    EXPECT_NEAR(
        step("\"soil_temperature_C\",\"wet_bulb_C\",\"dry_bulb_C\",\"rh_percent\"\n5,14,\"20\",50\n").temperatureK,
        20 + zeroCelsius, 1e-9);
    EXPECT_NEAR(step("temp_C,humidity_pct\n+20, 105 \n").humidity, 1, 1e-12); // gauges may read above 100
}

TEST(WeatherFile, DateAndTimeMayStandApart)
{
    const WeatherFile file = read("date,time,temperature_C,rh_percent\n2026-05-04,9:00,20,50\n2026-05-04,09:30,21,50\n"
                                  "2026-05-04,24:00,21,50\n");
    ASSERT_EQ(file.steps.size(), 3U);
    EXPECT_NEAR(file.steps[0].hours, 0.5, 1e-12);
    EXPECT_NEAR(read("date,temperature_C,rh_percent\n2026-05-04,20,50\n2026-05-05,20,50\n").steps[0].hours, 1, 1e-12);
}

TEST(WeatherFile, ARowStandsForTheTimeToTheNextButNeverForAGap)
{
    const WeatherFile file = read(csvHead
                                  + "2026-05-04T00:00,20,50\n2026-05-04T00:15,20,50\n2026-05-04T00:30,20,50\n"
                                    "2026-05-04T01:30,20,50\n2026-05-09T00:00,20,50\n2026-05-09T03:00,20,50\n");
    const std::array<double, 6> hours{0.25, 0.25, 1, 1, 3, 3};
    ASSERT_EQ(file.steps.size(), hours.size());
    for (std::size_t i = 0; i < hours.size(); ++i)
        EXPECT_NEAR(file.steps[i].hours, hours.at(i), 1e-12) << i;
}

TEST(WeatherFile, WithoutTimesTheCountOfRowsTellsHowLongOneIs)
{
    const auto rows = [](int count) {
        std::string text = "temperature_C,rh_percent\n";
        for (int i = 0; i < count; ++i)
            text += "20,50\n";
        return read(text);
    };
    EXPECT_NEAR(hoursOf(rows(35'040)), 8760, 1e-6);
    EXPECT_NEAR(hoursOf(rows(8784)), 8784, 1e-6);
    EXPECT_NEAR(hoursOf(rows(2920)), 8760, 1e-6);
    const WeatherFile odd = rows(100);
    EXPECT_NEAR(hoursOf(odd), 100, 1e-9);
    ASSERT_EQ(odd.notes.size(), 1U);
    EXPECT_EQ(say(odd.notes[0]), "w does not say how long a row stands for: an hour is taken.");
}

TEST(WeatherFile, WhatCanNotBeUsedAtAllIsRefusedWithASentence)
{
    EXPECT_EQ(refusal(""),
              "w has no column of temperatures. Its first line must name one with its unit, like "
              "temperature_C.");
    EXPECT_EQ(refusal("temperature,rh_percent\n20,50\n"),
              "w: the name of the column “temperature” has no unit. Write it with one, like temperature_C.");
    EXPECT_EQ(refusal("temperature_C,rh\n20,50\n"),
              "w: the name of the column “rh” has no unit. Write it with one, like rh_percent.");
    EXPECT_EQ(refusal("temperature_C\n20\n"),
              "w has no column of humidities. Its first line must name one with its unit, like rh_percent or "
              "dew_point_C.");
    EXPECT_EQ(refusal("time;temperature_C;rh_percent\n2026-05-04;20,5;50\n"),
              "w has semicolons or tabs between its values. Save it with commas, and “.” as decimal sign.");
    EXPECT_EQ(refusal(csvHead), "w holds no row of weather. Check that it is the right file, and whole.");
    EXPECT_EQ(refusal(epwHead), "w holds no row of weather. Check that it is the right file, and whole.");
    EXPECT_EQ(refusal(csvHead + "\nx,y,z\n2026-05-04 14:00,y,50\n"),
              "w holds no row of weather that can be used (rows: 2). The first is line 3: check that it is the right "
              "file.");
}

TEST(WeatherFile, LineEndsMarksAndCutOffRowsAreTaken)
{
    const std::string text = csvHead + good + "2026-05-04 15:00,21,60\n";
    for (const std::string end : {"\r\n", "\r"}) {
        std::string other = "\xEF\xBB\xBF";
        for (const char character : text)
            other += character == '\n' ? end : std::string(1, character);
        EXPECT_EQ(read(other).steps.size(), 2U);
        EXPECT_EQ(read(other).skipped, 0U);
    }
    const WeatherFile cut = read(madeUpEpw(48).substr(0, 6000));
    EXPECT_GT(cut.steps.size(), 10U);
    EXPECT_LE(cut.skipped, 1U);
}

TEST(WeatherFile, NothingStrangeIsRepeatedInASentence)
{
    using namespace std::string_literals;
    for (const std::string& strange :
         {"\0"s, "2\0002"s, "\x1b[31m"s, "\xff\xfe"s, std::string(5'000'000, 'x'), "\xc3"s}) {
        const std::string said = firstFault(csvHead + good + "2026-05-04 15:00," + strange + ",50\n");
        EXPECT_LT(said.size(), 250U);
        EXPECT_EQ(said.find('\0'), std::string::npos);
        EXPECT_EQ(said.find('\x1b'), std::string::npos);
        EXPECT_EQ(said.find('\xff'), std::string::npos);
        EXPECT_EQ(said.find("\xc3\x22"), std::string::npos);
    }
}

TEST(WeatherFile, AnEpwThatDoesNotSayItsRowsPerHourIsTakenAsHours)
{
    for (const char* count : {"", "0", "-4", "61", "many", "1e3"}) {
        const WeatherFile file
            = read("LOCATION,x\nDATA PERIODS,1," + std::string(count) + ",Data\n" + epwRow("20", "9", "50"));
        EXPECT_EQ(file.steps.front().hours, 1) << count;
        EXPECT_EQ(file.notes.size(), 1U) << count;
    }
    EXPECT_EQ(read("LOCATION,x\n" + epwRow("20", "9", "50")).steps.front().hours, 1);
}

} // namespace padside::test
