// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/file_check.h"

#include "core/store/connection.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include <array>

namespace padside {

namespace {

// The file header of SQLite (https://www.sqlite.org/fileformat2.html, section 1.3).
constexpr qsizetype headerSize = 100;
constexpr qsizetype applicationIdAt = 68;
constexpr auto magic = std::to_array("SQLite format 3"); ///< with its closing zero

} // namespace

void requireRecordFile(const QString& path)
{
    const QFileInfo info(path);
    const std::string name = path.toStdString();
    if (!info.exists())
        throw storeError(ProblemKind::cannotRead, PADSIDE_SAY("There is no file {0}: check the name and the folder."),
                         {name});
    if (info.isDir())
        throw storeError(ProblemKind::cannotRead, PADSIDE_SAY("{0} is a folder: name the record file in it."), {name});
    QFile file(path);
    if (!info.isFile() || !file.open(QIODevice::ReadOnly))
        throw storeError(ProblemKind::cannotRead, PADSIDE_SAY("{0} can't be read: check who may read it."), {name});
    const QByteArray header = file.read(headerSize);
    if (header.isEmpty())
        throw storeError(ProblemKind::cannotRead,
                         PADSIDE_SAY("{0} is empty: it holds no records. Open another file or a backup."), {name});
    const QByteArray start(magic.data(), static_cast<qsizetype>(magic.size()));
    if (header.size() < headerSize || !header.startsWith(start))
        throw storeError(
            ProblemKind::cannotRead,
            PADSIDE_SAY("{0} is not a Padside record file, or its beginning is damaged: open another file."), {name});
    if (qFromBigEndian<qint32>(header.constData() + applicationIdAt) != applicationId)
        throw storeError(
            ProblemKind::cannotRead,
            PADSIDE_SAY("{0} is a database of another program: it was left alone. Open a Padside record file."),
            {name});
}

} // namespace padside
