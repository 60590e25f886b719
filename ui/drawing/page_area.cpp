// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/page_area.h"

#include <QEvent>
#include <QLayout>
#include <QScrollBar>

#include <algorithm>

namespace padside {

namespace {

constexpr int leastVisible = 200; ///< px; with less of a page before the eyes there is no working on it

} // namespace

PageArea::PageArea(QWidget* page, QWidget* parent)
    : QScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidget(page);
    viewport()->setAutoFillBackground(false); // what it stands on shows through
    page->setAutoFillBackground(false);
    page->installEventFilter(this);
}

QSize PageArea::minimumSizeHint() const
{
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(), leastVisible};
}

void PageArea::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

bool PageArea::eventFilter(QObject* watched, QEvent* event)
{
    const bool handled = QScrollArea::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest) { // something came, went or grew
        fit();
        updateGeometry();
    }
    return handled;
}

int PageArea::leastHeight(int width) const
{
    const QLayout& layout = *widget()->layout();
    const int least = layout.totalMinimumSize().height();
    return layout.hasHeightForWidth() ? std::max(least, layout.totalMinimumHeightForWidth(width)) : least;
}

void PageArea::fit()
{
    const QSize room = maximumViewportSize();
    int width = room.width();
    int height = leastHeight(width);
    if (height > room.height()) {
        width -= verticalScrollBar()->sizeHint().width();
        height = leastHeight(width);
    }
    widget()->resize(width, std::max(height, room.height()));
}

} // namespace padside
