// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/file_drop.h"

#include <QDropEvent>
#include <QMimeData>
#include <QUrl>
#include <QWidget>

namespace padside {

FileDrop::FileDrop(QWidget& window, QString ending)
    : QObject(&window)
    , m_ending(std::move(ending))
{
    window.setAcceptDrops(true);
    window.installEventFilter(this);
}

bool FileDrop::eventFilter(QObject* watched, QEvent* event)
{
    // Both events are of this family; a drag that was refused when it came in is never dropped.
    if (event->type() != QEvent::DragEnter && event->type() != QEvent::Drop)
        return QObject::eventFilter(watched, event);
    auto* drop = static_cast<QDropEvent*>(event); // NOLINT(cppcoreguidelines-pro-type-static-cast-downcast)
    const auto file = drop->mimeData() ? fileIn(*drop->mimeData(), m_ending) : std::nullopt;
    if (!file)
        return QObject::eventFilter(watched, event);
    drop->setDropAction(Qt::CopyAction); // never a move: the file stays where it is
    drop->accept();
    if (event->type() == QEvent::Drop)
        Q_EMIT dropped(*file);
    return true;
}

std::optional<QString> fileIn(const QMimeData& data, const QString& ending)
{
    const QList<QUrl> urls = data.urls();
    if (urls.size() != 1 || !urls[0].isLocalFile())
        return std::nullopt;
    const QString file = urls[0].toLocalFile();
    if (!file.endsWith(ending, Qt::CaseInsensitive))
        return std::nullopt;
    return file;
}

} // namespace padside
