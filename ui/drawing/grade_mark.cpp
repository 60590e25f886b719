// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/grade_mark.h"

#include "ui/drawing/theme.h"

#include <QFont>
#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr double cornerRadius = 2.5;

} // namespace

void paintGrade(QPainter& painter, const QRectF& area, Grade grade, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(mixed(theme.ink, theme.fill(grade), 0.35), 1));
    painter.setBrush(theme.fill(grade));
    painter.drawRoundedRect(area, cornerRadius, cornerRadius);
    QFont font = painter.font();
    font.setPixelSize(std::max(7, static_cast<int>(std::min(area.height(), area.width() * 1.4) * 0.68)));
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(theme.numeralInk(grade));
    painter.drawText(area, Qt::AlignCenter, QString::number(numeral(grade)));
    painter.restore();
}

void paintNotSeen(QPainter& painter, const QRectF& area, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.hatch, 1));
    painter.setBrush(theme.panel);
    painter.drawRoundedRect(area, cornerRadius, cornerRadius);
    // Own lines, not a brush pattern: patterns change scale on paper. Denser where the mark is small, so that even a
    // small one shows several.
    painter.setClipRect(area.adjusted(0.5, 0.5, -0.5, -0.5), Qt::IntersectClip);
    painter.setPen(QPen(theme.hatch, 1.4));
    const double spacing = std::clamp(area.height() / 4, 3.5, 6.0);
    for (double x = area.left() - area.height() + spacing; x < area.right(); x += spacing)
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
    painter.restore();
}

void paintNoFinding(QPainter& painter, const QRectF& area, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.line, 1));
    painter.setBrush(theme.panel); // shows on a chosen line as well
    painter.drawRoundedRect(area, cornerRadius, cornerRadius);
    painter.restore();
}

} // namespace padside
