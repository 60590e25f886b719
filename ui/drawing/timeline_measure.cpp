// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_measure.h"

#include "ui/drawing/timeline_painter.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double foldRoom = 26; ///< of a part's name: the triangle before it, a margin after it

QFontMetricsF metricsOf(QFont font, double pixels, bool bold)
{
    font.setPixelSize(static_cast<int>(std::round(pixels)));
    font.setBold(bold);
    return QFontMetricsF(font);
}

} // namespace

NameWidths nameWidths(const Timeline& timeline, const TimelineWords& words, const QFont& font, double pixels)
{
    const QFontMetricsF partMetrics = metricsOf(font, pixels, true);
    const QFontMetricsF zoneMetrics = metricsOf(font, pixels, false);
    const QFontMetricsF amountMetrics = metricsOf(font, pixels * amountType, false);
    NameWidths widths;
    for (const TimelineGroup& group : timeline.groups) {
        // A name over several lanes may break into two lines, but has one when they are folded away.
        const double share = group.lanes.size() > 1 ? 0.62 : 1;
        widths.part = std::max(widths.part, partMetrics.horizontalAdvance(words.partName(group)) * share + foldRoom);
        for (const TimelineLane& lane : group.lanes)
            widths.zone = std::max(widths.zone, zoneMetrics.horizontalAdvance(words.zoneName(lane)) + 12);
        if (group.foldable())
            widths.zone = std::max(widths.zone, zoneMetrics.horizontalAdvance(words.zoneName(group.worst)) + 12);
    }
    for (const TimelineLane& lane : timeline.groups.front().lanes) {
        for (const TimelineMark& mark : lane.marks)
            widths.amount = std::max(widths.amount, amountMetrics.horizontalAdvance(words.chargesText(mark)) + 4);
    }
    return widths;
}

TimelineSizes sizesFor(const NameWidths& widths, double pixels, double width)
{
    // Names may take a third, more where there is little room, but never most of it.
    const double most = std::max(width * 0.34, std::min(width * 0.42, 400.0));
    const double scale = std::min(1.0, most / (widths.part + widths.zone));
    return TimelineSizes::forText(pixels, std::floor(widths.part * scale), std::floor(widths.zone * scale),
                                  std::ceil(widths.amount));
}

} // namespace padside
