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

std::vector<PhotoId> photosOn(const PaperPage& page)
{
    std::vector<PhotoId> ids;
    for (const Run& run : page.runs) {
        if (const auto* photo = std::get_if<PhotoRun>(&run))
            ids.push_back(photo->id);
    }
    return ids;
}

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

void PagePreview::setDocument(PaperDocument document, const PhotoSource& photos)
{
    m_document = std::move(document);
    readPhotos(photos);
    setAccessibleDescription(tr("%1. Pages: %2").arg(m_document.title).arg(m_document.pages.size()));
    layPages();
}

PagePreview::~PagePreview()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void PagePreview::readPhotos(const PhotoSource& photos)
{
    m_pool.clear();
    m_photos.clear();
    m_waiting = 0;
    const int round = ++m_round;
    if (!photos)
        return;
    const QSize largest = QSize(static_cast<int>(widestPage), static_cast<int>(widestPage)) * devicePixelRatio();
    for (const PaperPage& page : m_document.pages) {
        for (const PhotoId& id : photosOn(page)) {
            ++m_waiting;
            m_pool.start([this, round, id, photos, largest] {
                QImage image = photos(id);
                if (image.width() > largest.width() || image.height() > largest.height())
                    image = image.scaled(largest, Qt::KeepAspectRatio, Qt::SmoothTransformation);
                QMetaObject::invokeMethod(
                    this, [this, round, id, image] { take(round, id, image); }, Qt::QueuedConnection);
            });
        }
    }
}

void PagePreview::take(int round, const PhotoId& id, const QImage& image)
{
    if (round != m_round)
        return;
    --m_waiting;
    m_photos[id] = image;
    for (std::size_t page = 0; page < m_pictures.size(); ++page) {
        if (std::ranges::count(photosOn(m_document.pages[page]), id) > 0)
            m_pictures[page] = QPixmap();
    }
    viewport()->update();
}

QImage PagePreview::photo(const PhotoId& id) const
{
    const auto read = m_photos.find(id);
    if (read != m_photos.end() || m_waiting == 0)
        return read == m_photos.end() ? QImage() : read->second;
    QImage blank(4, 3, QImage::Format_RGB32);
    blank.fill(Qt::white);
    return blank;
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
        paintPage(painter, m_document.pages[page], [this](const PhotoId& id) { return photo(id); });
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
