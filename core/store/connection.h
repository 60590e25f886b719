// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/store/sqlite_failure.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <unordered_map>

struct sqlite3;
struct sqlite3_stmt;

namespace padside {

/// "Padside record file": SQLite's application_id of our files ("PADS").
constexpr int applicationId = 0x50414453;

/// One connection to one file, made by the recipe of DEVELOPERS.md: write-ahead log, every commit synced, foreign keys
/// on. Writes go through Qt's queries; records are read through Cursor, which is quicker. All functions throw
/// StoreError.
class Connection
{
public:
    enum class Mode {
        readWrite,
        readOnly,
        unchanging, ///< read-only, and nothing else writes to it either: works in a folder that can't be written to
    };

    /// Opens the file (readWrite makes it if it is missing). Checks nothing of what is in it.
    Connection(QString path, Mode mode);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] bool isReadOnly() const; ///< as asked for, or because the file can't be written to
    [[nodiscard]] sqlite3* handle() const { return m_handle; }
    [[nodiscard]] bool inTransaction() const;

    /// Throws if a transaction was begun but SQLite has undone it since (after a full disk, say): nothing may follow on
    /// its own.
    void requireUnbroken() const;

    /// Runs one or several statements that give no rows.
    void run(const std::string& sql);

    /// Switches to the write-ahead log; where the file system can't carry one, the slower rollback journal stays.
    void useWriteAheadLog();

    /// Runs a prepared statement that writes; answers the number of rows changed.
    int write(const QString& sql, const QVariantList& values);

    /// The first column of the first row as a number, or 0.
    [[nodiscard]] std::int64_t number(const std::string& sql);
    /// The first column of the first row as text.
    [[nodiscard]] std::string text(const std::string& sql);

    [[noreturn]] void fail(int code, const std::string& statement) const;

private:
    friend class Cursor;
    friend class Transaction;

    struct TextHash
    {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
    };

    [[nodiscard]] sqlite3_stmt* borrow(std::string_view sql);
    void giveBack(std::string_view sql, sqlite3_stmt* statement);
    void open(Mode mode);
    void close();

    QString m_path;
    QString m_name;
    QSqlDatabase m_database;
    sqlite3* m_handle = nullptr;
    std::map<QString, QSqlQuery> m_writes;
    std::unordered_map<std::string, sqlite3_stmt*, TextHash, std::equal_to<>> m_reads;
    int m_transactions = 0; ///< Transaction objects alive
};

} // namespace padside
