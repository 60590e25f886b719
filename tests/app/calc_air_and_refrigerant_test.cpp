// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using Json = nlohmann::json;
using Words = std::vector<std::string>;
using testing::HasSubstr;

Json answerOf(Words words)
{
    words.insert(words.begin(), "calc");
    const Said said = run(words);
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    EXPECT_EQ(said.err, "");
    return said.exitCode == exitDone ? Json::parse(said.out) : Json::object();
}

std::string refusalOf(Words words)
{
    words.insert(words.begin(), "calc");
    const Said said = run(words);
    EXPECT_EQ(said.exitCode, exitWrongUse) << said.out;
    EXPECT_EQ(said.out, "");
    return said.err;
}

double number(const Json& answer, const char* key)
{
    EXPECT_TRUE(answer.contains(key)) << key;
    return answer.value(key, -1e9);
}

} // namespace

TEST(CalcAir, TellsDewPointAndWetBulb)
{
    const Json air = answerOf({"air", "--dry-bulb", "30C", "--rh", "50%"});
    // A published dew-point table has 18.4 °C; the rest as PsychroLib 1.1.1 has it.
    EXPECT_NEAR(number(air, "dew_point_C"), 18.4, 0.1);
    EXPECT_NEAR(number(air, "wet_bulb_C"), 22.0, 0.1);
    EXPECT_DOUBLE_EQ(number(air, "rh_percent"), 50);
    EXPECT_NEAR(number(air, "humidity_ratio"), 0.01331, 0.00002);
    EXPECT_NEAR(number(air, "saturation_pressure_Pa"), 4246, 2);
    EXPECT_DOUBLE_EQ(number(air, "station_pressure_Pa"), 101325);
}

TEST(CalcAir, TakesAnyTwoReadings)
{
    // ASHRAE Handbook, Fundamentals 2017, ch. 1, example: dry bulb 40 °C, wet bulb 20 °C: dew point 7 °C, 14 %.
    for (const Words& pair :
         {Words{"--dry-bulb", "40C", "--wet-bulb", "20C"}, Words{"--dry-bulb", "104F", "--dew-point", "7.2 °C"},
          Words{"--rh", "13.9%", "--wet-bulb", "20C"}, Words{"--dew-point", "7.2C", "--rh", "13.9%"},
          Words{"--wet-bulb", "68F", "--dew-point", "7.2C"}, Words{"--dry-bulb", "40C", "--rh", "13.8%"}}) {
        Words words{"air"};
        words.insert(words.end(), pair.begin(), pair.end());
        const Json air = answerOf(words);
        EXPECT_NEAR(number(air, "dry_bulb_C"), 40, 0.4);
        EXPECT_NEAR(number(air, "wet_bulb_C"), 20, 0.2); // the example is rounded
        EXPECT_NEAR(number(air, "dew_point_C"), 7.2, 0.3);
        EXPECT_NEAR(number(air, "rh_percent"), 14, 0.5);
        EXPECT_NEAR(number(air, "enthalpy_kJ_per_kg"), 56.7, 0.5);
    }
}

TEST(CalcAir, TakesTheAltitudeOfTheSite)
{
    const Words bulbs{"air", "--dry-bulb", "80F", "--wet-bulb", "67F", "--altitude"};
    Words high = bulbs;
    high.emplace_back("5000ft");
    const Json air = answerOf(high);
    EXPECT_NEAR(number(air, "humidity_ratio"), 0.0141, 0.0001); // computed outside the project
    EXPECT_NEAR(number(air, "station_pressure_Pa"), 84307, 20);
    Words same = bulbs;
    same.emplace_back("1524 m");
    EXPECT_NEAR(number(answerOf(same), "station_pressure_Pa"), number(air, "station_pressure_Pa"), 1e-6);
}

TEST(CalcAir, TakesDegreesBelowZero)
{
    EXPECT_NEAR(number(answerOf({"air", "--dry-bulb", "-5C", "--rh", "80%"}), "dry_bulb_C"), -5, 1e-9);
    EXPECT_NEAR(number(answerOf({"air", "--dry-bulb=-5C", "--rh=80%"}), "dry_bulb_C"), -5, 1e-9);
}

TEST(CalcAir, RefusesWrongUseInASentence)
{
    EXPECT_THAT(refusalOf({"air"}), HasSubstr("0 are given"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C"}), HasSubstr("1 are given"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "50%", "--wet-bulb", "20C"}), HasSubstr("3 are given"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30", "--rh", "50%"}), HasSubstr("--dry-bulb"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "0.5"}), HasSubstr("--rh"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30psi", "--rh", "50%"}), HasSubstr("--dry-bulb"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "nan C", "--rh", "50%"}), HasSubstr("--dry-bulb"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "120%"}), HasSubstr("120.0 %"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--wet-bulb", "31C"}), HasSubstr("above the dry bulb"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "50%", "--altitude", "900"}), HasSubstr("--altitude"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "50%", "--altitude", "90km"}), HasSubstr("--altitude"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "30C", "--rh", "50%", "--altitude", "90000m"}), HasSubstr("90000 m"));
    EXPECT_THAT(refusalOf({"air", "--dry-bulb", "400C", "--rh", "50%"}), HasSubstr("dry bulb"));
}

TEST(CalcSaturation, TellsPressuresOfATemperature)
{
    const Json answer = answerOf({"saturation", "--refrigerant", "R-410A", "--temperature", "40F"});
    // Short equations evaluated elsewhere: 118.4 psig dew, 118.8 psig bubble.
    EXPECT_NEAR(number(answer, "dew_kPa"), 917.7, 1);
    EXPECT_NEAR(number(answer, "bubble_kPa"), 920.4, 1);
    EXPECT_NEAR(number(answer, "dew_gauge_kPa"), 118.4 * 6.894757, 1);
    EXPECT_EQ(answer["safety_class"], "A1");
    EXPECT_EQ(number(answer, "gwp"), 2088);
    EXPECT_EQ(answer["gwp_report"], "AR4");
}

