// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/on_sample.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using nlohmann::json;

/// The track record of the sample, made once.
class TrackCommand : public OnSample
{
protected:
    [[nodiscard]] static json track(const std::vector<std::string>& more = {})
    {
        std::vector<std::string> words{"track", file, "--as", "json", "--on", "2026-11-20"};
        words.insert(words.end(), more.begin(), more.end());
        const Said said = run(words);
        EXPECT_EQ(said.exitCode, exitDone) << said.err;
        return json::parse(said.out);
    }
    [[nodiscard]] static std::vector<json> rowsOf(const json& track, const std::string& of,
                                                  const std::string& forecasts = "all")
    {
        std::vector<json> rows;
        for (const json& row : track) {
            if (row.at("of") == of && row.at("forecasts") == forecasts)
                rows.push_back(row);
        }
        return rows;
    }
};

} // namespace

TEST_F(TrackCommand, TheSampleHasAVerdictAndAScoreForEachHorizon)
{
    const json all = track();
    EXPECT_EQ(all.front().at("of"), "verdict");
    EXPECT_FALSE(all.front().at("says").get<std::string>().empty());
    const auto horizons = rowsOf(all, "horizon");
    ASSERT_EQ(horizons.size(), 4U);
    for (const json& row : horizons) {
        ASSERT_GT(row.at("settled").get<int>(), 0);
        const double n = row.at("settled").get<double>();
        const double base = row.at("spent").get<double>() / n;
        EXPECT_NEAR(row.at("base_rate").get<double>(), base, 1e-12);
        EXPECT_NEAR(row.at("brier_of_base").get<double>(), base * (1 - base), 1e-12);
        EXPECT_NEAR(row.at("brier_skill").get<double>(),
                    1 - row.at("brier").get<double>() / row.at("brier_of_base").get<double>(), 1e-9);
    }
}

TEST_F(TrackCommand, TheVerdictIsOnTheForecastsMadeWithTheLivesInUse)
{
    const json all = track();
    const auto inUse = rowsOf(all, "verdict", "in-use");
    const auto before = rowsOf(all, "verdict", "before");
    ASSERT_EQ(inUse.size(), 1U) << "the sample has learned lives";
    ASSERT_EQ(before.size(), 1U);
    EXPECT_TRUE(rowsOf(all, "verdict").empty()) << "none on all of them together";
    EXPECT_EQ(inUse.front().at("verdict"), "trusted");
    EXPECT_EQ(before.front().at("verdict"), "too-gloomy");
    const auto saysOf = [](const json& row) { return row.at("says").get<std::string>(); };
    EXPECT_NE(saysOf(inUse.front())
                  .find("those since 2024-11-20, when they were learned from your records. " + saysOf(before.front())),
              std::string::npos)
        << saysOf(inUse.front());
    const auto ofAll = rowsOf(all, "horizon");
    const auto ofInUse = rowsOf(all, "horizon", "in-use");
    const auto ofBefore = rowsOf(all, "horizon", "before");
    ASSERT_EQ(ofInUse.size(), ofAll.size());
    ASSERT_EQ(ofBefore.size(), ofAll.size());
    for (std::size_t horizon = 0; horizon < ofAll.size(); ++horizon) {
        for (const char* key : {"settled", "waiting", "untold"}) {
            EXPECT_EQ(ofInUse[horizon].at(key).get<int>() + ofBefore[horizon].at(key).get<int>(),
                      ofAll[horizon].at(key).get<int>())
                << key;
        }
    }
}

TEST_F(TrackCommand, AsOfADayBeforeTheLivesWereLearnedAllForecastsAreJudgedTogether)
{
    const Said said = run({"track", file, "--as", "json", "--on", "2024-11-19"});
    const json all = json::parse(said.out);
    EXPECT_EQ(all.front().at("forecasts"), "all");
    EXPECT_EQ(all.front().at("verdict"), "too-gloomy");
    EXPECT_TRUE(rowsOf(all, "horizon", "in-use").empty());
}

TEST_F(TrackCommand, TheTenthsOfAHorizonHoldAllItsForecasts)
{
    const json all = track();
    for (const json& horizon : rowsOf(all, "horizon")) {
        int settled = 0;
        int spent = 0;
        double expected = 0;
        for (const json& tenth : rowsOf(all, "tenth")) {
            if (tenth.at("horizon_months") != horizon.at("horizon_months"))
                continue;
            settled += tenth.at("settled").get<int>();
            spent += tenth.at("spent").get<int>();
            expected += tenth.at("expected").get<double>();
            EXPECT_GE(tenth.at("mean_forecast").get<double>(), tenth.at("from").get<double>());
            EXPECT_LE(tenth.at("mean_forecast").get<double>(), tenth.at("to").get<double>());
        }
        EXPECT_EQ(settled, horizon.at("settled").get<int>());
        EXPECT_EQ(spent, horizon.at("spent").get<int>());
        EXPECT_NEAR(expected, horizon.at("expected").get<double>(), 1e-6);
    }
}

TEST_F(TrackCommand, AsOfAnEarlierDayLessIsTold)
{
    const auto settledOn = [](const std::string& day) {
        const Said said = run({"track", file, "--as", "json", "--on", day});
        return rowsOf(json::parse(said.out), "horizon").at(1).at("settled").get<int>();
    };
    EXPECT_LT(settledOn("2023-11-20"), settledOn("2026-11-20"));
}

TEST_F(TrackCommand, OfOneUnitItSpeaksOfThatUnitOnly)
{
    const json one = track({"--unit", "HW-01"});
    for (const json& miss : rowsOf(one, "miss"))
        EXPECT_EQ(miss.at("unit"), "HW-01");
    EXPECT_LT(rowsOf(one, "horizon").at(0).at("settled").get<int>(),
              rowsOf(track(), "horizon").at(0).at("settled").get<int>());
    EXPECT_EQ(run({"track", file, "--unit", "NO-01"}).exitCode, exitDataSayNo);
}

TEST_F(TrackCommand, AsATableAndAsCsvItBeginsWithTheVerdict)
{
    const Said table = run({"track", file, "--on", "2026-11-20"});
    EXPECT_EQ(table.exitCode, exitDone);
    EXPECT_NE(table.out.find("verdict"), std::string::npos);
    const Said csv = run({"track", file, "--on", "2026-11-20", "--as", "csv"});
    EXPECT_EQ(csv.out.rfind("of,forecasts,verdict,horizon_months,", 0), 0U);
}

TEST_F(TrackCommand, BeforeAnythingWasKeptItSaysSo)
{
    const Said said = run({"track", file, "--on", "2000-01-01", "--as", "json"});
    const json rows = json::parse(said.out);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows.at(0).at("says"), "No forecasts are kept yet: from now on they are, each time a visit is closed.");
}

} // namespace padside::test
