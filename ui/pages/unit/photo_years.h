// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QWidget>

class QLabel;
class QListView;
class QModelIndex;
class QStandardItemModel;
class QToolButton;

namespace padside {

struct Theme;
struct ZonePicture;
class PhotoLoader;
class PhotoViewer;
class RecordBook;

/// One zone's photographs through the years, in a strip: arrow keys or the wheel go along it, Enter or a click enlarges
/// one, Esc closes the strip.
class PhotoYears : public QWidget
{
    Q_OBJECT
public:
    PhotoYears(const RecordBook& book, PhotoLoader& loader, const Theme& theme, QWidget* parent = nullptr);

    /// Shows the photographs; `name` says of which zone. The one that was chosen stays so if it is still there, else
    /// the latest is.
    void showPictures(const QString& name, const std::vector<ZonePicture>& pictures);
    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] PhotoViewer* viewer() const { return m_viewer; }

Q_SIGNALS:
    void closeRequested();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void enlarge(const QModelIndex& index);
    [[nodiscard]] QString labelOf(const ZonePicture& picture) const;
    [[nodiscard]] QString sentenceOf(const ZonePicture& picture) const;

    const RecordBook& m_book;
    QString m_name;
    QLabel* m_title;
    QToolButton* m_close;
    QLabel* m_none;
    QListView* m_list;
    QStandardItemModel* m_model;
    PhotoViewer* m_viewer;
};

} // namespace padside
