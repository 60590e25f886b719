// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using OutlookJson = nlohmann::json;
using testing::HasSubstr;

class CalcOutlook : public testing::Test
{
protected:
    CalcOutlook()
        : m_folder(std::filesystem::temp_directory_path()
                   / ("padside-outlook-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name())))
    {
        std::filesystem::remove_all(m_folder);
        std::filesystem::create_directories(m_folder);
    }
    ~CalcOutlook() override
    {
        std::error_code ignored;
        std::filesystem::remove_all(m_folder, ignored);
    }

    [[nodiscard]] Said asked(const std::string& topic, const std::string& text) const
    {
        const std::string path = (m_folder / "given").string();
        std::ofstream(path, std::ios::binary) << text;
        return run({"calc", topic, path});
    }

    [[nodiscard]] OutlookJson answer(const std::string& topic, const std::string& text) const
    {
        const Said said = asked(topic, text);
        EXPECT_EQ(said.exitCode, exitDone) << said.err;
        return said.exitCode == exitDone ? OutlookJson::parse(said.out) : OutlookJson::object();
    }

    [[nodiscard]] std::string refusal(const std::string& topic, const std::string& text) const
    {
        const Said said = asked(topic, text);
        EXPECT_EQ(said.exitCode, exitWrongUse) << said.out;
        EXPECT_EQ(said.out, "");
        return said.err;
    }

private:
    std::filesystem::path m_folder;
};

const std::string question = R"({"rates_per_year": [0.45, 0.30, 0.22, 0.15], "frailty_sigma": 0.6, "frailty_nodes": 15,
  "start": {"grade": 1, "exposure": 0},
  "observations": [{"exposure": 2.1, "grade": 1}, {"exposure": 3.4, "seen": false}],
  "horizons": [0.5, 1, 2, 5]})";

} // namespace

TEST_F(CalcOutlook, BeliefAnswersChancesPaceAndRange)
{
    const OutlookJson said = answer("belief", question);
    ASSERT_EQ(said["belief"].size(), 5U);
    double sum = 0;
    for (const double chance : said["belief"])
        sum += chance;
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_LT(said["pace_mean"], 1); // sound after two years: slower than usual
    EXPECT_LT(said["log_likelihood"], 0);
    ASSERT_EQ(said["chance_spent"].size(), 4U);
    EXPECT_LT(said["chance_spent"][0], said["chance_spent"][3]);
    EXPECT_LT(said["exposure_to_spent"]["p10"], said["exposure_to_spent"]["p50"]);
    EXPECT_LT(said["exposure_to_spent"]["p50"], said["exposure_to_spent"]["p90"]);
}

// tests/reference/first_passage.csv, set "known", from 1 to 5; computed with 50 digits.
TEST_F(CalcOutlook, BeliefWithoutSpreadIsTheChainItself)
{
    const OutlookJson said = answer("belief", R"({"rates_per_year": [0.45, 0.30, 0.22, 0.15], "frailty_sigma": 0,
        "start": {"grade": 1, "exposure": 0}, "observations": [], "horizons": [6.95193837062]})");
    EXPECT_NEAR(said["exposure_to_spent"]["p10"], 6.95193837062, 1e-10);
    EXPECT_NEAR(said["exposure_to_spent"]["p50"], 15.0912518062, 1e-9);
    EXPECT_NEAR(said["exposure_to_spent"]["p90"], 28.7246108167, 1e-9);
    EXPECT_NEAR(said["chance_spent"][0], 0.1, 1e-11);
}

