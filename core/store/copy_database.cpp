// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/copy_database.h"

#include "core/store/connection.h"
#include "core/store/durable_file.h"

#include <QFileInfo>

#include <memory>
#include <sqlite3.h>
#include <unistd.h>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr int pagesPerStep = 256; ///< about 1 MB, so that the caller is heard often
constexpr int waitMilliseconds = 50;
constexpr int longestWaits = 200; ///< 10 s of another program writing without a pause

struct Finish
{
    void operator()(sqlite3_backup* backup) const { sqlite3_backup_finish(backup); }
};

bool copyPages(Connection& from, Connection& to, const std::function<bool(double)>& progress)
{
    const std::unique_ptr<sqlite3_backup, Finish> backup(
        sqlite3_backup_init(to.handle(), "main", from.handle(), "main"));
    if (!backup)
        to.fail(sqlite3_extended_errcode(to.handle()), "backup");
    int waits = 0;
    for (;;) {
        const int code = sqlite3_backup_step(backup.get(), pagesPerStep);
        const int total = sqlite3_backup_pagecount(backup.get());
        const double done = total == 0 ? 1 : 1.0 - static_cast<double>(sqlite3_backup_remaining(backup.get())) / total;
        if (progress && !progress(done))
            return false;
        if (code == SQLITE_DONE)
            return true;
        const bool busy = code == SQLITE_BUSY || code == SQLITE_LOCKED;
        if (busy && ++waits > longestWaits)
            from.fail(code, "backup");
        if (busy)
            sqlite3_sleep(waitMilliseconds);
        else if (code != SQLITE_OK)
            throw sqliteFailure(code, sqlite3_errstr(code), to.path().toStdString(), "backup");
    }
}

void requireSound(Connection& copy)
{
    const std::string answer = copy.text("PRAGMA integrity_check(1)");
    if (answer != "ok")
        throw storeError(ProblemKind::cannotRead,
                         PADSIDE_SAY("The copy is not sound ({0}): the file itself may be damaged. Verify it."),
                         {answer});
}

} // namespace

bool copyDatabase(Connection& connection, const QString& target, const std::function<bool(double)>& progress)
{
    if (QFileInfo::exists(target))
        throw storeError(ProblemKind::refused, PADSIDE_SAY("{0} is there already: choose another name."),
                         {target.toStdString()});
    const QString temporary = target + u".part-%1"_s.arg(::getpid());
    removeDatabaseFiles(temporary);
    try {
        bool finished = false;
        {
            Connection copy(temporary, Connection::Mode::readWrite);
            finished = copyPages(connection, copy, progress);
            if (finished)
                requireSound(copy);
        }
        if (finished)
            publishDatabase(temporary, target);
        removeDatabaseFiles(temporary);
        return finished;
    } catch (...) {
        removeDatabaseFiles(temporary);
        throw;
    }
}

} // namespace padside
