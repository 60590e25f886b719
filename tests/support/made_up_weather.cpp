// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/made_up_weather.h"

#include <chrono>
#include <cmath>
#include <fmt/format.h>

namespace padside::test {

namespace {

struct Air
{
    double celsius;
    double dewPoint;
    double percent;
};

/// A temperate year: warmest in July and in the afternoon, dampest before dawn.
Air airAt(double hour)
{
    constexpr double turn = 6.283185307179586;
    const double season = -std::cos(turn * (hour - 500) / 8760);
    const double day = -std::cos(turn * (hour - 4) / 24);
    const double weather = std::sin(turn * hour / 131) + 0.6 * std::sin(turn * hour / 57);
    const double celsius = 12 + 10 * season + 4 * day + 2 * weather;
    const double percent = std::fmin(100, 72 - 14 * day + 9 * std::sin(turn * hour / 97));
    return {celsius, celsius - (100 - percent) / 5, percent};
}

std::chrono::year_month_day dayOf(int hour)
{
    return std::chrono::sys_days(std::chrono::year(2025) / 1 / 1) + std::chrono::days(hour / 24);
}

} // namespace

std::string madeUpEpw(int hours, int rowsPerHour)
{
    std::string text = "LOCATION,Nowhere,-,XXX,made up,000000,45,10,1,20\n"
                       "DESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n"
                       "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,made up\nCOMMENTS 2,made up\n";
    text += fmt::format("DATA PERIODS,1,{},Data,Wednesday,1/1,12/31\n", rowsPerHour);
    for (int row = 0; row < hours * rowsPerHour; ++row) {
        const int hour = row / rowsPerHour;
        const auto day = dayOf(hour);
        const Air air = airAt(static_cast<double>(row) / rowsPerHour);
        text += fmt::format(
            "{},{},{},{},{},?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9?9*9*9?9?9?9,{:.1f},{:.13f},{:.13f},"
            "101325,0,0,{:.12f},0,0,0,0,0,0,0,90,2,0,0,19.2,77777,9,999999999,139,0.068,0,88,0.17,0,1\n",
            2025, static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()), hour % 24 + 1,
            row % rowsPerHour * 60 / rowsPerHour, air.celsius, air.dewPoint, air.percent, 240 + air.celsius * 3.1);
    }
    return text;
}

std::string madeUpWeatherCsv(int hours, int rowsPerHour)
{
    std::string text = "time,temperature_C,rh_percent\n";
    for (int row = 0; row < hours * rowsPerHour; ++row) {
        const int hour = row / rowsPerHour;
        const auto day = dayOf(hour);
        const Air air = airAt(static_cast<double>(row) / rowsPerHour);
        text += fmt::format("{}-{:02}-{:02} {:02}:{:02},{:.1f},{:.4f}\n", 2025, static_cast<unsigned>(day.month()),
                            static_cast<unsigned>(day.day()), hour % 24, row % rowsPerHour * 60 / rowsPerHour,
                            air.celsius, air.percent);
    }
    return text;
}

} // namespace padside::test
