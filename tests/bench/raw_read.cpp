// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/raw_read.h"

#include "core/store/rows.h"

#include <sqlite3.h>
#include <stdexcept>

namespace padside::bench {

RawRead::RawRead(const QString& path)
{
    if (sqlite3_open_v2(path.toUtf8().constData(), &m_handle, SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX, nullptr)
        != SQLITE_OK)
        throw std::runtime_error("the fleet's file can't be opened");
    const auto select = [this](std::string_view columns, const std::string& rest) {
        return prepare("SELECT " + std::string(columns) + " FROM " + rest);
    };
    m_unit = {
        select(unitColumns, "unit WHERE id = ?"),
        select(siteColumns, "site WHERE id = (SELECT site_id FROM unit WHERE id = ?)"),
        select(nameplateColumns, "nameplate_value WHERE unit_id = ?"),
        select(partColumns, "part WHERE unit_id = ?"),
        select(zoneColumns, "zone WHERE unit_id = ?"),
        select(visitColumns, "visit WHERE unit_id = ?"),
        select(findingColumns, "finding WHERE unit_id = ? ORDER BY visited_on, id"),
        select(readingColumns, "reading WHERE unit_id = ? ORDER BY visited_on, id"),
        select(treatmentColumns, "treatment WHERE unit_id = ? ORDER BY visited_on, id"),
        select(photoColumns, "photo WHERE unit_id = ? ORDER BY visited_on, id"),
        select(chargeColumns, "charge_entry WHERE unit_id = ? ORDER BY visited_on, id"),
        select(followUpColumns, "follow_up WHERE unit_id = ?"),
    };
    m_records = {
        select(siteColumns, "site"),
        select(unitColumns, "unit"),
        select(nameplateColumns, "nameplate_value"),
        select(partColumns, "part"),
        select(zoneColumns, "zone"),
        select(visitColumns, "visit"),
        select(findingColumns, "finding"),
        select(readingColumns, "reading"),
        select(treatmentColumns, "treatment"),
        select(photoColumns, "photo"),
        select(chargeColumns, "charge_entry"),
        select(followUpColumns, "follow_up"),
    };
    m_lines = {
        select("unit.id, unit.site_id, site.name, unit.tag, unit.kind, unit.place, unit.retired_on, unit.installed_on",
               "unit JOIN site ON site.id = unit.site_id ORDER BY site.name, site.id, unit.tag"),
        select("unit_id, visited_on, closed_at", "visit"),
        select("zone.id",
               "zone JOIN part ON part.unit_id = zone.unit_id AND part.id = zone.part_id "
               "WHERE part.removed_on IS NULL"),
    };
    m_grades = select("unit_id, visited_on, id, zone_id, grade, corrects",
                      "finding WHERE phase = 'as-found' ORDER BY unit_id, visited_on, id");
}

RawRead::~RawRead()
{
    for (sqlite3_stmt* statement : m_unit)
        sqlite3_finalize(statement);
    for (sqlite3_stmt* statement : m_records)
        sqlite3_finalize(statement);
    for (sqlite3_stmt* statement : m_lines)
        sqlite3_finalize(statement);
    sqlite3_finalize(m_grades);
    sqlite3_close(m_handle);
}

sqlite3_stmt* RawRead::prepare(const std::string& sql) const
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_handle, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    return statement;
}

std::uint64_t RawRead::touchAll(sqlite3_stmt* statement)
{
    const int columns = sqlite3_column_count(statement);
    std::uint64_t sum = 0;
    while (sqlite3_step(statement) == SQLITE_ROW) {
        ++m_rows;
        for (int column = 0; column < columns; ++column) {
            switch (sqlite3_column_type(statement, column)) {
            case SQLITE_INTEGER:
                sum += static_cast<std::uint64_t>(sqlite3_column_int64(statement, column));
                break;
            case SQLITE_FLOAT:
                sum += static_cast<std::uint64_t>(sqlite3_column_double(statement, column));
                break;
            case SQLITE_NULL:
                break;
            default: { // text and bytes
                const auto* bytes = static_cast<const unsigned char*>(sqlite3_column_blob(statement, column));
                const int size = sqlite3_column_bytes(statement, column);
                sum += bytes && size > 0 ? bytes[size - 1] : 0U;
            }
            }
        }
    }
    sqlite3_reset(statement);
    return sum;
}

std::uint64_t RawRead::unit(UnitId id)
{
    m_rows = 0;
    std::uint64_t sum = 0;
    sqlite3_exec(m_handle, "BEGIN", nullptr, nullptr, nullptr); // one moment of the file, as the store reads it
    for (sqlite3_stmt* statement : m_unit) {
        sqlite3_bind_blob(statement, 1, id.bytes().data(), 16, SQLITE_TRANSIENT);
        sum += touchAll(statement);
    }
    sqlite3_exec(m_handle, "ROLLBACK", nullptr, nullptr, nullptr);
    return sum;
}

std::uint64_t RawRead::allRecords()
{
    m_rows = 0;
    std::uint64_t sum = 0;
    for (sqlite3_stmt* statement : m_records)
        sum += touchAll(statement);
    return sum;
}

std::uint64_t RawRead::lastTwoGrades()
{
    m_rows = 0;
    return touchAll(m_grades);
}

std::uint64_t RawRead::fleetLines()
{
    m_rows = 0;
    std::uint64_t sum = touchAll(m_grades);
    for (sqlite3_stmt* statement : m_lines)
        sum += touchAll(statement);
    return sum;
}

} // namespace padside::bench
