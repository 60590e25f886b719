// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/wall_readings.h"

#include "core/corrosion/inspection_interval.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double mostWallYears = 1000; // of readings, and of what is said about their future

TwoPointRate rateBetween(const WallReading& earlier, const WallReading& later, double gaugeErrorM)
{
    const double years = later.years - earlier.years;
    const double lossM = earlier.thicknessM - later.thicknessM;
    // A difference of decimal fractions misses its mark by an attometre or so: that decides nothing.
    constexpr double hairM = 1e-12;
    const double leastM = std::max(2 * gaugeErrorM - hairM, hairM);
    TwoPointRate rate;
    rate.measurable = lossM >= leastM;
    rate.grew = -lossM >= leastM;
    rate.mPerYear = rate.measurable ? lossM / years : 0;
    rate.errorMPerYear = std::sqrt(2.0) * gaugeErrorM / years;
    return rate;
}

std::optional<Problem> whatIsWrong(std::span<const WallReading> readings, const WallRule& rule)
{
    const auto bad = [](std::string pattern) { return problem(ProblemKind::badInput, std::move(pattern)).value(); };
    if (readings.empty())
        return bad(PADSIDE_SAY("There is no wall reading. Add at least one."));
    const auto isLength = [](double lengthM) { return lengthM >= 0 && std::isfinite(lengthM); };
    if (!isLength(rule.requiredM) || !isLength(rule.gaugeErrorM))
        return bad(PADSIDE_SAY("The wall required and the error of the gauge can't be less than nothing."));
    for (const WallReading& reading : readings) {
        if (!(reading.thicknessM > 0 && std::isfinite(reading.thicknessM)))
            return bad(PADSIDE_SAY("A wall reading must be thicker than nothing. Check the readings."));
    }
    const auto notLater = [](const WallReading& one, const WallReading& next) { return !(next.years > one.years); };
    if (std::ranges::adjacent_find(readings, notLater) != readings.end())
        return bad(PADSIDE_SAY("Two wall readings are of the same day, or not in order. Keep one for each day, the "
                               "earliest first."));
    if (!(readings.back().years - readings.front().years <= mostWallYears))
        return bad(PADSIDE_SAY("The wall readings lie more than a thousand years apart. Check their dates."));
    return std::nullopt;
}

/// The fastest loss that two readings twice the gauge's error apart could still hide.
double hiddenRate(const WallReading& first, const WallReading& last, double gaugeErrorM)
{
    return 2 * gaugeErrorM / (last.years - first.years);
}

Sentence saidOf(const WallOutlook& outlook, double requiredM)
{
    const Amount wall{outlook.thicknessM, QuantityKind::length};
    const Amount required{requiredM, QuantityKind::length};
    if (outlook.thicknessM <= requiredM)
        return {PADSIDE_SAY("The wall, {0}, is not more than the {1} that must be left: a replacement, not a paint, "
                            "decision. Have it judged by a licensed technician before it runs on."),
                {wall, required}};
    if (!outlook.longTerm)
        return {PADSIDE_SAY("One reading says how thick the wall is, not how fast it goes. Measure the same spot "
                            "again."),
                {}};
    if (outlook.remainingYears)
        return {PADSIDE_SAY("The wall reaches the {0} that must be left in about {1} years, at {2} mm a year."),
                {required, Number{*outlook.remainingYears, 1}, Number{outlook.ratePerYearM * 1e3, 3}}};
    if (outlook.longTerm->grew || outlook.shortTerm->grew)
        return {PADSIDE_SAY("The wall reads thicker than before, which no wall does: paint under the probe, another "
                            "spot, or another gauge. No loss can be read from this. Measure the bare spot again."),
                {}};
    return {PADSIDE_SAY("No measurable loss: the readings lie closer together than the gauge can tell apart. That is "
                        "not forever; measure again."),
            {}};
}

} // namespace

double remainingLifeYears(double thicknessM, double requiredM, double ratePerYearM)
{
    return std::max(0.0, (thicknessM - requiredM) / ratePerYearM);
}

Result<WallOutlook> wallOutlook(std::span<const WallReading> readings, const WallRule& rule)
{
    if (auto wrong = whatIsWrong(readings, rule))
        return tl::unexpected(*std::move(wrong));
    const WallReading& last = readings.back();
    WallOutlook outlook;
    outlook.thicknessM = last.thicknessM;
    if (readings.size() > 1) {
        outlook.longTerm = rateBetween(readings.front(), last, rule.gaugeErrorM);
        outlook.shortTerm = rateBetween(readings[readings.size() - 2], last, rule.gaugeErrorM);
        outlook.ratePerYearM = std::max(outlook.longTerm->mPerYear, outlook.shortTerm->mPerYear);
    }
    const auto yearsAt = [&](double ratePerYearM) {
        return std::min(remainingLifeYears(last.thicknessM, rule.requiredM, ratePerYearM), mostWallYears);
    };
    if (last.thicknessM <= rule.requiredM)
        outlook.remainingYears = 0;
    else if (outlook.ratePerYearM > 0)
        outlook.remainingYears = yearsAt(outlook.ratePerYearM);
    outlook.atLeastYears = outlook.remainingYears;
    if (!outlook.remainingYears && outlook.longTerm) {
        const double hidden = hiddenRate(readings.front(), last, rule.gaugeErrorM);
        outlook.atLeastYears = hidden > 0 ? yearsAt(hidden) : mostWallYears;
    }
    // Nothing known of the rate: the common practice of a year, so that there is a second reading.
    outlook.nextIntervalYears = outlook.atLeastYears ? vesselInterval(*outlook.atLeastYears) : 1;
    outlook.said = saidOf(outlook, rule.requiredM);
    return outlook;
}

double wallAtDeepestPitM(double thicknessM, double meanLossM, double pittingFactor)
{
    return std::max(0.0, thicknessM - pittingFactor * meanLossM);
}

} // namespace padside
