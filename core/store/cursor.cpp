// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/cursor.h"

#include "core/store/connection.h"

#include <algorithm>
#include <cstring>
#include <sqlite3.h>

namespace padside {

Cursor::Cursor(Connection& connection, std::string_view sql)
    : m_connection(connection)
    , m_sql(sql)
    , m_statement(connection.borrow(sql))
{
}

Cursor::~Cursor()
{
    m_connection.giveBack(m_sql, m_statement);
}

void Cursor::bindBytes(int parameter, const void* bytes, std::size_t size)
{
    if (sqlite3_bind_blob(m_statement, parameter, bytes, static_cast<int>(size), SQLITE_TRANSIENT) != SQLITE_OK)
        m_connection.fail(sqlite3_extended_errcode(m_connection.handle()), std::string(m_sql));
}

Cursor& Cursor::bind(int parameter, std::string_view text)
{
    const int code
        = sqlite3_bind_text(m_statement, parameter, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
    if (code != SQLITE_OK)
        m_connection.fail(sqlite3_extended_errcode(m_connection.handle()), std::string(m_sql));
    return *this;
}

bool Cursor::next()
{
    const int code = sqlite3_step(m_statement);
    if (code == SQLITE_ROW)
        return true;
    if (code != SQLITE_DONE)
        m_connection.fail(sqlite3_extended_errcode(m_connection.handle()), std::string(m_sql));
    return false;
}

int Cursor::columnCount() const
{
    return sqlite3_column_count(m_statement);
}

bool Cursor::isNull(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
}

bool Cursor::isReal(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_FLOAT;
}

std::int64_t Cursor::integer(int column) const
{
    return sqlite3_column_int64(m_statement, column);
}

double Cursor::real(int column) const
{
    return sqlite3_column_double(m_statement, column);
}

std::string_view Cursor::view(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement, column));
    return bytes ? std::string_view(bytes, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column)))
                 : std::string_view();
}

Date Cursor::date(int column) const
{
    const std::string_view text = view(column);
    if (text == std::string_view(m_lastDateText.data(), m_lastDateText.size()))
        return m_lastDate;
    const auto date = parseDate(text);
    if (!date)
        damaged(column);
    std::ranges::copy(text, m_lastDateText.begin());
    m_lastDate = *date;
    return *date;
}

Instant Cursor::instant(int column) const
{
    const auto instant = parseInstant(view(column));
    if (!instant)
        damaged(column);
    return *instant;
}

std::optional<double> Cursor::optionalReal(int column) const
{
    return isNull(column) ? std::nullopt : std::optional<double>(real(column));
}

std::optional<Date> Cursor::optionalDate(int column) const
{
    return isNull(column) ? std::nullopt : std::optional<Date>(date(column));
}

std::optional<Instant> Cursor::optionalInstant(int column) const
{
    return isNull(column) ? std::nullopt : std::optional<Instant>(instant(column));
}

UuidBytes Cursor::uuid(int column) const
{
    const std::string_view bytes = view(column);
    UuidBytes result{};
    if (bytes.size() != result.size())
        damaged(column);
    std::memcpy(result.data(), bytes.data(), result.size());
    return result;
}

void Cursor::damaged(int column) const
{
    const char* name = sqlite3_column_name(m_statement, column);
    throw StoreError(
        Problem{ProblemKind::cannotRead,
                {PADSIDE_SAY("The file {0} holds \"{1}\" as {2}, which can't be understood: it is damaged or "
                             "newer than this program. Open the latest backup."),
                 {m_connection.path().toStdString(), text(column), std::string(name ? name : "?")}}},
        0, std::string(m_sql));
}

} // namespace padside
