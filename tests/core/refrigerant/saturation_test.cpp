// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/station_pressure.h"
#include "core/refrigerant/saturation.h"
#include "tests/core/refrigerant/shipped_refrigerants.h"
#include "tests/support/check_rows.h"
#include "tests/support/reference_table.h"
#include "tests/support/typed_units.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace padside::test {

namespace {

using testing::HasSubstr;

double psig(double absolutePa)
{
    return in("psig", absolutePa - seaLevelPressurePa);
}

double fromPsig(double typed)
{
    return si(typed, "psig") + seaLevelPressurePa;
}

std::string refusalOf(const Result<double>& answer)
{
    if (answer)
        return "answered";
    EXPECT_EQ(answer.error().kind, ProblemKind::badInput);
    return say(answer.error().what);
}

/// The pressure a printed table means.
Result<double> printedPressure(const Refrigerant& refrigerant, double temperatureK, const std::string& branch)
{
    const auto bubble = bubblePressurePa(refrigerant, temperatureK);
    const auto dew = dewPressurePa(refrigerant, temperatureK);
    if (branch == "mean" && bubble && dew)
        return (*bubble + *dew) / 2;
    return branch == "dew" ? dew : bubble;
}

} // namespace

TEST(Saturation, FollowsTheEquationsOfStateWithinAFiftiethOfAKelvin)
{
    const ReferenceTable table("saturation_computed.csv");
    ASSERT_EQ(table.rows(), 242U);
    double worstK = 0;
    double worstShare = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Refrigerant& refrigerant = shippedRefrigerant(table.text(row, "refrigerant"));
        const double temperature = celsius(table.number(row, "temperature_C"));
        const double bubble = table.number(row, "bubble_kPa") * 1000;
        const double dew = table.number(row, "dew_kPa") * 1000;
        const std::string what = refrigerant.code + " at " + table.text(row, "temperature_C");
        for (const double deviation : {bubbleTemperatureK(refrigerant, bubble).value() - temperature,
                                       dewTemperatureK(refrigerant, dew).value() - temperature}) {
            EXPECT_NEAR(deviation, 0, 0.02) << what;
            worstK = std::max(worstK, std::abs(deviation));
        }
        for (const double share : {bubblePressurePa(refrigerant, temperature).value() / bubble,
                                   dewPressurePa(refrigerant, temperature).value() / dew}) {
            EXPECT_NEAR(share, 1, 0.0005) << what;
            worstShare = std::max(worstShare, std::abs(share - 1));
        }
    }
    RecordProperty("worst_K", std::to_string(worstK));
    RecordProperty("worst_share", std::to_string(worstShare));
}

TEST(Saturation, IsThatOfPrintedTablesWithinWhatTheyDifferAmongThemselves)
{
    const ReferenceTable table("saturation_printed.csv");
    ASSERT_EQ(table.rows(), 63U);
    int outside = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Refrigerant& refrigerant = shippedRefrigerant(table.text(row, "refrigerant"));
        const double temperature = celsius(table.number(row, "temperature_C"));
        const double printed = table.number(row, "pressure_kPa") * 1000;
        const auto pressure = printedPressure(refrigerant, temperature, table.text(row, "branch"));
        if (temperature < refrigerant.lowestK - 1e-6) {
            EXPECT_FALSE(pressure) << "row " << row;
            ++outside;
            continue;
        }
        EXPECT_NEAR(100 * (pressure.value() / printed - 1), 0, table.number(row, "tolerance_percent"))
            << refrigerant.code << " at " << table.text(row, "temperature_C") << " (" << table.text(row, "source")
            << ")";
    }
    EXPECT_EQ(outside, 1); // R-454B at -50.9 °C: its fit begins at -50 °C
}

TEST(Saturation, IsThatOfGaugeCharts)
{
    for (const CheckRow& row : checkRows("refrigerant_checks.csv", "saturation_pressure")) {
        const Refrigerant& refrigerant = shippedRefrigerant(row.text("refrigerant"));
        const std::string branch = row.gives("branch") ? row.text("branch") : "both";
        const double pressure = printedPressure(refrigerant, fahrenheit(row.number("T_F")), branch).value();
        EXPECT_NEAR(psig(pressure), *row.expected, row.tolerance) << row.what;
    }
    for (const CheckRow& row : checkRows("refrigerant_checks.csv", "saturation_temperature")) {
        const double temperature
            = dewTemperatureK(shippedRefrigerant(row.text("refrigerant")), fromPsig(row.number("P_psig"))).value();
        EXPECT_NEAR(in("degF", temperature), *row.expected, row.tolerance) << row.what;
    }
    for (const CheckRow& row : checkRows("refrigerant_checks.csv", "r410a_saturation_psig")) {
        const double pressure = dewPressurePa(shippedRefrigerant("R-410A"), fahrenheit(row.number("F"))).value();
        EXPECT_NEAR(psig(pressure), *row.expected, row.tolerance) << row.what;
    }
}

TEST(Saturation, TurnsRoundExactly)
{
    for (const Refrigerant& refrigerant : shippedAll().refrigerants()) {
        const double highest = highestSaturationK(refrigerant);
        for (double at = refrigerant.lowestK; at <= highest; at += 0.83) {
            const double bubble = bubblePressurePa(refrigerant, at).value();
            const double dew = dewPressurePa(refrigerant, at).value();
            EXPECT_NEAR(bubbleTemperatureK(refrigerant, bubble).value(), at, 1e-8) << refrigerant.code;
            EXPECT_NEAR(dewTemperatureK(refrigerant, dew).value(), at, 1e-8) << refrigerant.code;
            const double again = bubblePressurePa(refrigerant, bubbleTemperatureK(refrigerant, bubble).value()).value();
            EXPECT_NEAR(again / bubble, 1, 1e-9) << refrigerant.code;
        }
    }
}

