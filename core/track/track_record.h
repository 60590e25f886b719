// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/since_learning.h"

namespace padside {

/// All that old forecasts held against what then happened come to.
struct TrackSummary
{
    TrackFigures all;
    std::optional<SinceLearning> learning; ///< empty where no forecast was made before lives in use were learned
    TrackVerdict verdict; ///< on the forecasts made with the lives in use now
    std::vector<Sentence> beside; ///< what has to be said with the verdict

    /// Those made with the lives in use are all where nothing was learned, and none were made before.
    [[nodiscard]] const TrackFigures& of(ForecastSet set) const;
    /// What the verdict rests on.
    [[nodiscard]] ForecastSet judged() const { return learning ? ForecastSet::inUse : ForecastSet::all; }
};

/// Gathers the forecasts of all units, one unit after the other; what is kept of them does not grow with their number.
class TrackRecord
{
public:
    explicit TrackRecord(std::size_t mostMisses = 20);

    /// Holds a unit's forecasts against its record (see holdForecasts()); each unit once. Which lives are in use is the
    /// catalogue's; what was learned after `today` was not yet.
    void add(const UnitRecord& record, std::span<const KeptForecast> forecasts, const Catalogue& catalogue, Date today);

    [[nodiscard]] TrackSummary summary(const TrackLimits& limits) const;

private:
    void noteLearning(Date on); ///< of a kind with forecasts made before

    TrackTally m_all;
    TrackTally m_inUse;
    TrackTally m_before;
    std::optional<Date> m_firstLearntOn;
    std::optional<Date> m_lastLearntOn;
    bool m_someNeverLearnt = false;
};

} // namespace padside
