// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/measure.h"
#include "tests/core/quantity/number_styles.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using enum QuantityKind;

Measure measureOf(std::string_view text, QuantityKind kind, const NumberStyle& style = {})
{
    const auto measure = parseMeasure(text, kind, style);
    EXPECT_TRUE(measure) << text << ": " << (measure ? "" : say(measure.error().what));
    return measure.value_or(Measure{-1, count, "none", "none"});
}

std::string refusalOf(std::string_view text, QuantityKind kind, const NumberStyle& style = {})
{
    const auto measure = parseMeasure(text, kind, style);
    if (measure)
        return "taken as " + std::to_string(measure->si);
    EXPECT_EQ(measure.error().kind, ProblemKind::badInput);
    return say(measure.error().what);
}

} // namespace

TEST(TypedMeasure, IsKeptInSiWithItsUnitAndItsText)
{
    const Measure pressure = measureOf(" 68 psig ", gaugePressure);
    EXPECT_NEAR(pressure.si, 68 * 6894.757293168, 1e-6);
    EXPECT_EQ(pressure.kind, gaugePressure);
    EXPECT_EQ(pressure.unitCode, "psig");
    EXPECT_EQ(pressure.typed, "68 psig");
}

TEST(TypedMeasure, IsUnderstoodAsPeopleWriteIt)
{
    EXPECT_DOUBLE_EQ(measureOf("20 °C", temperature).si, 293.15);
    EXPECT_DOUBLE_EQ(measureOf("20\u202f°C", temperature).si, 293.15);
    EXPECT_DOUBLE_EQ(measureOf("20C", temperature).si, 293.15);
    EXPECT_DOUBLE_EQ(measureOf("−5 °C", temperature).si, 268.15);
    EXPECT_DOUBLE_EQ(measureOf("-5,5°C", temperature, test::germanNumbers).si, 267.65);
    EXPECT_DOUBLE_EQ(measureOf("1/8 in", length).si, 0.003175);
    EXPECT_DOUBLE_EQ(measureOf("1/8\"", length).si, 0.003175);
    EXPECT_DOUBLE_EQ(measureOf("1 3/16in.", length).si, 0.0254 * 1.1875);
    EXPECT_DOUBLE_EQ(measureOf("45uF", capacitance).si, 45e-6);
    EXPECT_DOUBLE_EQ(measureOf("45 µF", capacitance).si, 45e-6);
    EXPECT_DOUBLE_EQ(measureOf("45 mfd", capacitance).si, 45e-6);
    EXPECT_DOUBLE_EQ(measureOf("0.5 in. w.c.", gaugePressure).si, 0.5 * 249.08891);
    EXPECT_DOUBLE_EQ(measureOf("2 MΩ", resistance).si, 2e6);
    EXPECT_DOUBLE_EQ(measureOf("55%", ratio).si, 0.55);
    EXPECT_DOUBLE_EQ(measureOf("2e3 Pa", gaugePressure).si, 2000);
    EXPECT_DOUBLE_EQ(measureOf("1.5 h", duration).si, 5400);
}

TEST(TypedMeasure, ACountNeedsNoUnit)
{
    EXPECT_EQ(measureOf("3", count).si, 3);
    EXPECT_EQ(measureOf("3", count).unitCode, "1");
    EXPECT_EQ(refusalOf("3 pieces", count), "“pieces” does not belong here. Type the number alone.");
}

TEST(TypedMeasure, ABareNumberTakesTheUnitOfferedOrIsRefused)
{
    const auto offered = parseMeasure("68", gaugePressure, {}, unitByCode("psig"));
    ASSERT_TRUE(offered);
    EXPECT_EQ(offered->unitCode, "psig");
    EXPECT_EQ(offered->typed, "68");
    const auto spelled = parseMeasure("68 kPa", gaugePressure, {}, unitByCode("psig"));
    ASSERT_TRUE(spelled);
    EXPECT_EQ(spelled->unitCode, "kPag") << "what is typed goes before what is offered";
    EXPECT_EQ(refusalOf("68", gaugePressure), "“68” has no unit. Type it with one, like 68 kPa.");
}

TEST(TypedMeasure, AnUnknownUnitIsNamedWithThoseThatFit)
{
    EXPECT_EQ(refusalOf("68 psia", gaugePressure),
              "“psia” is not a unit that fits here (kPa, psig, bar, MPa, Pa, in. w.c. are). Type one of these.");
    EXPECT_EQ(refusalOf("5 mohm", resistance),
              "“mohm” is not a unit that fits here (Ω, kΩ, MΩ, GΩ are). Type one of these.");
}

