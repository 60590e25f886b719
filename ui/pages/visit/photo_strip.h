// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/entry.h"

#include <QListWidget>

#include <functional>
#include <optional>
#include <vector>

namespace padside {

struct ZoneLine;
class RecordBook;
class VisitLog;

/// Today's photographs of one zone as thumbnails. Takes new ones from files, by drop and by paste.
class PhotoStrip : public QListWidget
{
    Q_OBJECT
public:
    /// Asks which files to add; tests give their own.
    using Chooser = std::function<QStringList(QWidget*)>;
    /// Asks where a photo belongs; empty: left as it is.
    using Placer = std::function<std::optional<Photo>(QWidget*, const Photo&)>;

    PhotoStrip(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, Phase phase);
    void setChooser(Chooser chooser) { m_chooser = std::move(chooser); }

    void setPlacer(Placer placer) { m_placer = std::move(placer); }

    void chooseFiles();
    void paste(); ///< from the clipboard
    void take(const QMimeData& given);
    void removeCurrent();
    /// Asks where the chosen photo (the newest, if none is) belongs and enters the answer, at a closed visit as a
    /// correction.
    void placeCurrent();

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void refused(const QString& sentence); ///< why a photo could not be added

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

private:
    [[nodiscard]] const Photo* currentPhoto() const; ///< or nullptr

    RecordBook& m_book;
    VisitLog& m_log;
    Chooser m_chooser;
    Placer m_placer;
    std::vector<Photo> m_photos;
    std::optional<ZoneId> m_zone;
    Phase m_phase = Phase::asFound;
};

} // namespace padside
