// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/theme.h"

#include <QRectF>
#include <QString>

#include <functional>
#include <vector>

class QPainter;

namespace padside {

/// Forecasts of about the same chance, and what came of them.
struct ReliabilityPoint
{
    double said = 0; ///< 0..1
    double came = 0;
    double low = 0; ///< what may well lie behind `came`
    double high = 1;
    int count = 0;
};

/// What was said against what came, ready to be painted. On the diagonal as much came as was said.
struct ReliabilityPlot
{
    std::vector<ReliabilityPoint> points;
    QString saidName; ///< stands below
    QString cameName; ///< stands above
    QString moreCame; ///< in the half where more came than was said
    QString lessCame;
    std::function<QString(double)> shown; ///< a share as the person reads it
};

/// Paints the plot, as large a square as goes into `area`: a dot for each point, larger for more forecasts, with their
/// number beside it and a bar for what may well lie behind it.
void paintReliabilityPlot(QPainter& painter, const QRectF& area, const ReliabilityPlot& plot, const Theme& theme);

} // namespace padside
