// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/leading_outlook.h"

namespace padside {

namespace {

Sentence reasonOf(const MeasuredOutlook& measured)
{
    if (measured.by == OutlookBy::wall) {
        const auto length = [](double metres) { return Amount{metres, QuantityKind::length}; };
        if (measured.left <= 0)
            return {PADSIDE_SAY("The wall measured leads: {0} on {1}, and {2} must be left."),
                    {length(measured.last), measured.lastOn, length(measured.limit)}};
        return {PADSIDE_SAY("The wall measured leads: {0} on {1}, {2} must be left, and it loses {3} ± {4} a year."),
                {length(measured.last), measured.lastOn, length(measured.limit), length(measured.perYear),
                 length(measured.errorPerYear)}};
    }
    const auto share = [](double one) { return Amount{one, QuantityKind::ratio}; };
    if (measured.left <= 0)
        return {PADSIDE_SAY("The rusted share measured leads: {0} on {1}; from {2} on the zone counts as spent."),
                {share(measured.last), measured.lastOn, share(measured.limit)}};
    return {PADSIDE_SAY("The rusted share measured leads: {0} on {1}, {3} ± {4} more a year; from {2} on the zone "
                        "counts as spent."),
            {share(measured.last), measured.lastOn, share(measured.limit), share(measured.perYear),
             share(measured.errorPerYear)}};
}

/// What does not lead, in a sentence: it would take longer.
Sentence besideOf(OutlookBy by, const SpentDates& dates)
{
    const Word what{std::string(wordOf(by))};
    if (!dates.early)
        return {PADSIDE_SAY("By {0} alone it would be spent much later."), {what}};
    if (!dates.middle)
        return {PADSIDE_SAY("By {0} alone it would be spent from {1} on (10 %)."), {what, *dates.early}};
    return {PADSIDE_SAY("By {0} alone it would be spent from {1} on (10 %), in the middle by {2} (50 %)."),
            {what, *dates.early, *dates.middle}};
}

} // namespace

LeadingOutlook leadingOutlook(const ZoneForecast& forecast, std::span<const MeasuredOutlook> measured, Date today)
{
    LeadingOutlook leading;
    leading.partId = forecast.partId;
    leading.zoneId = forecast.zoneId;
    leading.chanceToday = leadingChance(forecast.chanceToday, forecast.zoneId, measured, today).chance;
    leading.spent = forecast.spent;
    for (ChanceBy& by : leading.spent)
        by.chance = leadingChance(by.chance, forecast.zoneId, measured, by.by).chance;
    leading.dates = forecast.dates;
    const MeasuredOutlook* leader = nullptr;
    for (const MeasuredOutlook& one : measured) {
        if (one.zoneId != forecast.zoneId)
            continue;
        if (isSooner(one.dates, leading.dates)) {
            leading.dates = one.dates;
            leader = &one;
        }
    }
    leading.by = leader != nullptr ? leader->by : OutlookBy::grades;
    leading.when = leader != nullptr ? whenSpent(leading.dates, today, forecast.furthest) : forecast.when;
    leading.because.push_back(leader != nullptr ? reasonOf(*leader) : forecast.because);
    if (leader != nullptr) {
        leading.because.push_back(besideOf(OutlookBy::grades, forecast.dates));
        leading.because.push_back(forecast.because);
    }
    for (const MeasuredOutlook& one : measured) {
        if (one.zoneId == forecast.zoneId && &one != leader)
            leading.because.push_back(besideOf(one.by, one.dates));
    }
    leading.because.insert(leading.because.end(), forecast.notes.begin(), forecast.notes.end());
    return leading;
}

} // namespace padside
