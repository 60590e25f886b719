// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/corrosivity.h"
#include "core/corrosion/pollution_class.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace padside::test {

namespace {

AnnualAir airAt(double celsius, double percent, double sulphurDioxide, double chloride)
{
    return {celsius + 273.15, percent / 100, sulphurDioxide, chloride};
}

Corrosivity corrosivityAt(double celsius, double percent, double sulphurDioxide, double chloride)
{
    return corrosivityOf(airAt(celsius, percent, sulphurDioxide, chloride)).value();
}

CorrosionCategory categoryBy(const std::string& unit, Metal metal, double loss)
{
    return unit == "um" ? categoryByDepth(metal, loss) : categoryByMass(metal, loss);
}

} // namespace

// Source: tests/reference/README.md, corrosion_category_limits.csv (ISO 9223:2012 table 2).
TEST(CorrosionCategory, TheUpperLimitOfEachBelongsToItAndWhatIsAboveToTheNext)
{
    const ReferenceTable limits("corrosion_category_limits.csv");
    ASSERT_EQ(limits.rows(), 40U);
    for (std::size_t row = 0; row < limits.rows(); ++row) {
        const Metal metal = fromCode<Metal>(limits.text(row, "metal")).value();
        const auto category = fromCode<CorrosionCategory>(limits.text(row, "category")).value();
        const double upper = limits.number(row, "upper");
        const auto next = static_cast<CorrosionCategory>(static_cast<int>(category) + 1);
        EXPECT_EQ(categoryBy(limits.text(row, "unit"), metal, upper), category) << row;
        EXPECT_EQ(categoryBy(limits.text(row, "unit"), metal, std::nextafter(upper, 1e9)), next) << row;
    }
}

// A second published page gives the limits of steel: 1.3, 25, 50, 200 and 700 µm.
TEST(CorrosionCategory, ALossAboveTheTableIsSaidSo)
{
    EXPECT_EQ(categoryByDepth(Metal::steel, 700), CorrosionCategory::cx);
    EXPECT_EQ(categoryByDepth(Metal::steel, 701), CorrosionCategory::aboveCx);
    EXPECT_EQ(codeOf(CorrosionCategory::aboveCx), "above CX");
    EXPECT_EQ(categoryByMass(Metal::aluminium, 1e6), CorrosionCategory::cx); // its CX has no upper limit
    EXPECT_EQ(categoryByMass(Metal::aluminium, 0), CorrosionCategory::c1); // "negligible"
}

// Source: tests/reference/README.md, corrosivity.csv.
TEST(Corrosivity, FollowsTheDoseResponseFunctionsOfIso9223)
{
    const ReferenceTable table("corrosivity.csv");
    ASSERT_GE(table.rows(), 18U);
    double worst = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Metal metal = fromCode<Metal>(table.text(row, "metal")).value();
        const FirstYearLoss loss = corrosivityAt(table.number(row, "temperature_C"), table.number(row, "rh_percent"),
                                                 table.number(row, "so2"), table.number(row, "chloride"))
                                       .of(metal);
        EXPECT_EQ(loss.metal, metal);
        EXPECT_NEAR(loss.loss, table.number(row, "rate"), table.number(row, "tolerance")) << row;
        worst = std::max(worst, std::abs(loss.loss - table.number(row, "rate")));
        if (const std::string& category = table.text(row, "category"); !category.empty()) {
            EXPECT_EQ(codeOf(loss.category), category) << row;
        }
    }
    RecordProperty("largest_deviation", std::to_string(worst));
    EXPECT_LT(worst, 6e-5); // the table gives four decimals
}

// Each term of the printed example by hand: 26.2673 + 4.9041 µm (computed outside this project).
TEST(Corrosivity, HasNothingFromWhatIsNotInTheAir)
{
    EXPECT_NEAR(corrosivityAt(10, 75, 10, 0).of(Metal::steel).loss, 26.2673, 5e-5);
    EXPECT_NEAR(corrosivityAt(10, 75, 0, 5).of(Metal::steel).loss, 4.9041, 5e-5);
    EXPECT_EQ(corrosivityAt(10, 75, 0, 0).of(Metal::steel).loss, 0);
}

