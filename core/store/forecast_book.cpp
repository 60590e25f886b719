// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/forecast_book.h"

#include "core/store/rows.h"
#include "core/store/statement_text.h"

namespace padside {

namespace {

const std::string forecastsOfUnit
    = selectText(forecastColumns, "forecast WHERE unit_id = ? ORDER BY visited_on, visit_id, zone_id");
const std::string allForecasts
    = selectText(forecastColumns, "forecast ORDER BY unit_id, visited_on, visit_id, zone_id");

} // namespace

ForecastBook::ForecastBook(Connection& connection)
    : m_connection(connection)
{
}

std::vector<KeptForecast> ForecastBook::of(UnitId unit) const
{
    std::vector<KeptForecast> forecasts;
    Cursor row(m_connection, forecastsOfUnit);
    row.bind(1, unit);
    while (row.next())
        forecasts.push_back(readForecast(row));
    return forecasts;
}

void ForecastBook::all(const std::function<void(const KeptForecast&)>& take) const
{
    Cursor row(m_connection, allForecasts);
    while (row.next())
        take(readForecast(row));
}

} // namespace padside
