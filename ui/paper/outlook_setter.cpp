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

constexpr double nameShare = 0.3; ///< of the width
constexpr double datesShare = 0.18;
constexpr double columnGap = 24;
constexpr double stripHeight = 26;
constexpr double rowStep = 40;
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
        painter.drawLine(QPointF(x, -5), QPointF(x, stripHeight + 5));
    }
}

/// A line at each new year, its number beneath where there is room.
void addYears(std::vector<Run>& runs, const OutlookBlock& outlook, double left, double width, double bottom)
{
    const double perYear = width / outlook.years;
    for (int year = 1; year <= outlook.years; ++year) {
        const double x = left + (year - outlook.yearGone) * perYear;
        const QString name = QString::number(outlook.firstYear + year);
        if (x > left + width)
            break;
        runs.emplace_back(RuleRun{QLineF(x, bottom - 8, x, bottom), Ink::soft});
        const double letters = textWidth(name, Face::small);
        if (x + letters / 2 <= left + width + columnGap && letters + 8 < perYear)
            runs.emplace_back(moved(setLeft(name, Face::small, Ink::soft), x - letters / 2, bottom));
    }
}

} // namespace

std::vector<SetItem> setOutlook(const OutlookBlock& outlook, double width)
{
    std::vector<Run> runs{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
    append(runs, setLines(outlook.heading, Face::strong, Ink::full, width), 0, 10);
    append(runs, setLines(outlook.text, Face::small, Ink::full, width), 0, bottomOf(runs) + 4);
    double top = bottomOf(runs) + 16;
    const double left = width * nameShare + columnGap;
    const double strip = width * (1 - nameShare - datesShare) - 2 * columnGap;
    for (const ExpectedPart& part : outlook.parts) {
        append(runs, {setLeft(shortened(part.name, Face::body, width * nameShare), Face::body, Ink::full)}, 0, top - 4);
        append(runs, {setLeft(shortened(part.dates, Face::body, width * datesShare), Face::body, Ink::full)},
               left + strip + columnGap, top - 4);
        runs.emplace_back(DrawingRun{QRectF(left, top, strip, stripHeight),
                                     [part, strip, years = static_cast<double>(outlook.years)](QPainter& painter) {
                                         paintStrip(painter, part, strip, years);
                                     }});
        top += rowStep;
    }
    if (!outlook.parts.empty())
        addYears(runs, outlook, left, strip, top - rowStep + stripHeight + 12);
    const double height = bottomOf(runs);
    std::vector<SetItem> items;
    items.push_back(SetItem{std::move(runs), FlowItem{height, spaceBeforeBlock, false, std::nullopt}});
    return items;
}

} // namespace padside
