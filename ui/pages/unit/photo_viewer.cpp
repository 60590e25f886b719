// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/photo_viewer.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/models/photo_loader.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScreen>

#include <algorithm>

namespace padside {

namespace {

constexpr int largestEdge = 1600; ///< more than most windows show, less than a photograph's full size

} // namespace

PhotoViewer::PhotoViewer(PhotoLoader& loader, const Theme& theme, QWidget* parent)
    : QDialog(parent)
    , m_loader(loader)
    , m_theme(theme)
{
    setObjectName(QStringLiteral("photoViewer"));
    setWindowTitle(tr("Photograph"));
    setAccessibleName(tr("Photograph, enlarged"));
    setFocusPolicy(Qt::StrongFocus);
    resize(960, 720);
    connect(&loader, &PhotoLoader::loaded, this, qOverload<>(&QWidget::update));
}

void PhotoViewer::setSheets(std::vector<Sheet> sheets)
{
    const PhotoId kept = m_sheets.empty() ? PhotoId() : m_sheets[static_cast<std::size_t>(m_current)].photo;
    m_sheets = std::move(sheets);
    const auto again = std::ranges::find(m_sheets, kept, &Sheet::photo);
    m_current = again == m_sheets.end() ? 0 : static_cast<int>(again - m_sheets.begin());
    if (isVisible() && again == m_sheets.end())
        hide(); // another zone, or the photograph is gone
}

void PhotoViewer::showSheet(int number)
{
    if (m_sheets.empty())
        return;
    m_current = std::clamp(number, 0, static_cast<int>(m_sheets.size()) - 1);
    describe();
    Q_EMIT stepped(m_current);
    update();
    if (!isVisible()) {
        const QSize room = screen()->availableSize();
        resize(std::min(960, room.width() - 80), std::min(720, room.height() - 80));
        show();
    }
    activateWindow();
    setFocus();
}

void PhotoViewer::describe()
{
    const Sheet& sheet = m_sheets[static_cast<std::size_t>(m_current)];
    setWindowTitle(sheet.sentence);
    setAccessibleDescription(tr("%1. Photograph %2 of %3").arg(sheet.sentence).arg(m_current + 1).arg(m_sheets.size()));
}

void PhotoViewer::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), m_theme.ground);
    if (m_sheets.empty())
        return;
    const Sheet& sheet = m_sheets[static_cast<std::size_t>(m_current)];
    const double line = fontMetrics().height() * 1.6;
    const QRectF frame = QRectF(rect()).adjusted(12, 12, -12, -line * 2 - 12);
    QImage image = m_loader.picture(sheet.photo, largestEdge);
    if (!image.isNull()) {
        QRectF place(QPointF(0, 0), QSizeF(image.size()).scaled(frame.size(), Qt::KeepAspectRatio));
        place.moveCenter(frame.center());
        painter.drawImage(place, image);
    } else {
        painter.setPen(m_theme.softInk);
        painter.drawText(frame, Qt::AlignCenter | Qt::TextWordWrap,
                         m_loader.failed(sheet.photo)
                             ? tr("This photograph can't be read. Its file may be missing or damaged: "
                                  "padside verify says which.")
                             : tr("Loading…"));
    }
    const QRectF mark(12, frame.bottom() + 8, line * 0.8, line * 0.8);
    if (sheet.grade)
        paintGrade(painter, mark, *sheet.grade, m_theme);
    else if (sheet.notSeen)
        paintNotSeen(painter, mark, m_theme);
    else
        paintNoFinding(painter, mark, m_theme);
    painter.setFont(font());
    painter.setPen(m_theme.ink);
    const QRectF text(mark.right() + 8, mark.top(), width() - mark.right() - 20, line * 0.8);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter,
                     fontMetrics().elidedText(sheet.sentence, Qt::ElideRight, static_cast<int>(text.width())));
    painter.setPen(m_theme.softInk);
    painter.drawText(QRectF(12, mark.bottom() + 4, width() - 24, line * 0.8), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("%1 of %2   ← before, → after, Esc closes").arg(m_current + 1).arg(m_sheets.size()));
}

void PhotoViewer::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        return showSheet(m_current - 1);
    case Qt::Key_Right:
        return showSheet(m_current + 1);
    case Qt::Key_Home:
        return showSheet(0);
    case Qt::Key_End:
        return showSheet(static_cast<int>(m_sheets.size()) - 1);
    default:
        QDialog::keyPressEvent(event);
    }
}

void PhotoViewer::mousePressEvent(QMouseEvent* event)
{
    // The right half goes on, the left half back.
    if (event->button() == Qt::LeftButton)
        showSheet(m_current + (event->position().x() < width() / 2.0 ? -1 : 1));
}

} // namespace padside
