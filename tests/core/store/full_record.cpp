// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/store/full_record.h"

#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "tests/support/record_builder.h"

namespace padside::test {

namespace {

constexpr const char* manyScripts
    = "Ölstand geprüft, l’été, 漏れ無し, тест, \U0001F9CA\U0001F527, a \"quote\", 'x'; DROP --\nline two";

class FullRecord
{
public:
    UnitRecord make(Store& store)
    {
        fillSiteAndUnit();
        fillPart();
        fillVisits();
        fillEntries(store);
        return m_record;
    }

private:
    template <typename AnyEntry> AnyEntry entry()
    {
        AnyEntry made;
        made.id = m_ids.make<decltype(made.id)>();
        made.unitId = m_record.unit.id;
        made.visitId = m_record.visits.front().id;
        made.on = m_record.visits.front().on;
        made.enteredAt = Instant{made.on + std::chrono::hours(10), std::chrono::minutes(-210)};
        return made;
    }

    void fillSiteAndUnit()
    {
        Site& site = m_record.site;
        site = {
            m_ids.make<SiteId>(), "Quay House", manyScripts, "contact", "gate 4", 12.5, {}, {10, 21}, {37, 47}, "note",
            day("2030-01-01")};
        site.air = {283.15, 0.8, 12.0, 60.5};
        Unit& unit = m_record.unit;
        unit.id = m_ids.make<UnitId>();
        unit.siteId = site.id;
        unit.tag = "HB-01 ü";
        unit.kind = "split-heat-pump";
        unit.maker = "maker";
        unit.model = "model";
        unit.serial = "serial";
        unit.place = "north wall";
        unit.refrigerant = "R-410A";
        unit.metering = Metering::thermostaticValve;
        unit.installedOn = day("2012-02-29");
        unit.retiredOn = day("2031-12-31");
        unit.nameplate = {{"charge", {2.95, QuantityKind::mass, "kg", "2,95 kg"}},
                          {"compressor-rla", {14.1, QuantityKind::current, "A", "14.1"}}};
        unit.note = manyScripts;
    }

    void fillPart()
    {
        Part old{m_ids.make<PartId>(), m_record.unit.id,  "contactor",    "1", "m",   "n",
                 day("2012-02-29"),    day("2020-02-29"), "burnt points", {},  "old", {}};
        old.zones = {{m_ids.make<ZoneId>(), old.id, "points", "Points"}};
        Part part{m_ids.make<PartId>(),
                  m_record.unit.id,
                  "contactor",
                  "1",
                  "m",
                  "n",
                  day("2020-02-29"),
                  {},
                  "",
                  old.id,
                  "new",
                  {}};
        part.zones
            = {{m_ids.make<ZoneId>(), part.id, "points", "Points"}, {m_ids.make<ZoneId>(), part.id, "coil", "Coil"}};
        std::swap(part.zones[0], part.zones[1]); // their order is kept, whatever their keys
        m_record.parts = {old, part};
    }

    void fillVisits()
    {
        Visit visit;
        visit.id = m_ids.make<VisitId>();
        visit.unitId = m_record.unit.id;
        visit.on = day("2024-02-29");
        visit.reason = VisitReason::callOut;
        visit.technician = "A. Tester";
        visit.conditions = {271.15, 1.0, Sky::snow, Running::defrosting};
        visit.note = manyScripts;
        visit.openedAt = Instant{visit.on + std::chrono::hours(9), std::chrono::minutes(330)};
        visit.closedAt = Instant{visit.on + std::chrono::hours(11), std::chrono::minutes(330)};
        Visit open = visit;
        open.id = m_ids.make<VisitId>();
        open.on = day("2024-10-01");
        open.closedAt.reset();
        m_record.visits = {visit, open};
    }

    void fillEntries(Store& store)
    {
        const ZoneId zone = m_record.parts[1].zones[0].id;
        auto finding = entry<Finding>();
        finding.zoneId = zone;
        finding.phase = Phase::asLeft;
        finding.sight = Grade::poor;
        finding.wetness = Wetness::damp;
        finding.note = manyScripts;
        auto correcting = finding;
        correcting.id = m_ids.make<FindingId>();
        correcting.sight = NotSeenReason::iceOrSnow;
        correcting.correction = Correction<FindingId>{finding.id, manyScripts};
        m_record.findings = {finding, correcting};

        auto reading = entry<Reading>();
        reading.kind = "suction-pressure";
        reading.partId = m_record.parts[1].id;
        reading.zoneId = zone;
        reading.phase = Phase::asLeft;
        reading.value = {468843.512345678, QuantityKind::gaugePressure, "psig", "68 psig"};
        reading.note = "note";
        m_record.readings = {reading};

        auto treatment = entry<Treatment>();
        treatment.kind = TreatmentKind::brushAndCoat;
        treatment.partId = m_record.parts[1].id;
        treatment.zoneId = zone;
        treatment.product = "zinc-rich primer";
        treatment.note = "two coats";
        treatment.dryBy = Instant{treatment.on + std::chrono::hours(20), std::chrono::minutes(60)};
        treatment.cost = 12.35;
        m_record.treatments = {treatment};

        auto photo = entry<Photo>();
        const auto kept = store.photos().keep("not really a picture", "image/jpeg");
        photo.zoneId = zone;
        photo.phase = Phase::asLeft;
        photo.sha256 = kept.sha256;
        photo.mediaType = "image/jpeg";
        photo.originalName = "IMG 1.jpg";
        photo.bytes = kept.bytes;
        photo.width = 4000;
        photo.height = 3000;
        photo.takenAt = photo.enteredAt;
        photo.caption = manyScripts;
        m_record.photos = {photo};

        auto charge = entry<ChargeEntry>();
        charge.direction = ChargeDirection::recovered;
        charge.refrigerant = "R-410A";
        charge.mass = {0.45, QuantityKind::mass, "kg", "450 g"};
        charge.cylinder = "C-7";
        charge.because = "leak";
        m_record.charges = {charge};

        FollowUp followUp;
        followUp.id = m_ids.make<FollowUpId>();
        followUp.unitId = m_record.unit.id;
        followUp.zoneId = zone;
        followUp.madeAt = m_record.visits[0].id;
        followUp.earliest = day("2024-03-01");
        followUp.latest = day("2024-03-01");
        followUp.conditions = "dry off";
        followUp.why = "bottom was wet, look again when dry";
        m_record.followUps = {followUp};

        Acknowledgement acknowledgement{m_ids.make<AcknowledgementId>(),
                                        m_record.unit.id,
                                        "wet-and-bare",
                                        m_record.parts[1].id,
                                        zone,
                                        Severity::plan,
                                        Grade::marked,
                                        0.125,
                                        manyScripts,
                                        "A. Tester",
                                        treatment.enteredAt,
                                        {}};
        Acknowledgement takenBack{m_ids.make<AcknowledgementId>(),
                                  m_record.unit.id,
                                  "charge-added-again",
                                  {},
                                  {},
                                  Severity::act,
                                  {},
                                  {},
                                  "the leak is found",
                                  "",
                                  treatment.enteredAt,
                                  treatment.dryBy};
        m_record.acknowledgements = {acknowledgement, takenBack};
        m_record.assumptions = {{"price-new", 7350.5}, {"seer-new", 5.2}};
    }

    UnitRecord m_record;
    IdMaker m_ids{[] { return std::int64_t{1'700'000'000'000}; }, 7};
};

} // namespace

UnitRecord fullRecord(Store& store)
{
    return FullRecord().make(store);
}

} // namespace padside::test
