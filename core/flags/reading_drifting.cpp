// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/last_readings.h"
#include "core/flags/rules.h"
#include "core/quantity/date.h"
#include "core/trend/crossing.h"
#include "core/trend/reading_series.h"
#include "core/trend/series_summary.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

constexpr double daysPerMonth = daysInAYear / 12;

/// What wears in one direction; air and pressures go up and down with the day.
constexpr std::array<std::string_view, 4> wearing{"capacitor-compressor", "capacitor-fan", "insulation-resistance",
                                                  "contactor-volt-drop"};

/// The bound the trend runs towards, if the verdict has one there.
std::optional<std::pair<double, LimitSide>> limitAhead(const Verdict& verdict, double slope)
{
    if (slope < 0 && verdict.lowest)
        return std::pair{verdict.lowest->si, LimitSide::lowest};
    if (slope > 0 && verdict.highest)
        return std::pair{verdict.highest->si, LimitSide::highest};
    return std::nullopt;
}

} // namespace

std::vector<Worry> readingDrifting(const UnitView& unit)
{
    std::vector<Worry> worries;
    const double ahead = unit.catalogue.assumption("drift-months") * daysPerMonth;
    for (const std::string_view kind : wearing) {
        const auto last = lastReadings(unit, std::string(kind));
        if (!last)
            continue;
        for (const Verdict& verdict : last->verdicts) {
            if (verdict.code != kind || verdict.judgement != Judgement::within)
                continue;
            const SeriesKey key{std::string(kind), verdict.partId, std::nullopt};
            const SeriesSummary summary
                = summariseSeries(seriesSinceReset(unit.record, key, std::array{TreatmentKind::replace}));
            if (!summary.trend)
                continue;
            const auto limit = limitAhead(verdict, summary.trend->slope);
            const auto crossing = limit ? crossingOf(*summary.trend, limit->first, limit->second).best : std::nullopt;
            const auto today = static_cast<double>(unit.today.time_since_epoch().count());
            if (!crossing || *crossing > today + ahead)
                continue;
            Worry worry;
            worry.severity = Severity::look;
            const Date when{std::chrono::days(static_cast<int>(std::max(*crossing, today)))};
            worry.sentence = {PADSIDE_SAY("{0} {1}, drifting: it passes its limit of {2} about {3}."),
                              {verdict.sentence.arguments.front(), *verdict.value,
                               Amount{limit->first, verdict.value->kind}, when}}; // its name stands first
            worry.clears = {PADSIDE_SAY("The part replaced, or a reading that no longer drifts."), {}};
            worry.partId = verdict.partId;
            worry.aspect = verdict.code;
            worry.readings = readingsBehind(unit, *last->visit, verdict);
            worries.push_back(std::move(worry));
        }
    }
    return worries;
}

} // namespace padside