TEST(Saturation, RisesWithTemperatureAndTheDewCurveIsNeverAboveTheBubbleCurve)
{
    for (const Refrigerant& refrigerant : shippedAll().refrigerants()) {
        double bubbleBelow = 0;
        double dewBelow = 0;
        for (double at = refrigerant.lowestK; at <= highestSaturationK(refrigerant); at += 0.1) {
            const double bubble = bubblePressurePa(refrigerant, at).value();
            const double dew = dewPressurePa(refrigerant, at).value();
            EXPECT_GT(bubble, bubbleBelow) << refrigerant.code << " " << at;
            EXPECT_GT(dew, dewBelow) << refrigerant.code << " " << at;
            EXPECT_LE(dew, bubble * (1 + 1e-12)) << refrigerant.code << " " << at;
            bubbleBelow = bubble;
            dewBelow = dew;
        }
    }
}

TEST(Saturation, BoilsAndGlidesAsTheMixtureModelHasIt)
{
    const ReferenceTable table("saturation_at_one_atmosphere.csv");
    ASSERT_EQ(table.rows(), shippedAll().refrigerants().size());
    int outside = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Refrigerant& refrigerant = shippedRefrigerant(table.text(row, "refrigerant"));
        if (table.number(row, "bubble_C") < in("degC", refrigerant.lowestK)) {
            ++outside;
        } else {
            const double bubble = bubbleTemperatureK(refrigerant, seaLevelPressurePa).value();
            EXPECT_NEAR(in("degC", bubble), table.number(row, "bubble_C"), 0.03) << refrigerant.code;
            const double dew = dewTemperatureK(refrigerant, seaLevelPressurePa).value();
            EXPECT_NEAR(in("degC", dew), table.number(row, "dew_C"), 0.03) << refrigerant.code;
        }
        const double evaporating = dewPressurePa(refrigerant, celsius(5)).value();
        EXPECT_NEAR(celsius(5) - bubbleTemperatureK(refrigerant, evaporating).value(),
                    table.number(row, "glide_at_5C_dew_K"), 0.03)
            << refrigerant.code;
        const double condensing = bubblePressurePa(refrigerant, celsius(40)).value();
        EXPECT_NEAR(dewTemperatureK(refrigerant, condensing).value() - celsius(40),
                    table.number(row, "glide_at_40C_bubble_K"), 0.03)
            << refrigerant.code;
        EXPECT_EQ(refrigerant.glides, table.number(row, "glide_at_5C_dew_K") > 0) << refrigerant.code;
    }
    EXPECT_EQ(outside, 2); // R-452B and R-454B boil below -50 °C, where their fits begin
}

TEST(Saturation, CoversWhereUnitsWork)
{
    for (const Refrigerant& refrigerant : shippedAll().refrigerants()) {
        for (const double at : {-40.0, 0.0, 60.0}) {
            EXPECT_TRUE(bubblePressurePa(refrigerant, celsius(at))) << refrigerant.code << " at " << at;
            EXPECT_TRUE(dewPressurePa(refrigerant, celsius(at))) << refrigerant.code << " at " << at;
        }
    }
}

TEST(Saturation, GivesNoAnswerNearTheCriticalTemperature)
{
    for (const Refrigerant& refrigerant : shippedAll().refrigerants()) {
        const double nearCritical = refrigerant.criticalTemperatureK - 2.9;
        for (const double at : {nearCritical, refrigerant.criticalTemperatureK, nearCritical + 50}) {
            EXPECT_FALSE(bubblePressurePa(refrigerant, at)) << refrigerant.code;
            EXPECT_FALSE(dewPressurePa(refrigerant, at)) << refrigerant.code;
        }
    }
    EXPECT_TRUE(dewPressurePa(shippedRefrigerant("R-22"), 369.295 - 3));
    EXPECT_EQ(refusalOf(dewPressurePa(shippedRefrigerant("R-410A"), celsius(70))),
              "70.0 °C is outside the range in which the pressure of R-410A is known, -73.1 °C to 68.3 °C.");
}

TEST(Saturation, GivesNoAnswerForPressuresOutsideItsCurves)
{
    EXPECT_EQ(refusalOf(dewTemperatureK(shippedRefrigerant("R-410A"), 5e6)),
              "5000 kPa abs. is outside the range in which the temperature of R-410A is known, 29 kPa abs. to 4596 kPa "
              "abs. (-73.1 °C to 68.3 °C).");
    EXPECT_EQ(refusalOf(bubbleTemperatureK(shippedRefrigerant("R-22"), -5000)),
              "An absolute pressure of -5 kPa abs. can't be: even a vacuum has 0. Is it a gauge pressure?");
    for (const Refrigerant& refrigerant : shippedAll().refrigerants()) {
        for (const double pressure : {0.0, -1.0, 1e-9, 1e8, 1e300}) {
            EXPECT_FALSE(bubbleTemperatureK(refrigerant, pressure)) << refrigerant.code << " " << pressure;
            EXPECT_FALSE(dewTemperatureK(refrigerant, pressure)) << refrigerant.code << " " << pressure;
        }
    }
}

TEST(Saturation, RefusesWhatIsNoNumber)
{
    const Refrigerant& refrigerant = shippedRefrigerant("R-22");
    for (const double value : {notANumber, endless, -endless}) {
        for (const auto& answer : {bubblePressurePa(refrigerant, value), dewPressurePa(refrigerant, value),
                                   bubbleTemperatureK(refrigerant, value), dewTemperatureK(refrigerant, value)})
            EXPECT_THAT(refusalOf(answer), HasSubstr("is not a number."));
    }
}

} // namespace padside::test