// Computed outside the project with 30-digit arithmetic: general matrix exponentials for each node of the pace, nodes
// from the roots of the Hermite polynomial.
TEST_F(CalcOutlook, BeliefAgreesWithThirtyDigitArithmetic)
{
    const OutlookJson said = answer("belief", R"({"rates_per_year": [0.45, 0.30, 0.22, 0.15], "frailty_sigma": 0.6,
        "start": {"grade": 1, "exposure": 0}, "observations": [{"exposure": 2.1, "grade": 1},
        {"exposure": 3.4, "seen": false}, {"exposure": 5.25, "grade": 3}], "horizons": [0.5, 1, 2, 5]})");
    const std::vector<double> belief{0, 0.110881122427326, 0.875524652401273, 0.0135942251714008, 0};
    const std::vector<double> spent{0.00509437667550032, 0.0166358112808935, 0.0532746505796737, 0.209602472056522};
    for (std::size_t grade = 0; grade < belief.size(); ++grade)
        EXPECT_NEAR(said["belief"][grade], belief[grade], 1e-12);
    for (std::size_t horizon = 0; horizon < spent.size(); ++horizon)
        EXPECT_NEAR(said["chance_spent"][horizon], spent[horizon], 1e-12);
    EXPECT_NEAR(said["pace_mean"], 0.956989559239801, 1e-12);
    EXPECT_NEAR(said["log_likelihood"], -2.55295735295027, 1e-12);
    EXPECT_NEAR(said["exposure_to_spent"]["p10"], 2.979201520171, 1e-10);
    EXPECT_NEAR(said["exposure_to_spent"]["p50"], 10.94180938085, 1e-9);
    EXPECT_NEAR(said["exposure_to_spent"]["p90"], 32.38590593725, 1e-9);
}

TEST_F(CalcOutlook, WhatNeverComesToPassIsNull)
{
    const OutlookJson said = answer("belief", R"({"rates_per_year": [1, 0, 0, 0], "frailty_sigma": 0,
        "start": "unknown", "observations": [{"exposure": 1, "grade": 2}], "horizons": [100]})");
    EXPECT_TRUE(said["exposure_to_spent"]["p50"].is_null());
    EXPECT_EQ(said["chance_spent"][0], 0);
}

