// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fuzz/mutation.h"
#include "tests/fuzz/weather_trial.h"

#include <array>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

constexpr int weatherInputs = 98'500 / shareOfInputs;

/// Good files, small so that a change meets something.
std::array<std::string, 4> goodWeather()
{
    const std::string flags = "?9?9?9?9E0?9?9";
    std::string epw = "LOCATION,Old Mill,-,XXX,x,0,45,10,1,20\nCOMMENTS 1,x\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n";
    std::string csv = "time,temperature_C,rh_percent\n";
    std::string apart = "\xEF\xBB\xBF\"date\",time,Air temperature [°F],Dew point [°F]\r\n";
    std::string untimed = "T_K,RH_fraction\n";
    for (int hour = 1; hour <= 12; ++hour) {
        const std::string two = (hour < 10 ? "0" : "") + std::to_string(hour);
        epw += "2026,1,1," + std::to_string(hour) + ",0," + flags + ",1" + std::to_string(hour) + ".5,9.25,6"
            + std::to_string(hour % 10) + ".1234567890123,101325,0,0,240\n";
        csv += "2026-05-04 " + two + ":00,1" + two + ".5,8" + std::to_string(hour % 10) + "\n";
        apart += "2026-05-04," + std::to_string(hour) + ":30,\"7" + std::to_string(hour % 10) + "\",50\r\n";
        untimed += "28" + std::to_string(hour % 10) + ".15,0.8" + std::to_string(hour % 10) + "\n";
    }
    return {epw, csv, apart, untimed};
}

} // namespace

TEST(MalformedInput, AnyWeatherFileGivesAYearOrOneSentence)
{
    Mutation mutation(20261125);
    const auto good = goodWeather();
    for (const std::string& text : good)
        ASSERT_EQ(faultOfWeather(text), "");
    for (int i = 0; i < weatherInputs; ++i) {
        const std::string& from = good.at(mutation.below(good.size()));
        const std::string text = i % 20 == 0 ? mutation.noise(400) : mutation.of(from, 12);
        ASSERT_EQ(faultOfWeather(text), "") << "input " << i << ":\n" << text;
    }
}

} // namespace padside::test
