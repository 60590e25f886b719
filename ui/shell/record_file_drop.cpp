// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/record_file_drop.h"

#include <QDropEvent>
#include <QMimeData>
#include <QUrl>
#include <QWidget>

namespace padside {

RecordFileDrop::RecordFileDrop(QWidget& window)
    : QObject(&window)
{
    window.setAcceptDrops(true);
    window.installEventFilter(this);
}

bool RecordFileDrop::eventFilter(QObject* watched, QEvent* event)
{
    // Both events are of this family; a drag that was refused when it came in is never dropped.
    if (event->type() != QEvent::DragEnter && event->type() != QEvent::Drop)
        return QObject::eventFilter(watched, event);
    auto* drop = static_cast<QDropEvent*>(event); // NOLINT(cppcoreguidelines-pro-type-static-cast-downcast)
    const auto file = drop->mimeData() ? recordFileIn(*drop->mimeData()) : std::nullopt;
    if (!file)
        return QObject::eventFilter(watched, event);
    drop->setDropAction(Qt::CopyAction); // never a move: the file stays where it is
    drop->accept();
    if (event->type() == QEvent::Drop)
        Q_EMIT dropped(*file);
    return true;
}

std::optional<QString> recordFileIn(const QMimeData& data)
{
    const QList<QUrl> urls = data.urls();
    if (urls.size() != 1 || !urls[0].isLocalFile())
        return std::nullopt;
    const QString file = urls[0].toLocalFile();
    if (!file.endsWith(QStringLiteral(".padside"), Qt::CaseInsensitive))
        return std::nullopt;
    return file;
}

} // namespace padside
