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

TimelineSizes measured(const Timeline& timeline, const TimelineWords& words, const QFont& font, double pixels,
                       double width)
{
    const QFontMetricsF partMetrics = metricsOf(font, pixels, true);
    const QFontMetricsF zoneMetrics = metricsOf(font, pixels, false);
    const QFontMetricsF amountMetrics = metricsOf(font, pixels * amountType, false);
    double part = 60;
    double zone = 40;
    for (const TimelineGroup& group : timeline.groups) {
        // A name over several lanes may break into two lines, but has one when they are folded away.
        const double share = group.lanes.size() > 1 ? 0.62 : 1;
        part = std::max(part, partMetrics.horizontalAdvance(words.partName(group)) * share + foldRoom);
        for (const TimelineLane& lane : group.lanes)
            zone = std::max(zone, zoneMetrics.horizontalAdvance(words.zoneName(lane)) + 12);
        if (group.foldable())
            zone = std::max(zone, zoneMetrics.horizontalAdvance(words.zoneName(group.worst)) + 12);
    }
    // Names may take a third, more where there is little room, but never most of it.
    const double most = std::max(width * 0.34, std::min(width * 0.42, 400.0));
    const double scale = std::min(1.0, most / (part + zone));
    double amount = 0;
    for (const TimelineLane& lane : timeline.groups.front().lanes) {
        for (const TimelineMark& mark : lane.marks)
            amount = std::max(amount, amountMetrics.horizontalAdvance(words.chargesText(mark)) + 4);
    }
    return TimelineSizes::forText(pixels, std::floor(part * scale), std::floor(zone * scale), std::ceil(amount));
}

} // namespace padside
