// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/life_forecasts.h"

#include "core/review/kept_forecasts.h"
#include "sample-db/sample_lessons.h"

#include <algorithm>
#include <future>
#include <thread>

namespace padside {

namespace {

UnitRecord asKnownAt(const UnitRecord& record, const Instant& closing)
{
    UnitRecord known = record;
    std::erase_if(known.findings,
                  [&](const Finding& finding) { return finding.correction && finding.enteredAt.utc > closing.utc; });
    return known;
}

} // namespace

ForecastModels::ForecastModels(const Catalogue& catalogue, std::optional<Date> learntOn)
    : m_ours(catalogue, LearntFigures::leftOut)
    , m_learnt(m_ours)
    , m_learntOn(learntOn)
{
    if (m_learntOn)
        useLessons(m_learnt, catalogue);
}

std::vector<std::vector<KeptForecast>> lifeForecasts(const UnitLife& life, const Catalogue& catalogue,
                                                     const ForecastModels& models)
{
    UnitRecord record = life.record;
    record.photos.clear(); // they say nothing of the outlook
    record.readings.clear();
    const std::vector<Visit>& visits = record.visits;
    std::vector<std::vector<KeptForecast>> all(visits.size());
    const std::size_t workers = std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, 8);
    std::vector<std::future<void>> running;
    for (std::size_t worker = 0; worker < workers; ++worker) {
        running.push_back(std::async(std::launch::async, [&, worker] {
            for (std::size_t i = worker; i < visits.size(); i += workers) {
                if (visits[i].closedAt)
                    all[i] = keptForecasts(asKnownAt(record, *visits[i].closedAt), catalogue, models.on(visits[i].on),
                                           visits[i].id);
            }
        }));
    }
    for (std::future<void>& one : running)
        one.get();
    return all;
}

} // namespace padside
