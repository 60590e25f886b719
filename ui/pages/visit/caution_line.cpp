// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/caution_line.h"

#include "ui/drawing/focus_outline.h"
#include "ui/drawing/theme.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr int oneLine = 24;
constexpr int padding = 5;
constexpr int tallest = 400;

} // namespace

CautionLine::CautionLine(const Theme& theme, QWidget* parent)
    : QAbstractButton(parent)
    , m_theme(theme)
{
    setObjectName(QStringLiteral("cautions"));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QAbstractButton::toggled, this, &CautionLine::fit);
    fit();
}

void CautionLine::showCautions(const QString& text)
{
    setText(text);
    setAccessibleName(tr("Cautions: %1").arg(text));
    setToolTip(text);
    setVisible(!text.isEmpty());
    fit();
}

QSize CautionLine::sizeHint() const
{
    return {200, lineHeight()};
}

QSize CautionLine::minimumSizeHint() const
{
    return {80, lineHeight()};
}

void CautionLine::resizeEvent(QResizeEvent*)
{
    fit();
}

void CautionLine::changeEvent(QEvent* event)
{
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        fit();
}

int CautionLine::lineHeight() const
{
    return std::max(oneLine, m_theme.size.entry);
}

void CautionLine::fit()
{
    const QRect room(0, 0, std::max(width() - 2 * padding, 80), tallest);
    const int whole = fontMetrics().boundingRect(room, Qt::TextWordWrap, text()).height() + 2 * padding;
    setFixedHeight(isChecked() ? std::max(whole, lineHeight()) : lineHeight());
    update();
}

void CautionLine::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (hasFocus())
        paintFocusOutline(painter, rect(), palette());
    painter.fillRect(QRect(0, 3, 2, height() - 6), m_theme.fill(Grade::poor));
    painter.setPen(m_theme.softInk);
    const QRect area = rect().adjusted(padding + 3, 0, -padding, 0);
    if (isChecked()) {
        painter.drawText(area, Qt::AlignVCenter | Qt::TextWordWrap, text());
        return;
    }
    painter.drawText(area, Qt::AlignVCenter, fontMetrics().elidedText(text(), Qt::ElideRight, area.width()));
}

} // namespace padside
