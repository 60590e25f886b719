// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace padside::test {

using ::testing::HasSubstr;

TEST(CalcAnnuity, GivesTheFactorsOfTheTables)
{
    const Said ran = run({"calc", "annuity", "--rate", "8%", "--years", "10"});
    ASSERT_EQ(ran.exitCode, 0) << ran.err;
    const auto answer = nlohmann::json::parse(ran.out);
    EXPECT_NEAR(answer.at("capital_recovery").get<double>(), 0.14903, 1e-5)
        << "compound interest tables, 8 %, 10 years";
    EXPECT_NEAR(answer.at("present_worth").get<double>(), 6.7101, 1e-4);
    EXPECT_NEAR(answer.at("compound_amount").get<double>(), 14.4866, 1e-4);
}

TEST(CalcAnnuity, RefusesARateWithoutPercentAndYearsOfNothing)
{
    EXPECT_EQ(run({"calc", "annuity", "--rate", "8", "--years", "10"}).exitCode, 2);
    const Said none = run({"calc", "annuity", "--rate", "8%", "--years", "0"});
    EXPECT_EQ(none.exitCode, 2);
    EXPECT_THAT(none.err, HasSubstr("above 0"));
}

} // namespace padside::test
