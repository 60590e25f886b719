// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/rows.h"
#include "core/store/seal.h"
#include "core/store/statement_text.h"
#include "core/store/transaction.h"

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

const std::string allOpenVisits
    = selectText(visitColumns, "visit WHERE closed_at IS NULL ORDER BY visited_on, opened_at, id");
const std::string openVisitOfUnit = selectText(visitColumns, "visit WHERE unit_id = ? AND closed_at IS NULL");
const std::string oneVisit = selectText(visitColumns, "visit WHERE id = ?");

void requireVisit(int changed)
{
    if (changed == 0)
        throw storeError(ProblemKind::refused, PADSIDE_SAY("The visit is not in the file: open it first."));
}

void keepForecast(Connection& connection, const KeptForecast& forecast)
{
    static const QString sql = insertText("forecast", forecastColumns);
    connection.write(sql,
                     {bound(forecast.unitId), bound(forecast.on), bound(forecast.visitId), bound(forecast.zoneId),
                      forecast.grade ? bound(numeral(*forecast.grade)) : QVariant(), bound(forecast.chances[0]),
                      bound(forecast.chances[1]), bound(forecast.chances[2]), bound(forecast.chances[3]),
                      bound(forecast.dates.early), bound(forecast.dates.middle), bound(forecast.dates.late)});
}

std::optional<Visit> firstVisit(Cursor& row)
{
    return row.next() ? std::optional<Visit>(readVisit(row)) : std::nullopt;
}

} // namespace

VisitBook::VisitBook(Connection& connection)
    : m_connection(connection)
{
}

void VisitBook::open(const Visit& visit)
{
    if (!visit.isOpen())
        throw storeError(ProblemKind::badInput, PADSIDE_SAY("A visit begins open: close it once its entries are in."));
    static const QString sql = insertText("visit", visitColumns);
    m_connection.write(sql,
                       {bound(visit.id), bound(visit.unitId), bound(visit.on), bound(visit.reason),
                        bound(visit.technician), bound(visit.conditions.airTemperatureK),
                        bound(visit.conditions.relativeHumidity), bound(visit.conditions.sky),
                        bound(visit.conditions.running), bound(visit.note), bound(visit.openedAt), QVariant()});
}

std::vector<Visit> VisitBook::openVisits() const
{
    std::vector<Visit> visits;
    Cursor row(m_connection, allOpenVisits);
    while (row.next())
        visits.push_back(readVisit(row));
    return visits;
}

std::optional<Visit> VisitBook::openVisitOf(UnitId unit) const
{
    Cursor row(m_connection, openVisitOfUnit);
    row.bind(1, unit);
    return firstVisit(row);
}

std::optional<Visit> VisitBook::visit(VisitId id) const
{
    Cursor row(m_connection, oneVisit);
    row.bind(1, id);
    return firstVisit(row);
}

void VisitBook::change(const Visit& visit)
{
    // Unit and day are set too, so that the schema refuses a visit whose unit or day was changed.
    const int changed = m_connection.write(
        u"UPDATE visit SET unit_id = ?, visited_on = ?, reason = ?, technician = ?, air_temperature_k = ?, "
        "relative_humidity = ?, sky = ?, running = ?, note = ? WHERE id = ?"_s,
        {bound(visit.unitId), bound(visit.on), bound(visit.reason), bound(visit.technician),
         bound(visit.conditions.airTemperatureK), bound(visit.conditions.relativeHumidity), bound(visit.conditions.sky),
         bound(visit.conditions.running), bound(visit.note), bound(visit.id)});
    requireVisit(changed);
}

void VisitBook::close(VisitId id, const Instant& at, std::span<const KeptForecast> forecasts)
{
    Transaction transaction(m_connection);
    const auto closing = visit(id);
    requireVisit(closing ? 1 : 0);
    for (const KeptForecast& forecast : forecasts)
        keepForecast(m_connection, forecast);
    const std::string seal = sealOf(m_connection, closing->unitId, id);
    m_connection.write(u"UPDATE visit SET closed_at = ?, seal = ? WHERE id = ?"_s, {bound(at), bound(seal), bound(id)});
    transaction.commit();
}

void VisitBook::discard(VisitId id)
{
    Transaction transaction(m_connection);
    const auto leaving = visit(id);
    requireVisit(leaving ? 1 : 0);
    for (const QString& table : {u"finding"_s, u"reading"_s, u"treatment"_s, u"photo"_s, u"charge_entry"_s})
        m_connection.write(u"DELETE FROM %1 WHERE unit_id = ? AND visited_on = ? AND visit_id = ?"_s.arg(table),
                           {bound(leaving->unitId), bound(leaving->on), bound(id)});
    m_connection.write(
        u"UPDATE follow_up SET settled_at = NULL, settled_note = '' WHERE unit_id = ? AND settled_at = ?"_s,
        {bound(leaving->unitId), bound(id)});
    m_connection.write(u"DELETE FROM follow_up WHERE unit_id = ? AND made_at = ?"_s,
                       {bound(leaving->unitId), bound(id)});
    m_connection.write(u"DELETE FROM visit WHERE id = ?"_s, {bound(id)});
    transaction.commit();
}

} // namespace padside
