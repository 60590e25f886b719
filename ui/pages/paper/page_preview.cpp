// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/page_preview.h"

#include "ui/drawing/theme.h"

#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double gap = 18;
constexpr double widestPage = 900;
constexpr double widestLandscape = 1600;
constexpr int scrollStep = 40;

} // namespace

PagePreview::PagePreview(const Theme& theme, QWidget* parent)
    : QAbstractScrollArea(parent)
    , m_theme(theme)
{
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Pages as they will be printed"));
    viewport()->setAccessibleName(tr("Pages as they will be printed"));
}

void PagePreview::setDocument(PaperDocument document, PhotoSource photos)
{
    m_document = std::move(document);
    m_photos = std::move(photos);
    setAccessibleDescription(tr("%1. Pages: %2").arg(m_document.title).arg(m_document.pages.size()));
    layPages();
}

QSizeF PagePreview::pageSize() const
{
    const QSizeF sheet = sheetSize(m_document);
    const double widest = m_document.landscape ? widestLandscape : widestPage;
    const double width = std::clamp(viewport()->width() - 2 * gap, 100.0, widest);
    return {std::floor(width), std::floor(width * sheet.height() / sheet.width())};
}

double PagePreview::pageTop(std::size_t page) const
{
    return gap + static_cast<double>(page) * (pageSize().height() + gap);
}

void PagePreview::layPages()
{
    m_pictures.assign(m_document.pages.size(), QPixmap());
    const auto height = static_cast<int>(pageTop(m_document.pages.size()));
    verticalScrollBar()->setRange(0, std::max(0, height - viewport()->height()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(scrollStep);
    viewport()->update();
}

const QPixmap& PagePreview::picture(std::size_t page)
{
    QPixmap& picture = m_pictures[page];
    const double ratio = viewport()->devicePixelRatioF();
    if (picture.isNull()) {
        picture = QPixmap((pageSize() * ratio).toSize());
        picture.fill(Qt::white);
        QPainter painter(&picture);
        const double scale = picture.width() / sheetSize(m_document).width();
        painter.scale(scale, scale);
        paintPage(painter, m_document.pages[page], m_photos);
        painter.end();
        picture.setDevicePixelRatio(ratio);
    }
    return picture;
}

void PagePreview::paintEvent(QPaintEvent* event)
{
    QPainter painter(viewport());
    painter.fillRect(event->rect(), m_theme.ground);
    const QSizeF size = pageSize();
    const double left = std::floor((viewport()->width() - size.width()) / 2);
    for (std::size_t page = 0; page < m_document.pages.size(); ++page) {
        const QRectF area(QPointF(left, pageTop(page) - verticalScrollBar()->value()), size);
        if (!area.intersects(event->rect()))
            continue;
        painter.drawPixmap(area.topLeft(), picture(page));
        painter.setPen(QPen(m_theme.line, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(area);
    }
}

void PagePreview::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    layPages();
}

} // namespace padside
