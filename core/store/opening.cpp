// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/opening.h"

#include "core/store/connection.h"
#include "core/store/durable_file.h"
#include "core/store/file_check.h"

#include <QFile>
#include <QFileInfo>

#include <sqlite3.h>
#include <unistd.h>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

struct Checked
{
    std::unique_ptr<Connection> connection;
    int version = 0;
};

/// Opens and takes a first look that changes nothing: is the schema readable, and of which version is it?
Checked openAs(const QString& path, Connection::Mode mode)
{
    auto connection = std::make_unique<Connection>(path, mode);
    const auto version = static_cast<int>(connection->number("PRAGMA user_version"));
    const auto tables
        = connection->number("SELECT count(*) FROM sqlite_schema WHERE name IN ('unit', 'visit', 'finding')");
    if (version < 1 || tables != 3)
        throw storeError(
            ProblemKind::cannotRead,
            PADSIDE_SAY("The file {0} is damaged (its tables are missing): leave it as it is and open the latest "
                        "backup."),
            {path.toStdString()});
    return {std::move(connection), version};
}

bool mayNotWriteThere(const StoreError& error)
{
    const int code = error.sqliteCode() & 0xff;
    return code == SQLITE_CANTOPEN || code == SQLITE_READONLY;
}

/// Where nothing can be written, SQLite can't keep its index of the write-ahead log either; without a log it needs
/// none.
Checked openToRead(const QString& path)
{
    try {
        return openAs(path, Connection::Mode::readOnly);
    } catch (const StoreError& error) {
        if (!mayNotWriteThere(error) || QFileInfo(path + u"-wal"_s).size() > 0)
            throw;
        return openAs(path, Connection::Mode::unchanging);
    }
}

/// Empty if the file or its folder can't be written to.
std::optional<Checked> openToWrite(const QString& path)
{
    try {
        Checked opened = openAs(path, Connection::Mode::readWrite);
        if (opened.connection->isReadOnly())
            return std::nullopt;
        opened.connection->useWriteAheadLog();
        return opened;
    } catch (const StoreError& error) {
        if (!mayNotWriteThere(error))
            throw;
        return std::nullopt;
    }
}

StoreError olderButNotWritable(const QString& path)
{
    return storeError(
        ProblemKind::cannotWrite,
        PADSIDE_SAY("{0} was written by an older Padside and must be brought up to date first, which needs "
                    "writing to it: open it once where it can be written to."),
        {path.toStdString()});
}

} // namespace

void createRecordFile(const QString& path)
{
    if (QFileInfo::exists(path))
        throw storeError(ProblemKind::refused, PADSIDE_SAY("{0} is there already: choose another name."),
                         {path.toStdString()});
    const QFileInfo folder(QFileInfo(path).absolutePath());
    if (!folder.isDir())
        throw storeError(ProblemKind::cannotWrite, PADSIDE_SAY("There is no folder {0}: make it first."),
                         {folder.filePath().toStdString()});
    // Made under another name, so that a half-made file is never taken for a whole one.
    const QString temporary = path + u".part-%1"_s.arg(::getpid());
    removeDatabaseFiles(temporary);
    try {
        {
            Connection connection(temporary, Connection::Mode::readWrite);
            connection.run("PRAGMA application_id = " + std::to_string(applicationId));
            bringUpToDate(connection, migrations());
            connection.useWriteAheadLog(); // last, so that the header is complete before anything lives in the log
        }
        publishDatabase(temporary, path);
        removeDatabaseFiles(temporary);
    } catch (...) {
        removeDatabaseFiles(temporary);
        throw;
    }
}

OpenedFile openRecordFile(const QString& path, bool onlyToRead, std::span<const Migration> steps)
{
    requireRecordFile(path);
    const int latest = latestVersion(steps);
    Checked reading = openToRead(path);
    if (reading.version > latest) {
        Sentence because{
            PADSIDE_SAY("{0} was written by a newer Padside (version {1} of the file, this one knows {2}): it is "
                        "open for reading only. Update the program to write to it."),
            {path.toStdString(), std::int64_t{reading.version}, std::int64_t{latest}}};
        return {std::move(reading.connection), std::move(because), {}};
    }
    if (onlyToRead && reading.version < latest)
        throw olderButNotWritable(path);
    if (onlyToRead)
        return {std::move(reading.connection), std::nullopt, {}};

    auto writing = openToWrite(path);
    if (!writing && reading.version < latest)
        throw olderButNotWritable(path);
    if (!writing) {
        Sentence because{
            PADSIDE_SAY("{0} can't be written to: it is open for reading only. Check who may write to the file and "
                        "its folder."),
            {path.toStdString()}};
        return {std::move(reading.connection), std::move(because), {}};
    }
    reading.connection.reset();
    QString backup = bringUpToDate(*writing->connection, steps);
    return {std::move(writing->connection), std::nullopt, std::move(backup)};
}

} // namespace padside
