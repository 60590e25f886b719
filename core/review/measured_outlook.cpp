// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/measured_outlook.h"

#include "core/quantity/date.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace padside {

namespace {

constexpr double normalOf90 = 1.2815515655446004; ///< quantile of the standard normal distribution at 90 %
constexpr double normalOf975 = 1.959963984540054; ///< at 97.5 %: half of a 95 % interval

Date dayOfNumber(double number)
{
    return Date(std::chrono::days(static_cast<int>(std::floor(number))));
}

/// The day on which this rate reaches the limit.
std::optional<Date> dayAt(const MeasuredOutlook& measured, double perYear, Date today, Date furthest)
{
    if (measured.left <= 0)
        return today;
    if (perYear <= 0)
        return std::nullopt;
    const double day
        = static_cast<double>(measured.lastOn.time_since_epoch().count()) + measured.left / perYear * daysInAYear;
    if (day > static_cast<double>(furthest.time_since_epoch().count()))
        return std::nullopt;
    return std::max(today, dayOfNumber(day));
}

/// The rate that counts for a wall, as its outlook has it; false where nothing can be told.
bool takeWall(MeasuredOutlook& measured, const ZoneMeasure& measure)
{
    if (!measure.wall || !measure.wallAsked)
        return false;
    const WallOutlook& wall = *measure.wall;
    measured.by = OutlookBy::wall;
    measured.limit = measure.wallAsked->metres;
    measured.left = std::max(0.0, wall.thicknessM - measured.limit);
    if (!wall.longTerm || !wall.shortTerm)
        return measured.left <= 0;
    const TwoPointRate& rate = wall.shortTerm->mPerYear > wall.longTerm->mPerYear ? *wall.shortTerm : *wall.longTerm;
    measured.perYear = wall.ratePerYearM;
    measured.errorPerYear = rate.errorMPerYear;
    // A wall that reads thicker than before says nothing of its loss.
    return measured.left <= 0 || measured.perYear > 0 || !(wall.longTerm->grew || wall.shortTerm->grew);
}

bool takeRust(MeasuredOutlook& measured, const ZoneMeasure& measure, const Catalogue& catalogue)
{
    measured.by = OutlookBy::rust;
    measured.limit = catalogue.assumption("rust-spent-share");
    measured.left = std::max(0.0, measured.limit - measured.last);
    if (!measure.summary.trend)
        return measured.left <= 0;
    const TheilSen& trend = *measure.summary.trend;
    measured.perYear = trend.slope * daysInAYear;
    measured.errorPerYear = (trend.high95 - trend.low95) / (2 * normalOf975) * daysInAYear;
    return true;
}

} // namespace

double MeasuredOutlook::chanceBy(Date day) const
{
    if (left <= 0)
        return 1;
    const double years = static_cast<double>((day - lastOn).count()) / daysInAYear;
    if (years <= 0)
        return 0;
    const double above = perYear - left / years;
    if (errorPerYear <= 0)
        return above >= 0 ? 1 : 0;
    return std::erfc(-above / errorPerYear / std::sqrt(2.0)) / 2;
}

LeadingChance leadingChance(double byGrades, ZoneId zone, std::span<const MeasuredOutlook> measured, Date day)
{
    LeadingChance leads{byGrades, OutlookBy::grades};
    for (const MeasuredOutlook& one : measured) {
        if (one.zoneId != zone)
            continue;
        if (const double chance = one.chanceBy(day); chance > leads.chance)
            leads = {chance, one.by};
    }
    return leads;
}

std::optional<MeasuredOutlook> measuredOutlook(const ZoneMeasure& measure, const Catalogue& catalogue, Date today,
                                               Date furthest)
{
    MeasuredOutlook measured;
    measured.zoneId = measure.zoneId;
    measured.last = measure.points.back().value;
    measured.lastOn = dayOfNumber(measure.points.back().time);
    const bool told = measure.readingKind == "wall-thickness" ? takeWall(measured, measure)
        : measure.readingKind == "rust-share"                 ? takeRust(measured, measure, catalogue)
                                                              : false;
    if (!told)
        return std::nullopt;
    const double spread = normalOf90 * measured.errorPerYear;
    measured.dates = {dayAt(measured, measured.perYear + spread, today, furthest),
                      dayAt(measured, measured.perYear, today, furthest),
                      dayAt(measured, measured.perYear - spread, today, furthest)};
    return measured;
}

std::vector<MeasuredOutlook> measuredOutlooks(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    const Date furthest = furthestTold(catalogue.outlook(), today);
    std::vector<MeasuredOutlook> all;
    for (const ZoneMeasure& measure : zoneMeasures(record, catalogue)) {
        if (const auto one = measuredOutlook(measure, catalogue, today, furthest))
            all.push_back(*one);
    }
    return all;
}

} // namespace padside
