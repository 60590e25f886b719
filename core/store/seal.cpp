// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/seal.h"

#include "core/store/connection.h"
#include "core/store/cursor.h"

#include <QCryptographicHash>

#include <array>
#include <bit>
#include <cstdint>

namespace padside {

namespace {

/// One statement per table: unit and visit come in, every column goes into the seal as text with its length. Frozen
/// with the schema: a later version that adds a column leaves these lists alone.
constexpr std::array<std::string_view, 6> sealed{
    "SELECT 'visit', hex(unit_id), hex(id), visited_on, reason, technician, air_temperature_k, relative_humidity, sky, "
    "running, "
    "note, opened_at FROM visit WHERE unit_id = ? AND id = ?",
    "SELECT 'finding', hex(id), entered_at, hex(zone_id), phase, grade, not_seen_reason, wetness, note FROM finding "
    "WHERE unit_id = ? AND visit_id = ? AND visited_on = ? AND corrects IS NULL ORDER BY id",
    "SELECT 'reading', hex(id), entered_at, kind, hex(part_id), hex(zone_id), phase, si, quantity, unit_code, typed, "
    "note "
    "FROM reading WHERE unit_id = ? AND visit_id = ? AND visited_on = ? AND corrects IS NULL ORDER BY id",
    "SELECT 'treatment', hex(id), entered_at, kind, hex(part_id), hex(zone_id), product, note, dry_by, cost_cents "
    "FROM treatment WHERE unit_id = ? AND visit_id = ? AND visited_on = ? AND corrects IS NULL ORDER BY id",
    "SELECT 'photo', hex(id), entered_at, hex(zone_id), phase, sha256, media_type, original_name, bytes, width, "
    "height, "
    "taken_at, caption FROM photo WHERE unit_id = ? AND visit_id = ? AND visited_on = ? AND corrects IS NULL ORDER BY "
    "id",
    "SELECT 'charge', hex(id), entered_at, direction, refrigerant, si, quantity, unit_code, typed, cylinder, because "
    "FROM charge_entry WHERE unit_id = ? AND visit_id = ? AND visited_on = ? AND corrects IS NULL ORDER BY id",
};

void addValue(QCryptographicHash& hash, const Cursor& row, int column)
{
    if (row.isNull(column)) {
        hash.addData(QByteArrayView("-;"));
        return;
    }
    if (row.isReal(column)) { // its bits: text would round it
        hash.addData('r' + QByteArray::number(static_cast<qulonglong>(std::bit_cast<std::uint64_t>(row.real(column))))
                     + ';');
        return;
    }
    const std::string_view value = row.view(column);
    hash.addData(QByteArray::number(static_cast<qulonglong>(value.size())) + ':');
    hash.addData(QByteArrayView(value.data(), static_cast<qsizetype>(value.size())));
}

} // namespace

std::string sealOf(Connection& connection, UnitId unit, VisitId visit)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    std::string visitedOn;
    for (const std::string_view sql : sealed) {
        Cursor row(connection, sql);
        row.bind(1, unit).bind(2, visit);
        if (!visitedOn.empty())
            row.bind(3, visitedOn);
        while (row.next()) {
            if (visitedOn.empty())
                visitedOn = row.text(3);
            for (int column = 0; column < row.columnCount(); ++column)
                addValue(hash, row, column);
        }
    }
    return hash.result().toHex().toStdString();
}

} // namespace padside
