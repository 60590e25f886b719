// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What comes next, and whether it is worth carrying on.

#include "core/quantity/chance_words.h"
#include "core/trend/zone_history.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/worth_bars.h"
#include "ui/paper/owner_history_content.h"
#include "ui/paper/type_setting.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr std::size_t mostPlaces = 6; ///< those likeliest to be spent; the program has all of them
constexpr std::size_t mostTurns = 3;
constexpr double noNews = 0.005; ///< a chance below it is no news

Mark knownMark(const OwnerView& view, ZoneId zone)
{
    const auto history = std::ranges::find(view.input.review.zones, zone, &ZoneHistory::zoneId);
    if (history == view.input.review.zones.end())
        return NoMark{};
    if (history->known)
        return history->known->grade;
    return history->notSeenSince ? Mark(NotSeenMark{}) : Mark(NoMark{});
}

/// "2027-03-01 to 2031-10-12"; the later end may lie beyond what is told.
QString rangeText(const OwnerView& view, const SpentDates& dates)
{
    if (!dates.early) {
        const Date furthest = furthestTold(view.input.catalogue.outlook(), view.input.forecast.today);
        return OwnerText::tr("not before %1").arg(view.words.day(furthest));
    }
    if (!dates.late)
        return OwnerText::tr("from %1 on").arg(view.words.day(*dates.early));
    return OwnerText::tr("%1 to %2").arg(view.words.day(*dates.early), view.words.day(*dates.late));
}

QString stopsText(const OwnerView& view)
{
    const UnitOutlook& unit = view.input.forecast.unit;
    if (unit.stops.size() <= static_cast<std::size_t>(Horizon::fiveYears))
        return {};
    const auto chance = [&](Horizon horizon) {
        return view.words.said(chanceWords(unit.stops[static_cast<std::size_t>(horizon)].chance));
    };
    return OwnerText::tr("That it stops for want of a part: %1 within a year, %2 within five, if nothing is done. ")
               .arg(chance(Horizon::oneYear), chance(Horizon::fiveYears))
        + view.words.said(unit.because);
}

TableBlock textTable(const QString& heading)
{
    return TableBlock{heading, {PaperColumn{}}, {}, {}};
}

void addText(TableBlock& table, const QString& text, bool strong = false)
{
    PaperCell cell;
    cell.text = text;
    cell.strong = strong;
    table.rows.push_back({std::move(cell)});
}

QString listOf(const OwnerView& view, const std::vector<NeededFigure>& figures)
{
    QStringList words;
    for (const NeededFigure& figure : figures)
        words << view.words.said(figure.what);
    return words.join(QStringLiteral("; "));
}

QString turnsText(const OwnerView& view)
{
    QStringList turns;
    for (const TurningPoint& point : view.input.worth.answer->turning) {
        if (static_cast<std::size_t>(turns.size()) == mostTurns)
            break;
        turns << view.words.said(turningSentence(point));
    }
    if (turns.isEmpty())
        return OwnerText::tr("No single assumption would turn this answer, even changed fourfold.");
    return OwnerText::tr("The answer would turn with any one of these: %1.").arg(turns.join(QStringLiteral("; ")));
}

DrawingBlock barsOf(const OwnerView& view)
{
    const CarryOnAnswer& answer = *view.input.worth.answer;
    const std::vector<WorthBar> bars{
        {OwnerText::tr("Carry on, a year"), answer.carryOnAYear, moneyText(view, answer.carryOnAYear)},
        {OwnerText::tr("Replace, a year"), answer.replaceAYear, moneyText(view, answer.replaceAYear)}};
    DrawingBlock block;
    block.heading = OwnerText::tr("What each comes to");
    block.lay = [bars](double) {
        return LaidDrawing{worthBarsHeight(bars.size(), QFontMetricsF(paperFont(Face::body)).height()),
                           [bars](QPainter& painter, const QSizeF& size) {
                               painter.setFont(paperFont(Face::body));
                               paintWorthBars(painter, QRectF(QPointF(0, 0), size), bars, Theme::print());
                           }};
    };
    block.under = OwnerText::tr("Expected costs of a year in the owner's own money, over the years compared: repairs, "
                                "and what else is given.");
    return block;
}

} // namespace

TableBlock comesNextSection(const OwnerView& view)
{
    TableBlock table;
    table.heading = OwnerText::tr("What comes next");
    table.columns = {{OwnerText::tr("Where and why"), 2.4, false},
                     {OwnerText::tr("Grade"), 1, true, true},
                     {OwnerText::tr("Spent within a year"), 0.8, false},
                     {OwnerText::tr("Spent between (10 % and 90 %)"), 1.25, false}};
    for (const LeadingOutlook& zone : view.input.forecast.leading) {
        if (table.rows.size() == mostPlaces || zone.spent[static_cast<std::size_t>(Horizon::fiveYears)].chance < noNews)
            break;
        PaperCell mark;
        mark.marks = {knownMark(view, zone.zoneId)};
        table.rows.push_back(
            {PaperCell{view.words.zone(zone.zoneId), view.words.said(zone.because.front())}, mark,
             PaperCell{view.words.said(chanceWords(zone.spent[static_cast<std::size_t>(Horizon::oneYear)].chance))},
             PaperCell{rangeText(view, zone.dates)}});
    }
    table.closing
        = table.rows.empty() ? OwnerText::tr("Nothing is likely to be spent within five years.") : stopsText(view);
    return table;
}

std::vector<PaperBlock> worthSections(const OwnerView& view)
{
    const UnitWorth& worth = view.input.worth;
    if (worth.parts.empty())
        return {};
    TableBlock table = textTable(OwnerText::tr("Carry on or replace"));
    std::vector<PaperBlock> blocks;
    if (!worth.answer) {
        addText(table,
                OwnerText::tr("Not reckoned: costs are not given. Needed: %1.")
                    .arg(worth.needed.empty() ? OwnerText::tr("the costs of at least one part")
                                              : listOf(view, worth.needed)));
        blocks.emplace_back(std::move(table));
        return blocks;
    }
    addText(table, view.words.said(worth.answer->said), true);
    if (!worth.shares.empty()) {
        addText(table,
                OwnerText::tr("Of the repairs to be expected, most is for this part: %1.")
                    .arg(view.words.part(worth.shares.front().partId)));
    }
    addText(table, turnsText(view));
    if (!worth.leftOut.empty())
        addText(table, OwnerText::tr("Not given, and left out: %1.").arg(listOf(view, worth.leftOut)));
    if (!worth.uncosted.empty()) {
        QStringList names;
        for (const PartId part : worth.uncosted)
            names << view.words.part(part);
        addText(
            table,
            OwnerText::tr("Failures not counted, for want of their costs: %1.").arg(names.join(QStringLiteral("; "))));
    }
    blocks.emplace_back(std::move(table));
    blocks.emplace_back(barsOf(view));
    return blocks;
}

} // namespace padside
