// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/photo_year_delegate.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/models/photo_loader.h"

#include <QCoreApplication>
#include <QPainter>

#include <cmath>

namespace padside {

namespace {

constexpr int pictureHeight = 68;
constexpr int pictureWidth = 96;
constexpr int pictureGap = 10; ///< before a picture; a pair's second has next to none
constexpr int pairGap = 2;

int leftGap(const ZonePicture& picture)
{
    return picture.paired ? pairGap : pictureGap;
}

} // namespace

PhotoYearDelegate::PhotoYearDelegate(PhotoLoader& loader, const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_loader(loader)
    , m_theme(theme)
{
}

QSize PhotoYearDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto picture = index.data(pictureRole).value<ZonePicture>();
    const int line = option.fontMetrics.height();
    return {leftGap(picture) + pictureWidth + 4, pictureHeight + line + 9};
}

void PhotoYearDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto picture = index.data(pictureRole).value<ZonePicture>();
    const QRectF cell = QRectF(option.rect).adjusted(leftGap(picture), 2, -2, -2);
    const QRectF frame(cell.left(), cell.top() + 2, pictureWidth, pictureHeight);
    painter->save();
    painter->setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    if (picture.newPart) { // as on the timeline: an upright bar before what is new
        painter->fillRect(QRectF(option.rect.left() + 2, frame.top(), 3, frame.height()), m_theme.ink);
    }
    const QImage image = m_loader.picture(picture.photo, pictureEdge);
    painter->fillRect(frame, m_theme.ground);
    if (!image.isNull()) {
        QRectF place(QPointF(0, 0), QSizeF(image.size()).scaled(frame.size(), Qt::KeepAspectRatio));
        place.moveCenter(frame.center());
        painter->drawImage(place, image);
    } else {
        painter->setPen(m_theme.softInk);
        painter->drawText(frame.adjusted(6, 4, -6, -4), Qt::AlignCenter | Qt::TextWordWrap,
                          m_loader.failed(picture.photo)
                              ? QCoreApplication::translate("padside::PhotoYears", "can't be read")
                              : QCoreApplication::translate("padside::PhotoYears", "loading…"));
    }
    const bool current = option.state.testFlag(QStyle::State_Selected);
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(current ? m_theme.accent : m_theme.line, current ? 2 : 1));
    painter->drawRect(frame.adjusted(0.5, 0.5, -0.5, -0.5));

    const double line = option.fontMetrics.height();
    const double side = std::round(line * 0.95);
    const QRectF mark(cell.left(), frame.bottom() + 4, side, side);
    painter->setFont(option.font);
    if (picture.grade)
        paintGrade(*painter, mark, *picture.grade, m_theme);
    else if (picture.notSeen)
        paintNotSeen(*painter, mark, m_theme);
    else
        paintNoFinding(*painter, mark, m_theme);
    painter->setPen(m_theme.ink);
    painter->drawText(QRectF(mark.right() + 5, frame.bottom() + 3, cell.right() - mark.right() - 5, line),
                      Qt::AlignLeft | Qt::AlignVCenter, index.data(underRole).toString());
    painter->restore();
}

} // namespace padside
