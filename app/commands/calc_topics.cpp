// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc_topics.h"

#include "core/exchange/text_file.h"
#include "core/exchange/trend_file.h"
#include "core/exchange/windows_file.h"
#include "core/store/store_error.h"
#include "core/trend/series_summary.h"

namespace padside {

namespace {

/// What a Result holds, or its problem thrown to the one place where a command's problems are said.
template <typename T> T orThrow(Result<T> result)
{
    if (!result)
        throw StoreError(result.error());
    return *std::move(result);
}

template <typename T> nlohmann::ordered_json orNull(const std::optional<T>& value)
{
    return value ? nlohmann::ordered_json(*value) : nlohmann::ordered_json(nullptr);
}

} // namespace

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

} // namespace padside
