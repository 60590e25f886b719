// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/photo_files.h"

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/cursor.h"
#include "core/store/durable_file.h"
#include "core/store/photo_path.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

bool holdsExactly(const QString& path, const QByteArray& content)
{
    QFile file(path);
    return file.size() == content.size() && file.open(QIODevice::ReadOnly) && file.readAll() == content;
}

} // namespace

PhotoFiles::PhotoFiles(Connection& connection, QString folder)
    : m_connection(connection)
    , m_folder(std::move(folder))
{
}

PhotoFiles::Kept PhotoFiles::keep(const QByteArray& content, const std::string& mediaType)
{
    if (content.isEmpty())
        throw storeError(ProblemKind::badInput, PADSIDE_SAY("The photograph is empty: choose another file."));
    if (m_connection.isReadOnly())
        throw storeError(ProblemKind::cannotWrite,
                         PADSIDE_SAY("{0} is open for reading only: a photograph can't be added."),
                         {m_connection.path().toStdString()});
    const std::string sha256 = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex().toStdString();
    const QString path = photoPath(m_folder, sha256, mediaType);
    if (!QFileInfo::exists(m_folder)) {
        if (!QDir().mkpath(m_folder))
            throw storeError(ProblemKind::cannotWrite,
                             PADSIDE_SAY("The photo folder {0} can't be made: check who may write there."),
                             {m_folder.toStdString()});
        syncFolder(QFileInfo(m_folder).absolutePath());
    }
    if (!holdsExactly(path, content)) // a damaged copy is written anew
        writeDurably(path, content);
    return {sha256, content.size()};
}

QString PhotoFiles::path(const Photo& photo) const
{
    return photoPath(m_folder, photo.sha256, photo.mediaType);
}

QByteArray PhotoFiles::thumbnail(PhotoId id) const
{
    Cursor row(m_connection, "SELECT jpeg FROM photo_thumbnail WHERE photo_id = ?");
    row.bind(1, id);
    if (!row.next())
        return {};
    const std::string_view bytes = row.view(0);
    return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}

void PhotoFiles::setThumbnail(PhotoId id, const QByteArray& jpeg)
{
    m_connection.write(u"INSERT INTO photo_thumbnail (photo_id, jpeg) VALUES (?, ?) "
                       "ON CONFLICT (photo_id) DO UPDATE SET jpeg = excluded.jpeg"_s,
                       {bound(id), jpeg});
}

} // namespace padside
