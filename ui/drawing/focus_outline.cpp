// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/focus_outline.h"

#include <QPainter>
#include <QPalette>

namespace padside {

namespace {

constexpr double strong = 2;
constexpr double corner = 3;

} // namespace

void paintFocusOutline(QPainter& painter, const QRectF& area, const QPalette& colours)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours.color(QPalette::Base), 1));
    painter.drawRoundedRect(area.adjusted(strong + 0.5, strong + 0.5, -strong - 0.5, -strong - 0.5), corner - 1,
                            corner - 1);
    painter.setPen(QPen(colours.color(QPalette::Highlight), strong));
    painter.drawRoundedRect(area.adjusted(strong / 2, strong / 2, -strong / 2, -strong / 2), corner, corner);
    painter.restore();
}

} // namespace padside
