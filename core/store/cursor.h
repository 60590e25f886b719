// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/coded.h"
#include "core/record/id.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace padside {

class Connection;

/// Rows of one SELECT, read forward through SQLite's own interface. The statement is prepared once per connection and
/// reset when the cursor ends. Columns count from 0, parameters from 1. All functions throw StoreError; a value the
/// record can't have means a damaged file.
class Cursor
{
public:
    Cursor(Connection& connection, std::string_view sql); ///< `sql` must outlive the cursor
    ~Cursor();
    Cursor(const Cursor&) = delete;
    Cursor& operator=(const Cursor&) = delete;

    template <typename Tag> Cursor& bind(int parameter, const Id<Tag>& id)
    {
        bindBytes(parameter, id.bytes().data(), id.bytes().size());
        return *this;
    }
    Cursor& bind(int parameter, std::string_view text);

    [[nodiscard]] bool next();

    [[nodiscard]] int columnCount() const;
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] bool isReal(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double real(int column) const;
    [[nodiscard]] std::string_view view(int column) const; ///< text or bytes, until next()
    [[nodiscard]] std::string text(int column) const { return std::string(view(column)); }
    [[nodiscard]] Date date(int column) const;
    [[nodiscard]] Instant instant(int column) const;
    [[nodiscard]] std::optional<double> optionalReal(int column) const;
    [[nodiscard]] std::optional<Date> optionalDate(int column) const;
    [[nodiscard]] std::optional<Instant> optionalInstant(int column) const;

    template <typename AnyId> [[nodiscard]] AnyId id(int column) const { return AnyId(uuid(column)); }
    template <typename AnyId> [[nodiscard]] std::optional<AnyId> optionalId(int column) const
    {
        return isNull(column) ? std::nullopt : std::optional<AnyId>(AnyId(uuid(column)));
    }
    template <typename Enum> [[nodiscard]] Enum code(int column) const
    {
        const auto value = fromCode<Enum>(view(column));
        if (!value)
            damaged(column);
        return *value;
    }

    [[noreturn]] void damaged(int column) const; ///< says which value can't be understood

private:
    void bindBytes(int parameter, const void* bytes, std::size_t size);
    [[nodiscard]] UuidBytes uuid(int column) const;

    Connection& m_connection;
    std::string_view m_sql;
    sqlite3_stmt* m_statement;
    mutable std::array<char, 10> m_lastDateText{}; ///< rows of one visit share their date: read it once
    mutable Date m_lastDate{};
};

} // namespace padside
