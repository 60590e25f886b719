// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/worth_bars.h"

#include "ui/drawing/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr double barOfText = 1.0; ///< height of a bar, of that of the text
constexpr double gapOfText = 0.5; ///< between bars
constexpr double paler = 0.45; ///< share of the soft ink in the bars that cost more

} // namespace

double worthBarsHeight(std::size_t bars, double textHeight)
{
    return static_cast<double>(bars) * (1 + barOfText + gapOfText) * textHeight;
}

void paintWorthBars(QPainter& painter, const QRectF& area, const std::vector<WorthBar>& bars, const Theme& theme)
{
    if (bars.empty())
        return;
    const QFontMetricsF metrics(painter.font());
    const double text = metrics.height();
    const double longest = std::ranges::max(bars, {}, &WorthBar::value).value;
    const double least = std::ranges::min(bars, {}, &WorthBar::value).value;
    double numerals = 0;
    for (const WorthBar& bar : bars)
        numerals = std::max(numerals, metrics.horizontalAdvance(bar.shown));
    const double room = area.width() - numerals - text / 2;
    double top = area.top();
    for (const WorthBar& bar : bars) {
        painter.setPen(theme.ink);
        painter.drawText(QRectF(area.left(), top, area.width(), text), Qt::AlignLeft | Qt::AlignVCenter, bar.label);
        top += text;
        const double length = longest > 0 ? room * bar.value / longest : 0;
        const QRectF box(area.left(), top, std::max(1.0, length), text * barOfText);
        painter.fillRect(box, bar.value == least ? theme.accent : mixed(theme.softInk, theme.panel, paler));
        painter.drawText(QRectF(box.right() + text / 3, top, numerals + text, box.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, bar.shown);
        top += text * (barOfText + gapOfText);
    }
}

WorthBarsView::WorthBarsView(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WorthBarsView::setBars(std::vector<WorthBar> bars)
{
    m_bars = std::move(bars);
    updateGeometry();
    update();
}

QSize WorthBarsView::sizeHint() const
{
    return {m_theme.size.wide(320),
            static_cast<int>(worthBarsHeight(m_bars.size(), QFontMetricsF(font()).height())) + 4};
}

QSize WorthBarsView::minimumSizeHint() const
{
    return {m_theme.size.wide(200), sizeHint().height()};
}

void WorthBarsView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintWorthBars(painter, QRectF(rect()).adjusted(0, 2, 0, -2), m_bars, m_theme);
}

} // namespace padside
