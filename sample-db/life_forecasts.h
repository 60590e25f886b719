// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/outlook_model.h"
#include "core/record/kept_forecast.h"
#include "sample-db/unit_life.h"

#include <optional>
#include <vector>

namespace padside {

/// What the town's forecasts rest on: our assumptions, until its own lessons were accepted.
class ForecastModels
{
public:
    ForecastModels(const Catalogue& catalogue, std::optional<Date> learntOn);
    [[nodiscard]] const OutlookModel& on(Date day) const
    {
        return m_learntOn && day >= *m_learntOn ? m_learnt : m_ours;
    }

private:
    OutlookModel m_ours;
    OutlookModel m_learnt;
    std::optional<Date> m_learntOn;
};

/// What was foretold at the closing of each visit, in the order of `life.record.visits`; nothing for an open one. Only
/// what was entered by then counts: neither later visits nor later corrections.
[[nodiscard]] std::vector<std::vector<KeptForecast>> lifeForecasts(const UnitLife& life, const Catalogue& catalogue,
                                                                   const ForecastModels& models);

} // namespace padside