TEST_F(CalcOutlook, BeliefRefusesWhatCantBeMeant)
{
    const auto with = [](const std::string& patch) {
        OutlookJson json = OutlookJson::parse(question);
        json.merge_patch(OutlookJson::parse(patch));
        return json.dump();
    };
    EXPECT_THAT(refusal("belief", "not json"), HasSubstr("is no JSON object"));
    EXPECT_THAT(refusal("belief", "[1]"), HasSubstr("is no JSON object"));
    EXPECT_THAT(refusal("belief", ""), HasSubstr("is no JSON object"));
    EXPECT_THAT(refusal("belief", std::string(100'000, '[')), HasSubstr("is no JSON object"));
    EXPECT_THAT(refusal("belief", with(R"({"rates_per_year": null})")), HasSubstr("rates_per_year: this is missing"));
    EXPECT_THAT(refusal("belief", with(R"({"rates_per_year": [1, 2, 3]})")), HasSubstr("four rates"));
    EXPECT_THAT(refusal("belief", with(R"({"rates_per_year": [1, 2, 3, "4"]})")), HasSubstr("rates_per_year/4"));
    EXPECT_THAT(refusal("belief", with(R"({"rates_per_year": [1, 2, 3, -4]})")), HasSubstr("Rates lie between"));
    EXPECT_THAT(refusal("belief", with(R"({"frailty_sigma": 40})")), HasSubstr("spread of the pace"));
    EXPECT_THAT(refusal("belief", with(R"({"frailty_nodes": 1.5})")), HasSubstr("frailty_nodes"));
    EXPECT_THAT(refusal("belief", with(R"({"start": "new"})")), HasSubstr("start: \"unknown\" or an object"));
    EXPECT_THAT(refusal("belief", with(R"({"start": {"grade": 6}})")), HasSubstr("start/grade"));
    EXPECT_THAT(refusal("belief", with(R"({"observations": [{"exposure": 1}]})")),
                HasSubstr("observations/1/grade: this is missing"));
    EXPECT_THAT(refusal("belief", with(R"({"observations": [{"exposure": 1, "grade": 2, "seen": false}]})")),
                HasSubstr("what was not seen has no grade"));
    EXPECT_THAT(
        refusal("belief", with(R"({"observations": [{"exposure": 2, "grade": 2}, {"exposure": 1, "grade": 2}]})")),
        HasSubstr("Observation 2: its exposure is less"));
    EXPECT_THAT(
        refusal("belief", with(R"({"observations": [{"exposure": 2, "grade": 5}, {"exposure": 3, "grade": 2}]})")),
        HasSubstr("Observation 2: grade 2 can't follow"));
    EXPECT_THAT(refusal("belief", with(R"({"horizons": [-1]})")), HasSubstr("Horizons lie between"));
    EXPECT_THAT(refusal("belief", with(R"({"horizon": [1]})")), HasSubstr("horizon: no such field"));
    EXPECT_EQ(run({"calc", "belief", "/nowhere/at/all.json"}).exitCode, exitFileTrouble);
    EXPECT_EQ(run({"calc", "belief"}).exitCode, exitWrongUse);
}

// The certified maximum: see tests/reference/README.md.
TEST_F(CalcOutlook, RatesReproduceTheCertifiedMaximum)
{
    const Said said = run({"calc", "rates", PADSIDE_SOURCE_DIR "/tests/reference/panel500.csv"});
    ASSERT_EQ(said.exitCode, exitDone) << said.err;
    const OutlookJson rates = OutlookJson::parse(said.out);
    const std::vector<double> q{.434652, .317128, .181466, .151085};
    const std::vector<double> error{.024927, .020215, .019388, .034744};
    for (std::size_t k = 0; k < 4; ++k) {
        EXPECT_NEAR(rates["q"][k], q[k], 5.1e-7);
        EXPECT_NEAR(rates["standard_error"][k], error[k], 6e-7);
    }
    EXPECT_NEAR(rates["minus2loglik"], 3602.3086428, 1e-6);
    EXPECT_FALSE(rates.contains("notes"));
}

TEST_F(CalcOutlook, RatesThatTheFileSaysNothingOfAreNullWithANote)
{
    const OutlookJson rates = answer("rates", "unit,years,grade\na,0,1\na,1,2\nb,0,1\nb,1,1\nc,0,2\nc,2,2\n");
    EXPECT_TRUE(rates["q"][0].is_number());
    EXPECT_EQ(rates["q"][1], 0);
    EXPECT_TRUE(rates["standard_error"][1].is_null());
    EXPECT_TRUE(rates["q"][3].is_null());
    EXPECT_EQ(rates["notes"].size(), 3U);
}

TEST_F(CalcOutlook, RatesRefuseRowsThatCantBeMeant)
{
    const std::string head = "unit,years,grade\n";
    EXPECT_THAT(refusal("rates", "unit,grade\na,1\n"), HasSubstr("years"));
    EXPECT_THAT(refusal("rates", head), HasSubstr("no unit that was seen twice"));
    EXPECT_THAT(refusal("rates", head + "a,0,1\nb,0,1\n"), HasSubstr("no unit that was seen twice"));
    EXPECT_THAT(refusal("rates", head + "a,0,1\na,1,6\n"), HasSubstr("line 3"));
    EXPECT_THAT(refusal("rates", head + "a,0,1\na,nan,2\n"), HasSubstr("line 3"));
    EXPECT_THAT(refusal("rates", head + "a,0,3\na,1,2\n"), HasSubstr("line 3: unit a goes from grade 3 to 2"));
    EXPECT_THAT(refusal("rates", head + "a,1,2\na,0,3\n"), HasSubstr("goes back in time since line 2"));
    EXPECT_THAT(refusal("rates", head + "a,1,2\na,1,3\n"), HasSubstr("in no time"));
    EXPECT_EQ(run({"calc", "rates", "/nowhere/at/all.csv"}).exitCode, exitFileTrouble);
}

} // namespace padside::test
