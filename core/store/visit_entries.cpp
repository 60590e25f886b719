// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/quantity_code.h"
#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/photo_path.h"
#include "core/store/rows.h"
#include "core/store/statement_text.h"
#include "core/store/transaction.h"
#include "core/store/visit_book.h"

#include <QFileInfo>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr std::string_view entryKey = "unit_id, visited_on, id";

/// What every entry has, in the order of its columns.
template <typename AnyEntry> QVariantList boundEntry(const AnyEntry& entry)
{
    return {bound(entry.id),
            bound(entry.unitId),
            bound(entry.visitId),
            bound(entry.on),
            bound(entry.enteredAt),
            entry.correction ? bound(entry.correction->of) : QVariant(),
            entry.correction ? bound(entry.correction->reason) : QVariant()};
}

QVariantList boundMeasure(const Measure& measure)
{
    return {bound(measure.si), bound(measure.kind), bound(measure.unitCode), bound(measure.typed)};
}

/// Money is kept in hundredths, so that sums stay exact.
QVariant boundCost(const std::optional<double>& cost)
{
    if (!cost)
        return {};
    const double cents = std::round(*cost * 100);
    if (!std::isfinite(cents) || std::abs(cents) > 1e15 || std::abs(cents - *cost * 100) > 1e-6 * std::max(1.0, cents))
        throw storeError(ProblemKind::badInput,
                         PADSIDE_SAY("A cost of {0} can't be kept: give it with at most two decimals."),
                         {Number{*cost, 4}});
    return bound(static_cast<std::int64_t>(cents));
}

template <typename AnyEntry> void removeEntry(Connection& connection, const QString& table, const AnyEntry& entry)
{
    const QString sql = u"DELETE FROM %1 WHERE unit_id = ? AND visited_on = ? AND id = ?"_s.arg(table);
    if (connection.write(sql, {bound(entry.unitId), bound(entry.on), bound(entry.id)}) == 0)
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("The entry is not in the file: it may have been removed before."));
}

} // namespace

void VisitBook::put(const Finding& finding)
{
    static const QString sql = upsertText("finding", findingColumns, entryKey);
    const NotSeenReason* notSeen = std::get_if<NotSeenReason>(&finding.sight);
    const auto grade = finding.grade();
    Transaction transaction(m_connection);
    if (!finding.correction)
        m_connection.write(u"DELETE FROM finding WHERE visit_id = ? AND zone_id = ? AND phase = ? AND corrects IS NULL "
                           "AND id <> ?"_s,
                           {bound(finding.visitId), bound(finding.zoneId), bound(finding.phase), bound(finding.id)});
    m_connection.write(sql,
                       boundEntry(finding)
                           << bound(finding.zoneId) << bound(finding.phase)
                           << (grade ? bound(numeral(*grade)) : QVariant()) << (notSeen ? bound(*notSeen) : QVariant())
                           << bound(finding.wetness) << bound(finding.note));
    transaction.commit();
}

void VisitBook::put(const Reading& reading)
{
    static const QString sql = upsertText("reading", readingColumns, entryKey);
    m_connection.write(sql,
                       boundEntry(reading)
                           << bound(reading.kind) << bound(reading.partId) << bound(reading.zoneId)
                           << bound(reading.phase) << boundMeasure(reading.value) << bound(reading.note));
}

void VisitBook::put(const Treatment& treatment)
{
    static const QString sql = upsertText("treatment", treatmentColumns, entryKey);
    m_connection.write(sql,
                       boundEntry(treatment)
                           << bound(treatment.kind) << bound(treatment.partId) << bound(treatment.zoneId)
                           << bound(treatment.product) << bound(treatment.note) << bound(treatment.dryBy)
                           << boundCost(treatment.cost));
}

void VisitBook::put(const ChargeEntry& charge)
{
    static const QString sql = upsertText("charge_entry", chargeColumns, entryKey);
    m_connection.write(sql,
                       boundEntry(charge)
                           << bound(charge.direction) << bound(charge.refrigerant) << boundMeasure(charge.mass)
                           << bound(charge.cylinder) << bound(charge.because));
}

void VisitBook::put(const Photo& photo)
{
    static const QString sql = upsertText("photo", photoColumns, entryKey);
    const QString path = photoPath(photoFolderOf(m_connection.path()), photo.sha256, photo.mediaType);
    if (!QFileInfo::exists(path))
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("The photograph {0} is not in the photo folder ({1}): add the picture again."),
                         {photo.originalName, path.toStdString()});
    m_connection.write(sql,
                       boundEntry(photo) << bound(photo.zoneId) << bound(photo.phase) << bound(photo.sha256)
                                         << bound(photo.mediaType) << bound(photo.originalName) << bound(photo.bytes)
                                         << bound(photo.width) << bound(photo.height) << bound(photo.takenAt)
                                         << bound(photo.caption));
}

void VisitBook::put(const FollowUp& followUp)
{
    static const QString sql = upsertText("follow_up", followUpColumns, "unit_id, id");
    m_connection.write(sql,
                       {bound(followUp.id), bound(followUp.unitId), bound(followUp.zoneId), bound(followUp.madeAt),
                        bound(followUp.earliest), bound(followUp.latest), bound(followUp.conditions),
                        bound(followUp.why), bound(followUp.settledAt), bound(followUp.settledNote)});
}

void VisitBook::remove(const Finding& finding)
{
    removeEntry(m_connection, u"finding"_s, finding);
}

void VisitBook::remove(const Reading& reading)
{
    removeEntry(m_connection, u"reading"_s, reading);
}

void VisitBook::remove(const Treatment& treatment)
{
    removeEntry(m_connection, u"treatment"_s, treatment);
}

void VisitBook::remove(const ChargeEntry& charge)
{
    removeEntry(m_connection, u"charge_entry"_s, charge);
}

void VisitBook::remove(const Photo& photo)
{
    removeEntry(m_connection, u"photo"_s, photo);
}

void VisitBook::remove(const FollowUp& followUp)
{
    const int changed = m_connection.write(u"DELETE FROM follow_up WHERE unit_id = ? AND id = ?"_s,
                                           {bound(followUp.unitId), bound(followUp.id)});
    if (changed == 0)
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("The entry is not in the file: it may have been removed before."));
}

} // namespace padside
