// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/measure_chart_view.h"

#include <QPainter>

namespace padside {

MeasureChartView::MeasureChartView(MeasureChart chart, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_chart(std::move(chart))
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize MeasureChartView::sizeHint() const
{
    return {m_theme.size.wide(520), m_theme.size.wide(170)};
}

QSize MeasureChartView::minimumSizeHint() const
{
    return {m_theme.size.wide(260), m_theme.size.wide(150)};
}

void MeasureChartView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.panel);
    paintMeasureChart(painter, QRectF(rect()).adjusted(8, 8, -8, -8), m_chart, m_theme);
}

} // namespace padside
