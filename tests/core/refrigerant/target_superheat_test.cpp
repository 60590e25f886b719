// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/refrigerant/target_superheat.h"
#include "tests/support/check_rows.h"
#include "tests/support/typed_units.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

TargetSuperheat targetAt(double wetBulbF, double outdoorF)
{
    return targetSuperheat(fahrenheit(wetBulbF), fahrenheit(outdoorF)).value();
}

std::optional<double> chartAt(double wetBulbF, double outdoorF)
{
    const auto target = targetAt(wetBulbF, outdoorF).byChartK;
    return target ? std::optional(in("dF", *target)) : std::nullopt;
}

} // namespace

TEST(TargetSuperheatFormula, IsTheTradesRuleOfThumb)
{
    for (const CheckRow& row : checkRows("refrigerant_checks.csv", "target_superheat_formula")) {
        const double target = in("dF", targetAt(row.number("WB_in_F"), row.number("DB_out_F")).byFormulaK);
        EXPECT_NEAR(target, *row.expected, row.tolerance) << row.what;
    }
}

TEST(TargetSuperheatChart, IsThePrintedOneWithItsDashes)
{
    for (const CheckRow& row : checkRows("refrigerant_checks.csv", "target_superheat_chart")) {
        const auto target = chartAt(row.number("WB_in_F"), row.number("DB_out_F"));
        ASSERT_EQ(target.has_value(), row.expected.has_value()) << row.what;
        if (target) {
            EXPECT_NEAR(*target, *row.expected, 1e-9) << row.what;
        }
    }
}

TEST(TargetSuperheatChart, HasTheCellThatOnePrintGetsWrongAsTheOthersHaveIt)
{
    // 25, not 26: a second print and the Celsius copy (13.9 °C) of the same charging table.
    EXPECT_NEAR(*chartAt(70, 80), 25, 1e-9);
    EXPECT_NEAR(*targetAt(70, 80).byChartK, 13.9, 0.05);
}

TEST(TargetSuperheatChart, IsReadByStraightLinesBetweenItsCells)
{
    EXPECT_NEAR(*chartAt(67, 90), 14.5, 1e-9); // between 13 and 16
    EXPECT_NEAR(*chartAt(66, 92.5), 11.5, 1e-9); // between 13 and 10
    EXPECT_NEAR(*chartAt(67, 92.5), (13 + 16 + 10 + 14) / 4.0, 1e-9);
    EXPECT_NEAR(*chartAt(66.5, 91), 0.8 * (0.75 * 13 + 0.25 * 16) + 0.2 * (0.75 * 10 + 0.25 * 14), 1e-9);
}

TEST(TargetSuperheatChart, GivesNothingBesideADash)
{
    EXPECT_FALSE(chartAt(61, 85)); // a dash at 60, 8 at 62
    EXPECT_FALSE(chartAt(66, 107)); // 5 at 105, a dash at 110
    EXPECT_FALSE(chartAt(67, 107)); // one corner of four
    EXPECT_TRUE(chartAt(62, 85)); // on the last number before the dash
    EXPECT_TRUE(chartAt(62, 87)); // along the column, with a dash to the left
}

TEST(TargetSuperheatChart, EndsAtItsEdges)
{
    EXPECT_TRUE(chartAt(50, 55));
    EXPECT_TRUE(chartAt(76, 115));
    EXPECT_FALSE(chartAt(49.9, 55));
    EXPECT_FALSE(chartAt(76.1, 90));
    EXPECT_FALSE(chartAt(60, 54.9));
    EXPECT_FALSE(chartAt(76, 115.1));
}

TEST(TargetSuperheat, RisesWithTheWetBulbAndFallsWithTheOutdoorTemperature)
{
    for (double outdoor = 55; outdoor <= 115; outdoor += 0.5) {
        std::optional<double> left;
        for (double wetBulb = 50; wetBulb <= 76; wetBulb += 0.25) {
            const auto here = chartAt(wetBulb, outdoor);
            if (here && left) {
                EXPECT_GT(*here, *left) << wetBulb << " " << outdoor;
            }
            const auto hotter = outdoor + 0.5 <= 115 ? chartAt(wetBulb, outdoor + 0.5) : std::nullopt;
            if (here && hotter) {
                EXPECT_LT(*hotter, *here) << wetBulb << " " << outdoor;
            }
            left = here;
        }
    }
    EXPECT_GT(targetAt(68, 90).byFormulaK, targetAt(67, 90).byFormulaK);
    EXPECT_LT(targetAt(67, 91).byFormulaK, targetAt(67, 90).byFormulaK);
}

TEST(TargetSuperheat, OfChartAndFormulaDifferAsKnown)
{
    // Formula minus chart: -6.5 °F at 76/115, +3 °F at 62/90; computed outside the project.
    EXPECT_NEAR(in("dF", targetAt(76, 115).byFormulaK) - *chartAt(76, 115), -6.5, 1e-9);
    EXPECT_NEAR(in("dF", targetAt(62, 90).byFormulaK) - *chartAt(62, 90), 3, 1e-9);
}

TEST(TargetSuperheat, RefusesWhatCanNotBe)
{
    for (const double bad : {notANumber, endless, -endless, 0.0, 200.0, 400.0}) {
        EXPECT_FALSE(targetSuperheat(bad, 300)) << bad;
        EXPECT_FALSE(targetSuperheat(290, bad)) << bad;
    }
    EXPECT_EQ(say(targetSuperheat(400, 300).error().what),
              "126.9 °C is outside -50.0 °C to 80.0 °C; no target superheat can be told from it.");
}

} // namespace padside::test
