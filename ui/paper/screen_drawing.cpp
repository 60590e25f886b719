// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/screen_drawing.h"

#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_legend.h"
#include "ui/paper/type_setting.h"

#include <QImage>
#include <QPainter>

#include <cmath>

namespace padside {

QFont labelFont()
{
    QFont font = paperFont(Face::body);
    font.setPixelSize(static_cast<int>(std::round(labelPixels)));
    return font;
}

double legendHeight(const Timeline& timeline, const Speaker& speaker, double width)
{
    QImage nothing(1, 1, QImage::Format_RGB32);
    QPainter painter(&nothing);
    painter.setFont(labelFont());
    return paintTimelineLegend(painter, QRectF(0, 0, width, 1000), timeline, speaker, Theme::print(), false);
}

} // namespace padside
