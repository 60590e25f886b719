// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/kept_forecast.h"

#include <functional>
#include <vector>

namespace padside {

class Connection;

/// The forecasts kept when visits were closed (VisitBook::close writes them). All functions throw StoreError.
class ForecastBook
{
public:
    explicit ForecastBook(Connection& connection);

    /// Of one unit, oldest visit first.
    [[nodiscard]] std::vector<KeptForecast> of(UnitId unit) const;
    /// Calls `take` for every forecast of the file, unit by unit, oldest visit first.
    void all(const std::function<void(const KeptForecast&)>& take) const;

private:
    Connection& m_connection;
};

} // namespace padside
