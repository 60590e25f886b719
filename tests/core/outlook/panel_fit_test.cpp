// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/panel_fit.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>

namespace padside {

namespace {

using test::ReferenceTable;
using testing::HasSubstr;

std::vector<PanelStep> panel500()
{
    const ReferenceTable table("panel500.csv");
    std::vector<PanelStep> steps;
    for (std::size_t row = 1; row < table.rows(); ++row) {
        if (table.text(row, "unit") != table.text(row - 1, "unit"))
            continue;
        steps.push_back({table.number(row, "years") - table.number(row - 1, "years"),
                         static_cast<Grade>(table.number(row - 1, "grade")),
                         static_cast<Grade>(table.number(row, "grade"))});
    }
    return steps;
}

std::string fitRefusal(const std::vector<PanelStep>& steps)
{
    const auto fit = fitPanel(steps);
    return fit ? std::string() : say(fit.error().what);
}

} // namespace

// The certified maximum: R's msm with tight settings, numpy's BFGS and a Fisher scoring in C++ agree on it; see
// tests/reference/README.md.
TEST(PanelFit, ReproducesTheCertifiedMaximumOfFiveHundredUnits)
{
    const auto fit = fitPanel(panel500());
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->steps, 4256U);
    const std::array<double, 4> rate{.43465225, .31712823, .18146606, .15108478};
    const std::array<double, 4> error{.024927, .020215, .019388, .034744};
    for (std::size_t k = 0; k < 4; ++k) {
        EXPECT_EQ(fit->rates[k].knowledge, RateKnowledge::fitted);
        EXPECT_NEAR(fit->rates[k].perYear, rate[k], 3e-8);
        EXPECT_NEAR(fit->rates[k].standardError, error[k], 6e-7);
    }
    EXPECT_NEAR(fit->minusTwoLogLikelihood, 3602.3086428, 6e-8);
}

// Computed by hand: grade 4 left once in three yearly looks at it: (1 - e^-q) = 1/3.
TEST(PanelFit, OneRateAloneHasAClosedForm)
{
    const std::vector<PanelStep> steps{
        {1, Grade::poor, Grade::poor}, {1, Grade::poor, Grade::poor}, {1, Grade::poor, Grade::spent}};
    const auto fit = fitPanel(steps);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->rates[3].perYear, std::log(1.5), 1e-9);
    EXPECT_NEAR(fit->minusTwoLogLikelihood, -2 * (2 * std::log(2.0 / 3) + std::log(1.0 / 3)), 1e-9);
    EXPECT_EQ(fit->rates[0].knowledge, RateKnowledge::neverEntered);
}

TEST(PanelFit, SaysWhichRatesTheDataCantTell)
{
    const std::vector<PanelStep> steps{{1, Grade::sound, Grade::worn},
                                       {1, Grade::sound, Grade::sound},
                                       {2, Grade::worn, Grade::worn},
                                       {2, Grade::worn, Grade::worn}};
    const auto fit = fitPanel(steps);
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->rates[0].knowledge, RateKnowledge::fitted);
    EXPECT_EQ(fit->rates[1].knowledge, RateKnowledge::neverLeft);
    EXPECT_EQ(fit->rates[1].perYear, 0);
    EXPECT_EQ(fit->rates[2].knowledge, RateKnowledge::neverEntered);
    EXPECT_NEAR(fit->rates[0].perYear, std::log(2.0), 1e-9);
}

TEST(PanelFit, AGradeThatNobodyEverSawHasNoRate)
{
    const std::vector<PanelStep> steps{{1, Grade::sound, Grade::marked}, {1, Grade::sound, Grade::sound}};
    const auto fit = fitPanel(steps);
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->rates[1].knowledge, RateKnowledge::unbounded);
    EXPECT_NEAR(fit->rates[0].perYear, std::log(2.0), 1e-4);
}

TEST(PanelFit, RefusesStepsThatCantBe)
{
    EXPECT_THAT(fitRefusal({}), HasSubstr("No unit was seen twice"));
    EXPECT_THAT(fitRefusal({{1, Grade::marked, Grade::worn}}),
                HasSubstr("Step 1 goes from grade 3 to 2, which is better"));
    EXPECT_THAT(fitRefusal({{0, Grade::sound, Grade::worn}}), HasSubstr("in no time"));
    EXPECT_THAT(fitRefusal({{-1, Grade::sound, Grade::worn}}), HasSubstr("no number of years from 0 on"));
    EXPECT_THAT(fitRefusal({{std::nan(""), Grade::sound, Grade::worn}}), HasSubstr("no number of years from 0 on"));
}

TEST(PanelFit, NeverAnswersWhatIsNoNumber)
{
    std::mt19937 random(3);
    for (int round = 0; round < 300; ++round) {
        std::vector<PanelStep> steps;
        const std::size_t many = 1 + random() % 12;
        for (std::size_t step = 0; step < many; ++step) {
            const int from = 1 + static_cast<int>(random() % 5);
            const int to = from + static_cast<int>(random() % static_cast<unsigned>(6 - from));
            steps.push_back(
                {0.01 * static_cast<double>(1 + random() % 1000), static_cast<Grade>(from), static_cast<Grade>(to)});
        }
        const auto fit = fitPanel(steps);
        if (!fit) {
            EXPECT_THAT(say(fit.error().what), HasSubstr("did not settle"));
            continue;
        }
        EXPECT_TRUE(std::isfinite(fit->minusTwoLogLikelihood));
        for (const FittedRate& rate : fit->rates) {
            EXPECT_TRUE(std::isfinite(rate.perYear));
            EXPECT_TRUE(std::isfinite(rate.standardError));
        }
    }
}

} // namespace padside