TEST(TypedMeasure, RubbishBehindOrBeforeIsRefused)
{
    EXPECT_EQ(refusalOf("68 psig 5", gaugePressure).substr(0, 26), "“psig 5” is not a unit");
    EXPECT_EQ(refusalOf("68 psig;", gaugePressure).substr(0, 25), "“psig;” is not a unit");
    EXPECT_EQ(refusalOf("about 68 psig", gaugePressure),
              "“about 68 psig” is not a number. Type digits, like 12.5 or 1/8.");
    EXPECT_EQ(refusalOf("psig", gaugePressure), "“psig” is not a number. Type digits, like 12.5 or 1/8.");
    EXPECT_EQ(refusalOf("", gaugePressure), "There is no number here. Type digits, like 12.5 or 1/8.");
    EXPECT_EQ(refusalOf("60-68 psig", gaugePressure), "“60-68” is not a number. Type digits, like 12.5 or 1/8.");
}

TEST(TypedMeasure, WhatCouldBeAThousandIsRefusedWithItsUnitToo)
{
    EXPECT_EQ(refusalOf("1.250 kPa", gaugePressure, test::germanNumbers),
              "“1.250” could mean 1250 or 1,250. Type one of these.");
    EXPECT_EQ(refusalOf("1,250 kPa", gaugePressure), "“1,250” could mean 1250 or 1.250. Type one of these.");
    for (const char* text : {"1 250 kPa", "1\u202f250 kPa", "1\u00a0250 kPa"})
        EXPECT_EQ(refusalOf(text, gaugePressure, test::germanNumbers),
                  "“1 250” has a thousands separator or two decimal signs. Type the number without separators.");
    EXPECT_DOUBLE_EQ(measureOf("12.5 kPa", gaugePressure, test::germanNumbers).si, 12500);
    EXPECT_DOUBLE_EQ(measureOf("12,5 kPa", gaugePressure).si, 12500);
}

TEST(TypedMeasure, NothingLiesBelowAbsoluteZero)
{
    EXPECT_EQ(refusalOf("-274 °C", temperature), "“-274 °C” is below absolute zero. Check the number and its unit.");
    EXPECT_EQ(refusalOf("-460 F", temperature), "“-460 F” is below absolute zero. Check the number and its unit.");
    EXPECT_EQ(refusalOf("-1 psia", absolutePressure),
              "“-1 psia” is below absolute zero. Check the number and its unit.");
    EXPECT_DOUBLE_EQ(measureOf("-10 psig", gaugePressure).si, -10 * 6894.757293168) << "a vacuum on a gauge";
    EXPECT_DOUBLE_EQ(measureOf("-300 K", temperatureDifference).si, -300);
}

TEST(TypedMeasure, NeitherNanNorInfinityGetsIn)
{
    EXPECT_EQ(refusalOf("nan psig", gaugePressure), "“nan psig” is not a number. Type digits, like 12.5 or 1/8.");
    EXPECT_EQ(refusalOf("1e999 psig", gaugePressure), "“1e999” is not a number. Type digits, like 12.5 or 1/8.");
    EXPECT_EQ(refusalOf("1e308 psig", gaugePressure), "“1e308 psig” is too large. Check the number and its unit.");
}

TEST(TypedMeasure, IsShownInTheUnitAskedForWithItsDecimals)
{
    EXPECT_EQ(showMeasure(68 * 6894.757293168, *unitByCode("psig")), "68.0 psig");
    EXPECT_EQ(showMeasure(293.15, *unitByCode("degF")), "68 °F");
    EXPECT_EQ(showMeasure(293.15, *unitByCode("degC"), test::germanNumbers), "20,0 °C");
    EXPECT_EQ(showMeasure(0.003175, *unitByCode("in")), "0.125 in");
    EXPECT_EQ(showMeasure(3, *unitByCode("1")), "3.0");
}

TEST(TypedMeasure, WhatIsShownCanBeTypedBackInEveryUnit)
{
    for (const QuantityKind kind :
         {temperature, temperatureDifference, gaugePressure, absolutePressure, length, mass, current, voltage,
          resistance, capacitance, duration, ratio, airflow, velocity, power, count}) {
        for (const MeasuringUnit& unit : unitsOf(kind)) {
            const std::string shown = showMeasure(toSi(12, unit), unit, test::germanNumbers);
            const Measure back = measureOf(shown, kind, test::germanNumbers);
            EXPECT_EQ(back.unitCode, unit.code) << shown;
            EXPECT_NEAR(fromSi(back.si, unit), 12, 1e-9) << shown;
        }
    }
}

} // namespace padside