// Fitted ranges: ISO 9223:2012 table 3 in a transcription.
TEST(Corrosivity, NamesWhatLiesOutsideTheFittedRange)
{
    EXPECT_FALSE(corrosivityAt(-17.1, 34, 0.7, 0.4).isExtrapolated());
    EXPECT_FALSE(corrosivityAt(28.7, 93, 150.4, 760.5).isExtrapolated());
    using enum AirInput;
    EXPECT_EQ(corrosivityAt(-17.2, 75, 10, 5).outside, std::vector{temperature});
    EXPECT_EQ(corrosivityAt(28.8, 75, 10, 5).outside, std::vector{temperature});
    EXPECT_EQ(corrosivityAt(10, 33.9, 10, 5).outside, std::vector{humidity});
    EXPECT_EQ(corrosivityAt(10, 93.1, 10, 5).outside, std::vector{humidity});
    EXPECT_EQ(corrosivityAt(10, 75, 0.6, 5).outside, std::vector{sulphurDioxide});
    EXPECT_EQ(corrosivityAt(10, 75, 151, 5).outside, std::vector{sulphurDioxide});
    EXPECT_EQ(corrosivityAt(10, 75, 10, 0.3).outside, std::vector{chloride});
    EXPECT_EQ(corrosivityAt(30, 95, 200, 900).outside, (std::vector{temperature, humidity, sulphurDioxide, chloride}));
}

TEST(Corrosivity, HasNoStepAtTenDegrees)
{
    for (const Metal metal : allMetals) {
        const double below = corrosivityAt(10 - 1e-9, 75, 10, 5).of(metal).loss;
        const double above = corrosivityAt(10 + 1e-9, 75, 10, 5).of(metal).loss;
        EXPECT_NEAR(below, above, 1e-7 * below) << codeOf(metal);
    }
}

TEST(Corrosivity, MorePollutionOrDamperAirNeverMeansLessLossOrALowerCategory)
{
    for (double celsius = -20; celsius <= 35; celsius += 5) {
        for (double percent = 30; percent <= 95; percent += 5) {
            const Corrosivity here = corrosivityAt(celsius, percent, 20, 50);
            for (const Corrosivity& more :
                 {corrosivityAt(celsius, percent + 5, 20, 50), corrosivityAt(celsius, percent, 30, 50),
                  corrosivityAt(celsius, percent, 20, 80)}) {
                for (const Metal metal : allMetals) {
                    EXPECT_GT(more.of(metal).loss, here.of(metal).loss);
                    EXPECT_GE(more.of(metal).category, here.of(metal).category);
                }
            }
        }
    }
}

TEST(Corrosivity, WhatCanNotBeAirIsRefused)
{
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double inf = std::numeric_limits<double>::infinity();
    for (const AnnualAir& air :
         {airAt(-91, 75, 10, 5), airAt(61, 75, 10, 5), airAt(10, -1, 10, 5), airAt(10, 101, 10, 5),
          airAt(10, 75, -1, 5), airAt(10, 75, 10, -1), airAt(nan, 75, 10, 5), airAt(10, nan, 10, 5),
          airAt(10, 75, nan, 5), airAt(10, 75, 10, inf)}) {
        const auto corrosivity = corrosivityOf(air);
        ASSERT_FALSE(corrosivity);
        EXPECT_EQ(corrosivity.error().kind, ProblemKind::badInput);
        EXPECT_FALSE(say(corrosivity.error().what).empty());
    }
    EXPECT_EQ(corrosivityAt(20, 80, 1e300, 1e300).of(Metal::steel).category, CorrosionCategory::aboveCx);
    EXPECT_TRUE(std::isfinite(corrosivityAt(60, 100, 1.7e308, 1.7e308).of(Metal::aluminium).loss));
}

// ISO 9223:2012: Pd = 0.8 Pc, read in two transcriptions.
TEST(PollutionClass, DepositionOfSulphurDioxideComesFromItsConcentration)
{
    EXPECT_NEAR(depositionOfSulphurDioxide(5), 4, 1e-9);
}

// Source: tests/reference/README.md, pollution_classes.csv.
TEST(PollutionClass, FollowsTheLimitsOfBothEditions)
{
    const ReferenceTable table("pollution_classes.csv");
    ASSERT_EQ(table.rows(), 16U);
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto edition = table.text(row, "edition") == "1992" ? StandardEdition::of1992 : StandardEdition::of2012;
        const auto classOf = [&](double deposition) {
            return table.text(row, "substance") == "SO2" ? sulphurDioxideClass(deposition, edition)
                                                         : chlorideClass(deposition);
        };
        const double upper = table.number(row, "upper");
        EXPECT_EQ(classOf(upper), static_cast<int>(table.number(row, "class"))) << row;
        EXPECT_EQ(classOf(std::nextafter(upper, 1e9)), static_cast<int>(table.number(row, "class")) + 1) << row;
    }
}

} // namespace padside::test
