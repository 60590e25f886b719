// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/rows.h"

#include "core/record/quantity_code.h"

namespace padside {

namespace {

constexpr int firstOwnColumn = 7; ///< of an entry, after what all entries have

template <typename AnyEntry> AnyEntry readEntry(const Cursor& row)
{
    using EntryId = decltype(AnyEntry::id);
    AnyEntry entry;
    entry.id = row.id<EntryId>(0);
    entry.unitId = row.id<UnitId>(1);
    entry.visitId = row.id<VisitId>(2);
    entry.on = row.date(3);
    entry.enteredAt = row.instant(4);
    if (!row.isNull(5))
        entry.correction = Correction<EntryId>{row.id<EntryId>(5), row.text(6)};
    return entry;
}

Grade readGrade(const Cursor& row, int column)
{
    const auto grade = gradeFromNumeral(static_cast<int>(row.integer(column)));
    if (!grade)
        row.damaged(column);
    return *grade;
}

std::optional<Grade> readOptionalGrade(const Cursor& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(readGrade(row, column));
}

/// Four columns: si, quantity, unit_code, typed.
Measure readMeasure(const Cursor& row, int first)
{
    return {row.real(first), row.code<QuantityKind>(first + 1), row.text(first + 2), row.text(first + 3)};
}

} // namespace

Site readSite(const Cursor& row)
{
    Site site;
    site.id = row.id<SiteId>(0);
    site.name = row.text(1);
    site.address = row.text(2);
    site.contact = row.text(3);
    site.access = row.text(4);
    site.altitudeM = row.real(5);
    site.air = {row.optionalReal(6), row.optionalReal(7), row.optionalReal(8), row.optionalReal(9)};
    site.spring = {static_cast<int>(row.integer(10)), static_cast<int>(row.integer(11))};
    site.fall = {static_cast<int>(row.integer(12)), static_cast<int>(row.integer(13))};
    site.note = row.text(14);
    site.retiredOn = row.optionalDate(15);
    return site;
}

Unit readUnit(const Cursor& row)
{
    Unit unit;
    unit.id = row.id<UnitId>(0);
    unit.siteId = row.id<SiteId>(1);
    unit.tag = row.text(2);
    unit.kind = row.text(3);
    unit.maker = row.text(4);
    unit.model = row.text(5);
    unit.serial = row.text(6);
    unit.place = row.text(7);
    unit.refrigerant = row.text(8);
    unit.metering = row.code<Metering>(9);
    unit.installedOn = row.optionalDate(10);
    unit.retiredOn = row.optionalDate(11);
    unit.note = row.text(12);
    return unit;
}

NameplateValue readNameplateValue(const Cursor& row)
{
    return {row.text(1), readMeasure(row, 2)};
}

Part readPart(const Cursor& row)
{
    Part part;
    part.id = row.id<PartId>(0);
    part.unitId = row.id<UnitId>(1);
    part.kind = row.text(2);
    part.position = row.text(3);
    part.maker = row.text(4);
    part.model = row.text(5);
    part.fittedOn = row.optionalDate(6);
    part.removedOn = row.optionalDate(7);
    part.removedBecause = row.text(8);
    part.replaces = row.optionalId<PartId>(9);
    part.note = row.text(10);
    return part;
}

Zone readZone(const Cursor& row)
{
    return {row.id<ZoneId>(0), row.id<PartId>(1), row.text(2), row.text(3)};
}

Visit readVisit(const Cursor& row)
{
    Visit visit;
    visit.id = row.id<VisitId>(0);
    visit.unitId = row.id<UnitId>(1);
    visit.on = row.date(2);
    visit.reason = row.code<VisitReason>(3);
    visit.technician = row.text(4);
    visit.conditions = {row.optionalReal(5), row.optionalReal(6), row.code<Sky>(7), row.code<Running>(8)};
    visit.note = row.text(9);
    visit.openedAt = row.instant(10);
    visit.closedAt = row.optionalInstant(11);
    return visit;
}

Finding readFinding(const Cursor& row)
{
    auto finding = readEntry<Finding>(row);
    finding.zoneId = row.id<ZoneId>(firstOwnColumn);
    finding.phase = row.code<Phase>(firstOwnColumn + 1);
    if (row.isNull(firstOwnColumn + 2)) {
        finding.sight = row.code<NotSeenReason>(firstOwnColumn + 3);
    } else {
        finding.sight = readGrade(row, firstOwnColumn + 2);
    }
    if (!row.isNull(firstOwnColumn + 4))
        finding.wetness = row.code<Wetness>(firstOwnColumn + 4);
    finding.note = row.text(firstOwnColumn + 5);
    return finding;
}

Reading readReading(const Cursor& row)
{
    auto reading = readEntry<Reading>(row);
    reading.kind = row.text(firstOwnColumn);
    reading.partId = row.optionalId<PartId>(firstOwnColumn + 1);
    reading.zoneId = row.optionalId<ZoneId>(firstOwnColumn + 2);
    reading.phase = row.code<Phase>(firstOwnColumn + 3);
    reading.value = readMeasure(row, firstOwnColumn + 4);
    reading.note = row.text(firstOwnColumn + 8);
    return reading;
}

Treatment readTreatment(const Cursor& row)
{
    auto treatment = readEntry<Treatment>(row);
    treatment.kind = row.code<TreatmentKind>(firstOwnColumn);
    treatment.partId = row.id<PartId>(firstOwnColumn + 1);
    treatment.zoneId = row.optionalId<ZoneId>(firstOwnColumn + 2);
    treatment.product = row.text(firstOwnColumn + 3);
    treatment.note = row.text(firstOwnColumn + 4);
    treatment.dryBy = row.optionalInstant(firstOwnColumn + 5);
    if (!row.isNull(firstOwnColumn + 6))
        treatment.cost = static_cast<double>(row.integer(firstOwnColumn + 6)) / 100.0;
    return treatment;
}

Photo readPhoto(const Cursor& row)
{
    auto photo = readEntry<Photo>(row);
    photo.zoneId = row.optionalId<ZoneId>(firstOwnColumn);
    photo.phase = row.code<Phase>(firstOwnColumn + 1);
    photo.sha256 = row.text(firstOwnColumn + 2);
    photo.mediaType = row.text(firstOwnColumn + 3);
    photo.originalName = row.text(firstOwnColumn + 4);
    photo.bytes = row.integer(firstOwnColumn + 5);
    photo.width = static_cast<int>(row.integer(firstOwnColumn + 6));
    photo.height = static_cast<int>(row.integer(firstOwnColumn + 7));
    photo.takenAt = row.optionalInstant(firstOwnColumn + 8);
    photo.caption = row.text(firstOwnColumn + 9);
    return photo;
}

ChargeEntry readCharge(const Cursor& row)
{
    auto charge = readEntry<ChargeEntry>(row);
    charge.direction = row.code<ChargeDirection>(firstOwnColumn);
    charge.refrigerant = row.text(firstOwnColumn + 1);
    charge.mass = readMeasure(row, firstOwnColumn + 2);
    charge.cylinder = row.text(firstOwnColumn + 6);
    charge.because = row.text(firstOwnColumn + 7);
    return charge;
}

FollowUp readFollowUp(const Cursor& row)
{
    FollowUp followUp;
    followUp.id = row.id<FollowUpId>(0);
    followUp.unitId = row.id<UnitId>(1);
    followUp.zoneId = row.optionalId<ZoneId>(2);
    followUp.madeAt = row.id<VisitId>(3);
    followUp.earliest = row.date(4);
    followUp.latest = row.date(5);
    followUp.conditions = row.text(6);
    followUp.why = row.text(7);
    followUp.settledAt = row.optionalId<VisitId>(8);
    followUp.settledNote = row.text(9);
    return followUp;
}

KeptForecast readForecast(const Cursor& row)
{
    return {row.id<UnitId>(0),
            row.id<VisitId>(2),
            row.date(1),
            row.id<ZoneId>(3),
            readOptionalGrade(row, 4),
            {row.real(5), row.real(6), row.real(7), row.real(8)},
            {row.optionalDate(9), row.optionalDate(10), row.optionalDate(11)}};
}

Acknowledgement readAcknowledgement(const Cursor& row)
{
    return {row.id<AcknowledgementId>(0),
            row.id<UnitId>(1),
            row.text(2),
            row.optionalId<PartId>(3),
            row.optionalId<ZoneId>(4),
            row.code<Severity>(5),
            readOptionalGrade(row, 6),
            row.optionalReal(7),
            row.text(8),
            row.text(9),
            row.instant(10),
            row.optionalInstant(11)};
}

UnitAssumption readAssumption(const Cursor& row)
{
    return {row.text(0), row.real(1)};
}

} // namespace padside
