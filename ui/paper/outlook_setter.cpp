// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/outlook_setter.h"

#include "ui/drawing/theme.h"
#include "ui/paper/table_setter.h"
#include "ui/paper/type_setting.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double nameShare = 0.26; ///< of the width beside the heading
constexpr double chanceShare = 0.13; ///< "over 99 %" is to stand in it in every language
constexpr double datesShare = 0.17;
constexpr double outlookGap = 18; ///< between columns
constexpr double ruleToWords = 10;
constexpr double stripHeight = 20;
constexpr double markOver = 3; ///< of the line of an even chance, above and below the strip
constexpr double stripStep = 12; ///< width of one shade
constexpr double leastShade = 0.01; ///< chances below this leave the paper white

/// Straight between the chances that are known; the last one holds on.
double chanceAt(const std::vector<std::pair<double, double>>& chances, double years)
{
    const auto after
        = std::ranges::find_if(chances, [years](const std::pair<double, double>& one) { return one.first >= years; });
    if (after == chances.end())
        return chances.back().second;
    if (after == chances.begin())
        return after->second;
    const auto& before = after[-1];
    const double between = after->first - before.first;
    return between <= 0 ? after->second
                        : before.second + (after->second - before.second) * (years - before.first) / between;
}

void paintStrip(QPainter& painter, const ExpectedPart& part, double width, double years)
{
    const Theme& theme = Theme::print();
    const int steps = static_cast<int>(std::ceil(width / stripStep));
    for (int step = 0; step < steps; ++step) {
        const double from = width * step / steps;
        const double to = width * (step + 1) / steps;
        const double chance = chanceAt(part.chances, (from + to) / 2 / width * years);
        if (chance > leastShade)
            painter.fillRect(QRectF(from, 0, to - from + 0.5, stripHeight),
                             mixed(theme.fill(Grade::spent), theme.ground, chance));
    }
    painter.setPen(QPen(theme.line, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(0, 0, width, stripHeight));
    if (part.middle && *part.middle <= years) {
        const double x = *part.middle / years * width;
        painter.setPen(QPen(theme.ink, 5));
        painter.drawLine(QPointF(x, -markOver), QPointF(x, stripHeight + markOver));
    }
}

/// A line at each new year, its number beneath where there is room.
void addYears(std::vector<Run>& runs, const OutlookBlock& outlook, double left, double width, double top)
{
    constexpr double tick = 5;
    const double perYear = width / outlook.years;
    const double letters = textWidth(QStringLiteral("0000"), Face::small);
    const int step = letters + outlookGap < perYear ? 1 : letters + outlookGap < 2 * perYear ? 2 : 5;
    for (int year = 1; year <= outlook.years; ++year) {
        const double x = left + (year - outlook.yearGone) * perYear;
        const QString name = QString::number(outlook.firstYear + year);
        runs.emplace_back(RuleRun{QLineF(x, top, x, top + tick), Ink::soft});
        if ((outlook.firstYear + year) % step == 0 && x + letters / 2 < left + width)
            runs.emplace_back(moved(setLeft(name, Face::small, Ink::soft), x - letters / 2, top + tick));
    }
}

} // namespace

std::vector<SetItem> setOutlook(const OutlookBlock& outlook, double width)
{
    std::vector<Run> runs{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
    const double room = width - headingColumn;
    append(runs, setLines(outlook.heading, Face::strong, Ink::full, headingColumn - outlookGap), 0, ruleToWords);
    std::vector<Run> words = setLines(outlook.text, Face::small, Ink::full, room);
    double top = ruleToWords + bottomOf(words);
    append(runs, words, headingColumn, ruleToWords);
    const double chanceLeft = headingColumn + room * nameShare + outlookGap;
    const double stripLeft = chanceLeft + room * chanceShare + outlookGap;
    const double strip = room * (1 - nameShare - chanceShare - datesShare) - 3 * outlookGap;
    const double step = leading(Face::small);
    const auto cell = [&](const QString& text, double share, double left) {
        append(runs, {setLeft(shortened(text, Face::small, room * share), Face::small, Ink::full)}, left, top);
    };
    for (const ExpectedPart& part : outlook.parts) {
        cell(part.name, nameShare, headingColumn);
        cell(part.chance, chanceShare, chanceLeft);
        cell(part.dates, datesShare, stripLeft + strip + outlookGap);
        runs.emplace_back(DrawingRun{QRectF(stripLeft, top + (step - stripHeight) / 2, strip, stripHeight),
                                     [part, strip, years = static_cast<double>(outlook.years)](QPainter& painter) {
                                         paintStrip(painter, part, strip, years);
                                     }});
        top += step;
    }
    if (!outlook.parts.empty())
        addYears(runs, outlook, stripLeft, strip, top);
    const double height = bottomOf(runs);
    std::vector<SetItem> items;
    items.push_back(SetItem{std::move(runs), FlowItem{height, spaceBeforeBlock, false, std::nullopt}});
    return items;
}

} // namespace padside
