// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"

#include "core/record/reading_order.h"
#include "core/store/cursor.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>

#include <atomic>
#include <sqlite3.h>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

QString uniqueName()
{
    static std::atomic<int> counter{0};
    return u"padside-%1"_s.arg(++counter);
}

/// The sqlite3* behind Qt's driver. Debian's driver links the same library as we do; anything else would be unsafe to
/// share.
sqlite3* handleOf(const QSqlDatabase& database)
{
    const QVariant handle = database.driver()->handle();
    const bool sameLibrary
        = qstrcmp(handle.typeName(), "sqlite3*") == 0 && sqlite3_libversion_number() == SQLITE_VERSION_NUMBER;
    return sameLibrary ? *static_cast<sqlite3* const*>(handle.constData()) : nullptr;
}

int compareInReadingOrder(void* /*nothing of ours*/, int length, const void* text, int otherLength, const void* other)
{
    return inReadingOrder({static_cast<const char*>(text), static_cast<std::size_t>(length)},
                          {static_cast<const char*>(other), static_cast<std::size_t>(otherLength)});
}

} // namespace

Connection::Connection(QString path, Mode mode)
    : m_path(std::move(path))
    , m_name(uniqueName())
{
    try {
        open(mode);
    } catch (...) {
        close();
        throw;
    }
}

Connection::~Connection()
{
    close();
}

void Connection::open(Mode mode)
{
    m_database = QSqlDatabase::addDatabase(u"QSQLITE"_s, m_name);
    if (!m_database.isValid())
        throw storeError(ProblemKind::cannotRead,
                         PADSIDE_SAY("The SQLite driver of Qt is missing: install libqt6sql6-sqlite."));
    QString options = u"QSQLITE_BUSY_TIMEOUT=5000"_s;
    if (mode != Mode::readWrite)
        options += u";QSQLITE_OPEN_READONLY"_s;
    m_database.setDatabaseName(m_path);
    if (mode == Mode::unchanging) {
        options += u";QSQLITE_OPEN_URI"_s;
        m_database.setDatabaseName(QString::fromUtf8(QUrl::fromLocalFile(m_path).toEncoded()) + u"?immutable=1"_s);
    }
    m_database.setConnectOptions(options);
    if (!m_database.open())
        throw sqliteFailure(m_database.lastError().nativeErrorCode().toInt(),
                            m_database.lastError().databaseText().toStdString(), m_path.toStdString(), "open");
    m_handle = handleOf(m_database);
    if (!m_handle)
        throw storeError(
            ProblemKind::cannotRead,
            PADSIDE_SAY("Qt's SQLite driver and this program use different SQLite libraries: install Qt and "
                        "SQLite from one source."));
    // For ORDER BY only: an index or a column with it would make the file unreadable to other programs.
    const int collated = sqlite3_create_collation(m_handle, "reading", SQLITE_UTF8, nullptr, compareInReadingOrder);
    if (collated != SQLITE_OK)
        fail(collated, "create the collation");
    run("PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA synchronous = FULL; PRAGMA recursive_triggers = "
        "ON");
}

void Connection::close()
{
    m_writes.clear();
    for (const auto& [sql, statement] : m_reads)
        sqlite3_finalize(statement);
    m_reads.clear();
    m_database.close();
    m_database = {};
    QSqlDatabase::removeDatabase(m_name);
}

bool Connection::isReadOnly() const
{
    return sqlite3_db_readonly(m_handle, "main") == 1;
}

bool Connection::inTransaction() const
{
    return sqlite3_get_autocommit(m_handle) == 0;
}

void Connection::fail(int code, const std::string& statement) const
{
    throw sqliteFailure(code, sqlite3_errmsg(m_handle), m_path.toStdString(), statement);
}

void Connection::run(const std::string& sql)
{
    if (sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        fail(sqlite3_extended_errcode(m_handle), sql);
}

void Connection::useWriteAheadLog()
{
    const std::string answer = text("PRAGMA journal_mode = WAL");
    if (answer != "wal" && answer != "delete")
        throw storeError(ProblemKind::cannotWrite,
                         PADSIDE_SAY("{0} can't be written safely here (journal mode {1}): move it to another disk."),
                         {m_path.toStdString(), answer});
}

void Connection::requireUnbroken() const
{
    if (m_transactions > 0 && !inTransaction())
        throw storeError(ProblemKind::cannotWrite,
                         PADSIDE_SAY("An earlier step failed and everything of this action was undone: try it again."));
}

int Connection::write(const QString& sql, const QVariantList& values)
{
    requireUnbroken();
    auto found = m_writes.find(sql);
    if (found == m_writes.end()) {
        QSqlQuery query(m_database);
        query.setForwardOnly(true);
        if (!query.prepare(sql))
            fail(query.lastError().nativeErrorCode().toInt(), sql.toStdString());
        found = m_writes.emplace(sql, std::move(query)).first;
    }
    QSqlQuery& query = found->second;
    for (int place = 0; place < values.size(); ++place)
        query.bindValue(place, values[place]);
    if (!query.exec()) {
        const int code = query.lastError().nativeErrorCode().toInt();
        const std::string message = query.lastError().databaseText().toStdString();
        query.finish();
        throw sqliteFailure(code, message, m_path.toStdString(), sql.toStdString());
    }
    const int changed = query.numRowsAffected();
    query.finish();
    return changed;
}

std::int64_t Connection::number(const std::string& sql)
{
    Cursor cursor(*this, sql);
    return cursor.next() ? cursor.integer(0) : 0;
}

std::string Connection::text(const std::string& sql)
{
    Cursor cursor(*this, sql);
    return cursor.next() ? cursor.text(0) : std::string();
}

sqlite3_stmt* Connection::borrow(std::string_view sql)
{
    const auto found = m_reads.find(sql);
    if (found != m_reads.end() && found->second != nullptr)
        return std::exchange(found->second, nullptr);
    sqlite3_stmt* statement = nullptr;
    const int code = sqlite3_prepare_v3(m_handle, sql.data(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT,
                                        &statement, nullptr);
    if (code != SQLITE_OK)
        fail(sqlite3_extended_errcode(m_handle), std::string(sql));
    return statement;
}

void Connection::giveBack(std::string_view sql, sqlite3_stmt* statement)
{
    sqlite3_reset(statement);
    sqlite3_clear_bindings(statement);
    const auto found = m_reads.find(sql);
    if (found == m_reads.end())
        m_reads.emplace(std::string(sql), statement);
    else if (found->second == nullptr)
        found->second = statement;
    else
        sqlite3_finalize(statement);
}

} // namespace padside
