// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/first_passage.h"
#include "core/outlook/misgrading.h"
#include "tests/core/outlook/paces.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace padside {

namespace {

using test::ReferenceTable;

const std::map<std::string, Rates>& ratesOfSets()
{
    static const std::map<std::string, Rates> rates{{"known", {0.45, 0.30, 0.22, 0.15}},
                                                    {"equal", {0.3, 0.3, 0.3, 0.3}},
                                                    {"msm_fit", {0.434652237, 0.317128224, 0.181466136, 0.151084478}}};
    return rates;
}

} // namespace

// Computed outside the project with 50 digits, see tests/reference/README.md. The way to grade 4 is the way to grade 5
// of a chain that begins one grade later.
TEST(FirstPassage, AgreesWithTheTableToElevenFigures)
{
    const ReferenceTable table("first_passage.csv");
    ASSERT_EQ(table.rows(), 21U);
    for (std::size_t row = 0; row < table.rows(); ++row) {
        Rates rates = ratesOfSets().at(table.text(row, "set"));
        auto from = static_cast<int>(table.number(row, "from"));
        if (table.text(row, "to") == "4") {
            rates = {1, rates[0], rates[1], rates[2]};
            ++from;
        }
        const Belief start(test::paceOf(0), static_cast<Grade>(from));
        const PassageRange range = exposureRangeToSpent(start, rates);
        const auto expectYears = [&](const std::optional<double>& years, const char* column, double chance) {
            const double expected = table.number(row, column);
            ASSERT_TRUE(years) << "row " << row + 2;
            EXPECT_NEAR(*years / expected, 1, 1.5e-11) << "row " << row + 2 << ' ' << column;
            EXPECT_NEAR(chanceSpentAfter(start, rates, *years), chance, 1e-13);
            EXPECT_NEAR(*exposureToSpent(start, rates, chance) / *years, 1, 1e-12);
        };
        expectYears(range.early, "t_p10", 0.1);
        expectYears(range.middle, "t_p50", 0.5);
        expectYears(range.late, "t_p90", 0.9);
    }
}

TEST(FirstPassage, WhatIsSpentNeedsNoTime)
{
    const Belief spent(test::paceOf(0), Grade::spent);
    EXPECT_EQ(exposureToSpent(spent, {1, 1, 1, 1}, 0.9), 0);
}

TEST(FirstPassage, WhereARateIsZeroItNeverComesToPass)
{
    const Belief sound(test::paceOf(0), Grade::sound);
    EXPECT_FALSE(exposureToSpent(sound, {1, 0, 1, 1}, 0.1));
    EXPECT_FALSE(exposureToSpent(sound, {0, 0, 0, 0}, 0.1));
    const Belief half(test::paceOf(0), GradeChances{0.5, 0, 0.5, 0, 0});
    EXPECT_TRUE(exposureToSpent(half, {1, 0, 1, 1}, 0.4));
    EXPECT_FALSE(exposureToSpent(half, {1, 0, 1, 1}, 0.6));
}

TEST(FirstPassage, TinyRatesTakeForever)
{
    const Belief poor(test::paceOf(0), Grade::poor);
    EXPECT_NEAR(*exposureToSpent(poor, {1e-12, 1e-12, 1e-12, 1e-12}, 0.5) * 1e-12, std::log(2.0), 1e-12);
    EXPECT_FALSE(exposureToSpent(poor, {1e-300, 1e-300, 1e-300, 1e-300}, 0.5));
}

TEST(FirstPassage, AnUncertainPaceSpreadsTheDates)
{
    const auto pace = std::make_shared<const Pace>(*logNormalPace(0.6));
    const Rates rates{0.3, 0.3, 0.3, 0.3};
    const PassageRange sure = exposureRangeToSpent(Belief(test::paceOf(0), Grade::sound), rates);
    const PassageRange unsure = exposureRangeToSpent(Belief(pace, Grade::sound), rates);
    EXPECT_LT(*unsure.early, *sure.early);
    EXPECT_GT(*unsure.late, *sure.late);
}

} // namespace padside
