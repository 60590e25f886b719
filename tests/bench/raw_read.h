// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/id.h"

#include <QString>

#include <cstdint>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace padside::bench {

/// What SQLite itself needs for the same rows: its C interface, statements prepared once, every column touched, nothing
/// kept.
class RawRead
{
public:
    explicit RawRead(const QString& path);
    ~RawRead();
    RawRead(const RawRead&) = delete;
    RawRead& operator=(const RawRead&) = delete;

    /// Every row of every table that a unit's record is made of. Answers a sum over the columns, so that nothing is
    /// skipped.
    std::uint64_t unit(UnitId id);
    /// The findings of all units in key order: the columns that the last two grades need.
    std::uint64_t lastTwoGrades();
    /// Every row that the records of all units are made of, table by table in the order of its key.
    std::uint64_t allRecords();
    /// What the table of all units is made of: units with their sites, visits, zones of fitted parts, and the findings.
    std::uint64_t fleetLines();

    [[nodiscard]] std::uint64_t rows() const { return m_rows; } ///< of the last call

private:
    [[nodiscard]] sqlite3_stmt* prepare(const std::string& sql) const;
    std::uint64_t touchAll(sqlite3_stmt* statement);

    sqlite3* m_handle = nullptr;
    std::vector<sqlite3_stmt*> m_unit;
    std::vector<sqlite3_stmt*> m_records;
    std::vector<sqlite3_stmt*> m_lines;
    sqlite3_stmt* m_grades = nullptr;
    std::uint64_t m_rows = 0;
};

} // namespace padside::bench
