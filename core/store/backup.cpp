// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/backup.h"

#include "core/store/connection.h"
#include "core/store/copy_database.h"
#include "core/store/cursor.h"
#include "core/store/durable_file.h"
#include "core/store/photo_files.h"
#include "core/store/photo_path.h"
#include "core/store/sqlite_failure.h"
#include "core/store/store.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <set>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr double databaseShare = 0.3; ///< of the progress; the photographs weigh more

/// Photographs copied so far; taken back unless kept.
class PhotoCopies
{
public:
    explicit PhotoCopies(QString folder)
        : m_folder(std::move(folder))
        , m_folderIsNew(!QFileInfo::exists(m_folder))
    {
    }
    ~PhotoCopies()
    {
        if (m_keep)
            return;
        for (const QString& file : m_files)
            QFile::remove(file);
        if (m_folderIsNew)
            QDir().rmdir(m_folder);
    }
    PhotoCopies(const PhotoCopies&) = delete;
    PhotoCopies& operator=(const PhotoCopies&) = delete;

    void add(const QString& source)
    {
        const QString target = m_folder + u'/' + QFileInfo(source).fileName();
        if (QFileInfo::exists(target))
            return;
        QFile file(source);
        if (!file.open(QIODevice::ReadOnly))
            throw storeError(
                ProblemKind::cannotRead,
                PADSIDE_SAY("The photograph {0} can't be read: put it back from an older backup, or check the disk."),
                {source.toStdString()});
        const QByteArray content = file.readAll();
        // Files are named by what they hold: a copy that does not match its name is never made.
        const QByteArray digest = QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex();
        if (!QFileInfo(source).fileName().startsWith(QString::fromLatin1(digest)))
            throw storeError(ProblemKind::cannotRead,
                             PADSIDE_SAY("The photograph {0} is damaged: put it back from an older backup."),
                             {source.toStdString()});
        if (!QDir().mkpath(m_folder))
            throw storeError(ProblemKind::cannotWrite,
                             PADSIDE_SAY("The photo folder {0} can't be made: check who may write there."),
                             {m_folder.toStdString()});
        m_files.push_back(target);
        writeDurably(target, content);
    }
    void keep() { m_keep = true; }

private:
    QString m_folder;
    bool m_folderIsNew;
    bool m_keep = false;
    std::vector<QString> m_files;
};

std::set<QString> photosOf(Store& store)
{
    std::set<QString> paths;
    Cursor row(store.connection(), "SELECT DISTINCT sha256, media_type FROM photo");
    while (row.next())
        paths.insert(photoPath(store.photos().folder(), row.text(0), row.text(1)));
    return paths;
}

} // namespace

bool backup(Store& store, const QString& target, const std::function<bool(double)>& progress)
{
    const auto tell = [&progress](double done) { return !progress || progress(done); };
    if (QFileInfo::exists(target))
        throw storeError(ProblemKind::refused, PADSIDE_SAY("{0} is there already: choose another name."),
                         {target.toStdString()});
    const QFileInfo folder(QFileInfo(target).absolutePath());
    if (!folder.isDir())
        throw storeError(ProblemKind::cannotWrite, PADSIDE_SAY("There is no folder {0}: make it first."),
                         {folder.filePath().toStdString()});
    // Photographs first: once the database has its name, the backup is whole.
    PhotoCopies copies(photoFolderOf(target));
    const auto photos = photosOf(store);
    double copied = 0;
    for (const QString& photo : photos) {
        copies.add(photo);
        ++copied;
        if (!tell((1 - databaseShare) * copied / static_cast<double>(photos.size())))
            return false;
    }
    const double start = photos.empty() ? 0 : 1 - databaseShare;
    const bool finished
        = copyDatabase(store.connection(), target, [&](double done) { return tell(start + (1 - start) * done); });
    if (finished)
        copies.keep();
    return finished;
}

} // namespace padside
