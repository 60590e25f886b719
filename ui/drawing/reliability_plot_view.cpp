// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/reliability_plot_view.h"

#include <QPainter>

namespace padside {

ReliabilityPlotView::ReliabilityPlotView(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ReliabilityPlotView::setPlot(ReliabilityPlot plot)
{
    m_plot = std::move(plot);
    update();
}

QSize ReliabilityPlotView::sizeHint() const
{
    return {m_theme.size.wide(380), m_theme.size.wide(400)};
}

QSize ReliabilityPlotView::minimumSizeHint() const
{
    return {m_theme.size.wide(280), m_theme.size.wide(300)};
}

void ReliabilityPlotView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.panel);
    paintReliabilityPlot(painter, QRectF(rect()).adjusted(8, 8, -8, -8), m_plot, m_theme);
}

} // namespace padside
