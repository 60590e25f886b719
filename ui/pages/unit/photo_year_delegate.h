// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/zone_pictures.h"

#include <QStyledItemDelegate>

namespace padside {

struct Theme;
class PhotoLoader;

/// Where a photograph strip's items keep their picture (ZonePicture) and the text under it.
enum PhotoYearRole { pictureRole = Qt::UserRole, underRole };

/// A photograph with the grade's numeral and the date under it; the second of a pair stands close to the first.
class PhotoYearDelegate : public QStyledItemDelegate
{
public:
    PhotoYearDelegate(PhotoLoader& loader, const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    static constexpr int pictureEdge = 320; ///< asked for; the size of the thumbnails that are kept

private:
    PhotoLoader& m_loader;
    const Theme& m_theme;
};

} // namespace padside

Q_DECLARE_METATYPE(padside::ZonePicture)
