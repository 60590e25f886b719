// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <QString>

#include <optional>

class QMimeData;
class QWidget;

namespace padside {

/// Lets a record file be dropped anywhere on a window. What a page takes for itself (photographs) never gets here.
class RecordFileDrop : public QObject
{
    Q_OBJECT
public:
    /// Watches `window`, which owns it.
    explicit RecordFileDrop(QWidget& window);

Q_SIGNALS:
    void dropped(const QString& file);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

/// The one record file (*.padside on this computer) that is being dragged; nothing for anything else.
[[nodiscard]] std::optional<QString> recordFileIn(const QMimeData& data);

} // namespace padside
