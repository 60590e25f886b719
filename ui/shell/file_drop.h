// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <QString>

#include <optional>

class QMimeData;
class QWidget;

namespace padside {

/// Lets a file of one kind be dropped anywhere on a window. What a page takes for itself (photographs) never gets here.
class FileDrop : public QObject
{
    Q_OBJECT
public:
    /// Watches `window`, which owns it, for one file whose name ends in `ending` (".padside").
    FileDrop(QWidget& window, QString ending);

Q_SIGNALS:
    void dropped(const QString& file);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QString m_ending;
};

/// The one file of this computer that is being dragged, if its name ends so; nothing for anything else.
[[nodiscard]] std::optional<QString> fileIn(const QMimeData& data, const QString& ending);

} // namespace padside
