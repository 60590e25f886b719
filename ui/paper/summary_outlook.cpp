// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What is expected, next checks, cautions.

#include "core/quantity/chance_words.h"
#include "ui/paper/cautions_table.h"
#include "ui/paper/visit_summary_content.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

QString conditionWords(const SummaryView& view, const Check& check)
{
    QStringList words;
    for (const Condition condition : check.conditions)
        words << view.words.word(wordOf(condition));
    return words.join(QStringLiteral(", "));
}

/// The window of a check; one that is over on the day of the review is said to be overdue, not offered as a date.
QString whenWords(const SummaryView& view, const Check& check)
{
    QString latest = view.words.day(check.latest);
    if (check.latest < view.input.review.today)
        return SummaryText::tr("Overdue since %1").arg(latest);
    if (check.earliest == check.latest)
        return latest;
    return SummaryText::tr("%1 to %2").arg(view.words.day(check.earliest), latest);
}

/// Codes of the cautions that belong beside what was worked on.
std::vector<std::string> workedOnCautions(const SummaryView& view)
{
    std::vector<PartId> parts = view.changes.partsFitted;
    for (const Treatment& treatment : view.changes.treatments)
        parts.push_back(treatment.partId);
    std::vector<std::string> codes;
    if (std::ranges::count(view.changes.treatments, TreatmentKind::brushAndCoat, &Treatment::kind) > 0)
        codes.emplace_back("chemicals");
    for (const PartId id : parts) {
        const Part* part = findPart(view.input.record, id);
        const PartKind* kind = part ? view.input.catalogue.partKind(part->kind) : nullptr;
        if (kind)
            codes.insert(codes.end(), kind->cautions.begin(), kind->cautions.end());
    }
    return codes;
}

constexpr auto oneYear = static_cast<std::size_t>(Horizon::oneYear);
constexpr std::size_t mostExpected = 3;
constexpr double leastChanceTold = 0.02;
constexpr double daysPerYear = 365.2425;
constexpr double leastYears = 4; ///< drawn
constexpr double mostYears = 10;

double yearsTo(Date from, Date to)
{
    return static_cast<double>((to - from).count()) / daysPerYear;
}

/// The likeliest zone of each part, likeliest part first.
std::vector<const LeadingOutlook*> likeliestParts(const UnitForecast& forecast)
{
    std::vector<const LeadingOutlook*> parts;
    for (const LeadingOutlook& zone : forecast.leading) {
        const bool told
            = std::ranges::any_of(parts, [&](const LeadingOutlook* one) { return one->partId == zone.partId; });
        if (!told && zone.spent[oneYear].chance >= leastChanceTold)
            parts.push_back(&zone);
        if (parts.size() == mostExpected)
            break;
    }
    return parts;
}

/// Chances by the years from now, from all days for which one is known.
std::vector<std::pair<double, double>> chancesOf(const LeadingOutlook& zone, Date today)
{
    std::vector<std::pair<double, double>> chances{{0.0, 0.0}};
    for (const ChanceBy& by : zone.spent)
        chances.emplace_back(yearsTo(today, by.by), by.chance);
    const auto add = [&](const std::optional<Date>& day, double chance) {
        if (day)
            chances.emplace_back(yearsTo(today, *day), chance);
    };
    add(zone.dates.early, 0.1);
    add(zone.dates.middle, 0.5);
    add(zone.dates.late, 0.9);
    std::ranges::sort(chances);
    double before = 0; // the dates are the leader's, the chances the greatest of all: neither may make it look better
    for (auto& [years, chance] : chances) {
        chance = std::max(before, chance);
        before = chance;
    }
    return chances;
}

/// A range a customer can plan with: years, not days.
QString yearsWords(const SpentDates& dates, Date today)
{
    if (dates.late == today)
        return SummaryText::tr("now");
    if (!dates.early)
        return SummaryText::tr("far ahead");
    const QString early = QString::number(yearOf(*dates.early));
    if (!dates.late)
        return SummaryText::tr("%1 or later", "a year").arg(early);
    const QString late = QString::number(yearOf(*dates.late));
    if (early == late)
        return SummaryText::tr("in %1", "a year").arg(early);
    return SummaryText::tr("%1 to %2", "years").arg(early, late);
}

} // namespace

OutlookBlock outlookSection(const SummaryView& view)
{
    const UnitForecast& forecast = view.input.forecast;
    OutlookBlock block;
    if (forecast.leading.empty())
        return block;
    const Date today = forecast.today;
    block.heading = SummaryText::tr("What to expect");
    block.firstYear = yearOf(today);
    block.yearGone = yearsTo(std::chrono::year(block.firstYear) / std::chrono::January / 1, today);
    double last = leastYears; // a strip that is dark from its beginning tells nothing
    for (const LeadingOutlook* zone : likeliestParts(forecast)) {
        ExpectedPart part;
        part.name = view.words.part(zone->partId);
        part.chance = view.words.said(chanceWords(zone->spent[oneYear].chance));
        part.dates = yearsWords(zone->dates, today);
        part.chances = chancesOf(*zone, today);
        if (zone->dates.middle)
            part.middle = yearsTo(today, *zone->dates.middle);
        block.parts.push_back(std::move(part));
        last = std::max(last, zone->dates.late ? yearsTo(today, *zone->dates.late) : mostYears);
    }
    block.years = static_cast<int>(std::ceil(std::min(last, mostYears)));
    if (block.parts.empty()) {
        block.text = SummaryText::tr("No part is likely to give out within a year: for each the chance is below %1.")
                         .arg(view.words.said(chanceWords(leastChanceTold)));
        return block;
    }
    block.text
        = SummaryText::tr("Likeliest to give out first, with the chance of it within a year. The darker the strip, "
                          "the likelier it has happened by then; the line marks an even chance. Ranges drawn from "
                          "what was seen and measured, no promise.");
    return block;
}

TableBlock nextChecksSection(const SummaryView& view)
{
    // Paper names what comes first; the whole list is a page of its own in the program.
    constexpr std::size_t mostChecks = 5;
    TableBlock table;
    table.heading = SummaryText::tr("Next checks");
    table.columns = {{SummaryText::tr("What and why"), 2.1, false}, {SummaryText::tr("When"), 1, false}};
    const ToldFlags flags = toldFlags(view);
    const auto& checks = view.input.review.checks; // by latest date
    for (std::size_t i = 0; i < std::min(checks.size(), mostChecks); ++i) {
        const Check& check = checks[i];
        const bool isFlagged = check.zoneId && flags.hasZone(*check.zoneId); // its flag has said why
        table.rows.push_back(
            {PaperCell{view.words.said(check.what), isFlagged ? QString() : view.words.said(check.why)},
             PaperCell{whenWords(view, check), capitalised(conditionWords(view, check)), {}, false}});
    }
    if (checks.size() > mostChecks)
        table.closing = SummaryText::tr("Later checks in the record: %1.").arg(checks.size() - mostChecks);
    return table;
}

TableBlock cautionsSection(const SummaryView& view)
{
    return cautionsTable(view.input.catalogue, view.input.speaker, workedOnCautions(view));
}

} // namespace padside
