// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"

#include <algorithm>
#include <stdexcept>

namespace padside::test {

Date day(const std::string& iso)
{
    const auto date = parseDate(iso);
    if (!date)
        throw std::invalid_argument("not a date in a test: " + iso);
    return *date;
}

RecordBuilder::RecordBuilder(const std::string& tag)
    : m_ids([] { return std::int64_t{1'700'000'000'000}; }, 1)
{
    m_record.site.id = m_ids.make<SiteId>();
    m_record.site.name = "Quay House";
    m_record.unit.id = m_ids.make<UnitId>();
    m_record.unit.siteId = m_record.site.id;
    m_record.unit.tag = tag;
    m_record.unit.kind = "split-air-conditioner";
    m_record.unit.refrigerant = "R-410A";
}

RecordBuilder& RecordBuilder::kind(const std::string& unitKind)
{
    m_record.unit.kind = unitKind;
    return *this;
}

RecordBuilder& RecordBuilder::installed(const std::string& date)
{
    m_record.unit.installedOn = day(date);
    return *this;
}

RecordBuilder& RecordBuilder::withPart(const std::string& partKind, const std::vector<std::string>& zones,
                                       const std::string& fittedOn, const std::string& position)
{
    Part part;
    part.id = m_ids.make<PartId>();
    part.unitId = m_record.unit.id;
    part.kind = partKind;
    part.position = position;
    if (!fittedOn.empty())
        part.fittedOn = day(fittedOn);
    for (const std::string& zone : zones)
        part.zones.push_back(Zone{m_ids.make<ZoneId>(), part.id, zone, zone});
    m_record.parts.push_back(part);
    return *this;
}

RecordBuilder& RecordBuilder::visit(const std::string& date, VisitReason reason, bool closed)
{
    Visit visit;
    visit.id = m_ids.make<VisitId>();
    visit.unitId = m_record.unit.id;
    visit.on = day(date);
    visit.reason = reason;
    visit.technician = "A. Tester";
    visit.openedAt = Instant{visit.on + std::chrono::hours(9), std::chrono::minutes(0)};
    if (closed)
        visit.closedAt = Instant{visit.on + std::chrono::hours(11), std::chrono::minutes(0)};
    m_record.visits.push_back(visit);
    return *this;
}

Instant RecordBuilder::noonOfVisit() const
{
    return Instant{m_record.visits.back().on + std::chrono::hours(10), std::chrono::minutes(0)};
}

template <typename AnyEntry> AnyEntry RecordBuilder::entry()
{
    AnyEntry made;
    made.id = m_ids.make<decltype(made.id)>();
    made.unitId = m_record.unit.id;
    made.visitId = m_record.visits.back().id;
    made.on = m_record.visits.back().on;
    made.enteredAt = noonOfVisit();
    return made;
}

RecordBuilder& RecordBuilder::graded(const std::string& zoneKind, int grade, Phase phase)
{
    auto finding = entry<Finding>();
    finding.zoneId = zone(zoneKind);
    finding.phase = phase;
    finding.sight = static_cast<Grade>(grade);
    m_record.findings.push_back(finding);
    return *this;
}

RecordBuilder& RecordBuilder::notSeen(const std::string& zoneKind, NotSeenReason reason)
{
    auto finding = entry<Finding>();
    finding.zoneId = zone(zoneKind);
    finding.sight = reason;
    m_record.findings.push_back(finding);
    return *this;
}

RecordBuilder& RecordBuilder::wet(Wetness wetness)
{
    m_record.findings.back().wetness = wetness;
    return *this;
}

RecordBuilder& RecordBuilder::noted(const std::string& note)
{
    m_record.findings.back().note = note;
    return *this;
}

RecordBuilder& RecordBuilder::treated(const std::string& zoneKind, TreatmentKind kind, const std::string& product)
{
    auto treatment = entry<Treatment>();
    treatment.kind = kind;
    treatment.zoneId = zone(zoneKind);
    treatment.partId = partOfZone(m_record, *treatment.zoneId)->id;
    treatment.product = product;
    m_record.treatments.push_back(treatment);
    return *this;
}

RecordBuilder& RecordBuilder::read(const std::string& readingKind, double si, QuantityKind kind,
                                   const std::string& unitCode)
{
    auto reading = entry<Reading>();
    reading.kind = readingKind;
    reading.value = Measure{si, kind, unitCode, {}};
    m_record.readings.push_back(reading);
    return *this;
}

RecordBuilder& RecordBuilder::charged(ChargeDirection direction, double kilograms, const std::string& because,
                                      const std::string& cylinder, const std::string& refrigerant)
{
    auto charge = entry<ChargeEntry>();
    charge.direction = direction;
    charge.refrigerant = refrigerant;
    charge.mass = Measure{kilograms, QuantityKind::mass, "kg", {}};
    charge.cylinder = cylinder;
    charge.because = because;
    m_record.charges.push_back(charge);
    return *this;
}

RecordBuilder& RecordBuilder::factoryCharge(double kilograms)
{
    m_record.unit.nameplate.push_back(NameplateValue{"charge", Measure{kilograms, QuantityKind::mass, "kg", {}}});
    return *this;
}

RecordBuilder& RecordBuilder::replacedPart(const std::string& partKind, const std::string& date)
{
    const auto old = std::ranges::find_if(m_record.parts,
                                          [&](const Part& part) { return part.kind == partKind && !part.removedOn; });
    if (old == m_record.parts.end())
        throw std::invalid_argument("no such part in a test: " + partKind);
    Part fresh = *old;
    old->removedOn = day(date);
    fresh.replaces = old->id;
    fresh.id = m_ids.make<PartId>();
    fresh.fittedOn = day(date);
    for (Zone& zone : fresh.zones)
        zone = Zone{m_ids.make<ZoneId>(), fresh.id, zone.kind, zone.name};
    m_record.parts.push_back(fresh);
    return *this;
}

RecordBuilder& RecordBuilder::followUp(const std::string& zoneKind, const std::string& earliest,
                                       const std::string& latest, const std::string& why)
{
    FollowUp followUp;
    followUp.id = m_ids.make<FollowUpId>();
    followUp.unitId = m_record.unit.id;
    followUp.zoneId = zone(zoneKind);
    followUp.madeAt = m_record.visits.back().id;
    followUp.earliest = day(earliest);
    followUp.latest = day(latest);
    followUp.why = why;
    m_record.followUps.push_back(followUp);
    return *this;
}

RecordBuilder& RecordBuilder::corrected(int grade, const std::string& reason)
{
    Finding finding = m_record.findings.back();
    finding.correction = Correction<FindingId>{finding.id, reason};
    finding.id = m_ids.make<FindingId>();
    finding.sight = static_cast<Grade>(grade);
    m_record.findings.push_back(finding);
    return *this;
}

ZoneId RecordBuilder::zone(const std::string& zoneKind) const
{
    for (auto part = m_record.parts.rbegin(); part != m_record.parts.rend(); ++part) {
        for (const Zone& zone : part->zones) {
            if (zone.kind == zoneKind && !part->removedOn)
                return zone.id;
        }
    }
    throw std::invalid_argument("no such zone in a test: " + zoneKind);
}

UnitRecord RecordBuilder::build() const
{
    return m_record;
}

} // namespace padside::test
