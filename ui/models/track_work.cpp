// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/track_work.h"

#include "core/outlook/ever_fitted.h"
#include "core/store/forecast_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"

namespace padside {

namespace {

constexpr double readingShare = 0.2; ///< of the work of learning; the rest is the ascent

} // namespace

std::optional<TrackSummary> gatherTrack(const LookBack& file, const LongWork::Tell& tell)
{
    const auto store = Store::open(file.path, Store::Access::readOnly);
    const std::vector<Unit> units = store->sites().units();
    TrackRecord track;
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (!tell(static_cast<double>(i) / static_cast<double>(units.size())))
            return std::nullopt;
        const std::vector<KeptForecast> forecasts = store->forecasts().of(units[i].id);
        if (!forecasts.empty())
            track.add(store->records().unitRecord(units[i].id), forecasts, file.catalogue, file.today);
    }
    return track.summary(TrackLimits::of(file.catalogue));
}

std::optional<std::vector<KindLesson>> learnLives(const LookBack& file, const LongWork::Tell& tell)
{
    const auto store = Store::open(file.path, Store::Access::readOnly);
    const std::vector<Unit> units = store->sites().units();
    RateLearner learner;
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (!tell(readingShare * static_cast<double>(i) / static_cast<double>(units.size())))
            return std::nullopt;
        learner.add(trailsOfEverFitted(store->records().unitRecord(units[i].id), file.catalogue, file.today));
    }
    const OutlookModel priors(file.catalogue, LearntFigures::leftOut);
    bool goOn = true;
    const auto learnt = learner.learn(priors, file.catalogue.outlook().learningSigma, [&](double share) {
        goOn = tell(readingShare + (1 - readingShare) * share);
        return goOn;
    });
    if (!goOn)
        return std::nullopt;
    return kindLessons(learnt, file.catalogue, priors, OutlookModel(file.catalogue));
}

} // namespace padside
