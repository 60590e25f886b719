// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/trend/trend_point.h"
#include "ui/drawing/theme.h"

#include <QRectF>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

class QPainter;

namespace padside {

/// Where a measured thing may go from its last point: rates per day, the likeliest and the bounds of what is known.
struct MeasureFan
{
    double ratePerDay = 0;
    double lowPerDay = 0; ///< not above ratePerDay
    double highPerDay = 0; ///< not below ratePerDay
};

/// A measured thing of one zone through the years, ready to be painted.
struct MeasureChart
{
    std::vector<TrendPoint> points; ///< days since 1970-01-01, SI; oldest first
    std::optional<double> limit; ///< SI
    QString limitName; ///< stands on the limit's line
    std::optional<MeasureFan> fan; ///< runs on behind the last point and fades
    double unit = 1; ///< SI of one of the units the person reads: the lines of values stand at round numbers of it
    std::function<QString(double)> shown; ///< a value as the person reads it, with its unit
};

/// Paints points, limit and fan into `area`. The scale starts at zero where that costs less than half of the height.
void paintMeasureChart(QPainter& painter, const QRectF& area, const MeasureChart& chart, const Theme& theme);

} // namespace padside
