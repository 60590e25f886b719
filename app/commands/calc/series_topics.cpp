// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/calc/topics.h"
#include "core/exchange/text_file.h"
#include "core/exchange/trend_file.h"
#include "core/exchange/windows_file.h"
#include "core/trend/series_summary.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

/// n, S, varS, Z, p, slope_per_day, low95, high95 of the series in `file`; below four points the trend keys are null
/// and `note` says why. Limits by interpolated ranks (Gilbert 1987, p. 218).
nlohmann::ordered_json trendAnswer(const std::string& file)
{
    const auto points = orThrow(readTrendFile(orThrow(readTextFile(file)), file));
    const SeriesSummary summary = summariseSeries(points);
    nlohmann::ordered_json answer{{"n", summary.n}};
    const auto& test = summary.test;
    answer["S"] = test ? nlohmann::ordered_json(test->s) : nullptr;
    answer["varS"] = test ? nlohmann::ordered_json(test->varianceS) : nullptr;
    answer["Z"] = test ? nlohmann::ordered_json(test->z) : nullptr;
    answer["p"] = test ? nlohmann::ordered_json(test->p) : nullptr;
    const auto& trend = summary.trend;
    answer["slope_per_day"] = trend ? nlohmann::ordered_json(trend->slope) : nullptr;
    answer["low95"] = trend ? nlohmann::ordered_json(trend->low95) : nullptr;
    answer["high95"] = trend ? nlohmann::ordered_json(trend->high95) : nullptr;
    answer["slope_per_year"] = orNull(summary.ratePerYear);
    answer["intercept"] = trend ? nlohmann::ordered_json(trend->intercept) : nullptr;
    answer["last_delta"] = orNull(summary.lastDelta);
    answer["last_rate_per_year"] = orNull(summary.lastRatePerYear);
    if (summary.whyNoTrend)
        answer["note"] = say(*summary.whyNoTrend);
    return answer;
}

/// visits (how many) and days (when, unit after unit) that meet the windows in `file`; windows of one unit are met
/// together, and those without a unit are one line of their own.
nlohmann::ordered_json tripsAnswer(const std::string& file)
{
    const WindowsFile windows = orThrow(readWindowsFile(orThrow(readTextFile(file)), file));
    auto days = nlohmann::ordered_json::array();
    auto byUnit = nlohmann::ordered_json::object();
    for (const TripGroup& group : fewestTripsByGroup(windows.windows, windows.units)) {
        auto daysOfUnit = nlohmann::ordered_json::array();
        for (const Trip& trip : group.trips)
            daysOfUnit.push_back(trip.on.time_since_epoch().count());
        days.insert(days.end(), daysOfUnit.begin(), daysOfUnit.end());
        byUnit[group.name] = std::move(daysOfUnit);
    }
    return {{"visits", days.size()}, {"days", days}, {"by_unit", byUnit}};
}

/// A topic that reads one file and answers one JSON object.
void addFileTopic(CLI::App& calc, const std::string& name, const std::string& about, Command& chosen,
                  nlohmann::ordered_json (*answerOf)(const std::string& file))
{
    const auto file = std::make_shared<std::string>();
    CLI::App* topic = addTopic(calc, chosen, name, about, [file, answerOf] { return answerOf(*file); });
    topic->add_option("file", *file, "comma-separated values with a line of column names")
        ->required()
        ->type_name("FILE.csv");
}

} // namespace

void addSeriesTopics(CLI::App& calc, Command& chosen)
{
    addFileTopic(calc, "trend", "Mann-Kendall test and Theil-Sen slope of a series (columns t_days, y)", chosen,
                 &trendAnswer);
    addFileTopic(calc, "trips", "Fewest visits that meet windows of whole days (columns id, unit, lo, hi)", chosen,
                 &tripsAnswer);
}

} // namespace padside
