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

enum class TrackVerdictKind { nothingKept, nothingDue, tooFew, trusted, noSharper, tooGloomy, tooHopeful };

[[nodiscard]] constexpr auto codesOf(TrackVerdictKind)
{
    using enum TrackVerdictKind;
    return std::array{Coded<TrackVerdictKind>{nothingKept, "nothing-kept", "nothing kept yet"},
                      Coded<TrackVerdictKind>{nothingDue, "nothing-due", "nothing due yet"},
                      Coded<TrackVerdictKind>{tooFew, "too-few", "too few to say"},
                      Coded<TrackVerdictKind>{trusted, "trusted", "can be trusted so far"},
                      Coded<TrackVerdictKind>{noSharper, "no-sharper", "no better than the plain share"},
                      Coded<TrackVerdictKind>{tooGloomy, "too-gloomy", "too gloomy"},
                      Coded<TrackVerdictKind>{tooHopeful, "too-hopeful", "too hopeful"}};
}

/// What the scores come to.
struct TrackVerdict
{
    TrackVerdictKind kind = TrackVerdictKind::nothingKept;
    std::optional<std::size_t> horizon; ///< the one it rests on
    Sentence sentence;
    std::vector<Sentence> reasons;
};

/// From how many forecasts on a verdict is given, and when it is a bad one; ours (`assumptions`).
struct TrackLimits
{
    double leastSettled = 0;
    double leastZones = 0;
    double mostErrors = 0; ///< standard errors between what came and what was expected

    [[nodiscard]] static TrackLimits of(const Catalogue& catalogue);
};

/// All that old forecasts held against what then happened come to.
struct TrackSummary
{
    std::size_t forecasts = 0; ///< that were held against the record
    std::optional<Date> keptSince; ///< the day of the oldest
    std::optional<Date> nextDue; ///< the first day after today on which one comes due
    std::array<Scores, horizonCount> horizons;
    RangeCoverage range;
    std::array<RangeEnd, 3> ends;
    std::vector<Miss> misses; ///< one for each zone at most, the largest first
    TrackVerdict verdict;
};

/// Gathers the forecasts of all units, one unit after the other; what is kept of them does not grow with their number.
class TrackRecord
{
public:
    explicit TrackRecord(std::size_t mostMisses = 20);

    /// Holds a unit's forecasts against its record (see holdForecasts()); each unit once.
    void add(const UnitRecord& record, std::span<const KeptForecast> forecasts, const Catalogue& catalogue, Date today);

    [[nodiscard]] TrackSummary summary(const TrackLimits& limits) const;

private:
    void addZone(std::span<const HeldForecast> zone);
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
