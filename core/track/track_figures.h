// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/track/held_forecast.h"
#include "core/track/score.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// A forecast that leaned the wrong way.
struct Miss
{
    UnitId unitId;
    std::string tag;
    PartId partId;
    ZoneId zoneId;
    Date on{}; ///< when it was said
    std::size_t horizon = 0;
    double chance = 0; ///< that was said
    bool spent = false; ///< what came
    Date toldOn{}; ///< found spent on that day, or last seen not spent
    Sentence sentence; ///< "Fan motor, bearings: 4 % within one year, said on …; found spent on …."

    /// How far what was said lies from what came, 0..1.
    [[nodiscard]] double size() const { return spent ? 1 - chance : chance; }
};

/// What became of the ranges of dates (10 to 90 %) whose later end is past. The day a zone was spent lies between the
/// last visit that saw it not spent and the first that found it spent; where an end of the range lies between the two
/// as well, nobody can tell on which side it fell.
struct RangeCoverage
{
    std::size_t inside = 0; ///< spent within the range
    std::size_t before = 0; ///< found spent by its earlier end
    std::size_t after = 0; ///< not spent yet at its later end
    std::size_t untold = 0; ///< an end lies between two visits, or the zone was made good, replaced or retired before
    std::size_t waiting = 0; ///< the later end is to come, or not seen since; ranges without a later end too

    [[nodiscard]] std::size_t settled() const { return inside + before + after; }
};

/// The same, end by end: known sooner than the whole range.
struct RangeEnd
{
    double chance = 0; ///< .1, .5 or .9
    Scores scores; ///< of "spent by that day"
};

/// What some forecasts, held against what then happened, come to.
struct TrackFigures
{
    std::size_t forecasts = 0; ///< that were held against the record
    std::optional<Date> keptSince; ///< the day of the oldest
    std::optional<Date> nextDue; ///< the first day after today on which one comes due
    std::array<Scores, horizonCount> horizons;
    RangeCoverage range;
    std::array<RangeEnd, 3> ends;
    std::vector<Miss> misses; ///< one for each zone at most, the largest first
};

/// Adds forecasts up, one zone after the other; what is kept of them does not grow with their number.
class TrackTally
{
public:
    explicit TrackTally(std::size_t mostMisses);

    /// Takes forecasts of one zone, each once; none is nothing.
    void addZone(std::span<const HeldForecast> zone, const UnitRecord& record, const Catalogue& catalogue);

    [[nodiscard]] TrackFigures figures() const;

private:
    void addRange(const HeldForecast& held);
    void noteMiss(std::span<const HeldForecast> zone, const UnitRecord& record, const Catalogue& catalogue);

    std::size_t m_mostMisses;
    std::size_t m_forecasts = 0;
    std::optional<Date> m_keptSince;
    std::optional<Date> m_nextDue;
    std::array<ScoreSheet, horizonCount> m_horizons;
    std::array<ScoreSheet, 3> m_ends;
    RangeCoverage m_range;
    std::vector<Miss> m_misses;
};

} // namespace padside