TEST(CalcSaturation, TellsTemperaturesOfAPressure)
{
    const Json gauge = answerOf({"saturation", "--refrigerant", "R-22", "--gauge", "68.5psi"});
    EXPECT_NEAR(number(gauge, "dew_C"), 4.44, 0.05);
    EXPECT_DOUBLE_EQ(number(gauge, "bubble_C"), number(gauge, "dew_C"));
    const Json absolute = answerOf({"saturation", "--refrigerant", "r407c", "--pressure", "500kPa"});
    EXPECT_NEAR(number(absolute, "dew_C") - number(absolute, "bubble_C"), 6.3, 0.5);
    const Json high = answerOf({"saturation", "--refrigerant", "R-22", "--gauge", "68.6psi", "--altitude", "5000ft"});
    const Json low = answerOf({"saturation", "--refrigerant", "R-22", "--gauge", "68.6psi"});
    EXPECT_NEAR((number(low, "dew_C") - number(high, "dew_C")) * 1.8, 1.7, 0.1); // °F; computed outside the project
    EXPECT_NEAR(number(high, "station_pressure_Pa"), 84307, 20);
}

TEST(CalcSaturation, RefusesWrongUseInASentence)
{
    EXPECT_THAT(refusalOf({"saturation", "--temperature", "4C"}), HasSubstr("--refrigerant"));
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-999", "--temperature", "4C"}), HasSubstr("R-22, R-32"));
    EXPECT_NE(refusalOf({"saturation", "--refrigerant", "R-22"}), "");
    EXPECT_NE(refusalOf({"saturation", "--refrigerant", "R-22", "--temperature", "4C", "--gauge", "68psi"}), "");
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-22", "--temperature", "4"}), HasSubstr("--temperature"));
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-22", "--temperature", "95C"}),
                HasSubstr("outside the range"));
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-22", "--pressure", "-5kPa"}), HasSubstr("absolute zero"));
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-22", "--gauge", "-20psi"}), HasSubstr("vacuum"));
    EXPECT_THAT(refusalOf({"saturation", "--refrigerant", "R-22", "--pressure", "9MPa"}),
                HasSubstr("outside the range"));
}

TEST(CalcSuperheat, IsTheLineAboveTheDewTemperature)
{
    // Required suction-line temperatures as printed in an installation manual: 51 °F at 70 psig is 10 °F.
    const Json answer = answerOf({"superheat", "--refrigerant", "R-22", "--gauge", "70psi", "--line", "51F"});
    EXPECT_NEAR(number(answer, "superheat_K") * 1.8, 10, 0.3);
    EXPECT_NEAR(number(answer, "dew_C"), 5, 0.1);
    EXPECT_DOUBLE_EQ(number(answer, "station_pressure_Pa"), 101325);
}

TEST(CalcSubcooling, IsTheBubbleTemperatureAboveTheLine)
{
    // Computed outside the project.
    const Json answer = answerOf({"subcooling", "--refrigerant", "R-410A", "--gauge", "341.9 psig", "--line", "95F"});
    EXPECT_NEAR(number(answer, "subcooling_K") * 1.8, 10, 0.2);
    EXPECT_NEAR(number(answer, "bubble_C"), 40.6, 0.1);
}

TEST(CalcSuperheat, RefusesWrongUseInASentence)
{
    for (const char* topic : {"superheat", "subcooling"}) {
        EXPECT_THAT(refusalOf({topic, "--refrigerant", "R-22", "--line", "51F"}), HasSubstr("--gauge"));
        EXPECT_THAT(refusalOf({topic, "--refrigerant", "R-22", "--gauge", "70psi"}), HasSubstr("--line"));
        EXPECT_THAT(refusalOf({topic, "--refrigerant", "R-22", "--gauge", "70psi", "--line", "51"}),
                    HasSubstr("--line"));
        EXPECT_THAT(refusalOf({topic, "--refrigerant", "water", "--gauge", "70psi", "--line", "51F"}),
                    HasSubstr("water"));
        EXPECT_THAT(refusalOf({topic, "--refrigerant", "R-22", "--gauge", "-15psi", "--line", "51F"}),
                    HasSubstr("vacuum"));
    }
}

TEST(CalcTargetSuperheat, IsThatOfFormulaAndChart)
{
    const Json answer = answerOf({"target-superheat", "--wet-bulb", "66F", "--outdoor", "90F"});
    EXPECT_NEAR(number(answer, "formula_F"), 14, 1e-6);
    EXPECT_NEAR(number(answer, "chart_F"), 13, 1e-6);
    EXPECT_FALSE(answer.contains("note"));
    const Json dash = answerOf({"target-superheat", "--wet-bulb", "62F", "--outdoor", "100F"});
    EXPECT_NEAR(number(dash, "formula_F"), 3, 1e-6);
    EXPECT_TRUE(dash.at("chart_F").is_null());
    EXPECT_THAT(dash.at("note").get<std::string>(), HasSubstr("no valid test"));
    EXPECT_THAT(refusalOf({"target-superheat", "--wet-bulb", "66", "--outdoor", "90F"}), HasSubstr("--wet-bulb"));
    EXPECT_THAT(refusalOf({"target-superheat", "--wet-bulb", "66F"}), HasSubstr("--outdoor"));
}

} // namespace padside::test
