// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/photo_frame.h"

#include "ui/drawing/theme.h"

#include <QImageReader>
#include <QPainter>

namespace padside {

namespace {

constexpr int leastPicture = 96; ///< px; smaller, a photograph tells nothing
constexpr int textMargin = 6;

} // namespace

PhotoFrame::PhotoFrame(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

int PhotoFrame::leastHeight() const
{
    return m_image.isNull() ? 2 * fontMetrics().lineSpacing() + 2 * textMargin : leastPicture;
}

QSize PhotoFrame::sizeHint() const
{
    return {260, leastHeight()};
}

QSize PhotoFrame::minimumSizeHint() const
{
    return {140, leastHeight()};
}

void PhotoFrame::showImage(const QImage& image, const QString& caption)
{
    m_image = image;
    m_text = caption;
    setAccessibleName(caption);
    updateGeometry();
    update();
}

void PhotoFrame::showNothing(const QString& why)
{
    showImage({}, why);
}

void PhotoFrame::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    if (m_image.isNull()) {
        painter.setPen(QPen(m_theme.line, 1, Qt::DashLine));
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
        painter.setPen(m_theme.softInk);
        painter.drawText(rect().adjusted(10, textMargin, -10, -textMargin), Qt::AlignCenter | Qt::TextWordWrap, m_text);
        return;
    }
    const QSize fitted = m_image.size().scaled(size(), Qt::KeepAspectRatio);
    const QRect area(QPoint(0, 0), fitted);
    painter.drawImage(area, m_image);
}

QImage smallImage(const QString& path, int edge)
{
    QImageReader reader(path);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    QSize size = reader.size();
    if (size.width() > edge || size.height() > edge) {
        size.scale(edge, edge, Qt::KeepAspectRatio);
        reader.setScaledSize(size);
    }
    return reader.read();
}

} // namespace padside
