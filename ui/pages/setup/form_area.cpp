// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/form_area.h"

#include <QEvent>
#include <QLayout>

#include <algorithm>

namespace padside {

namespace {

constexpr int linesOfSentences = 3;

} // namespace

FormArea::FormArea(QWidget* form, QWidget* parent)
    : QScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidget(form);
    form->installEventFilter(this);
}

QSize FormArea::sizeHint() const
{
    return widget()->sizeHint() + QSize(0, linesOfSentences * fontMetrics().lineSpacing());
}

void FormArea::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    giveHeight();
}

bool FormArea::eventFilter(QObject* watched, QEvent* event)
{
    const bool handled = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest) // a sentence came or went
        giveHeight();
    return handled;
}

void FormArea::giveHeight()
{
    const QLayout* layout = widget()->layout();
    if (layout->hasHeightForWidth())
        widget()->setMinimumHeight(
            std::max(layout->totalHeightForWidth(viewport()->width()), layout->totalMinimumSize().height()));
}

} // namespace padside
