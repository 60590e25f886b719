// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"

#include "core/store/connection.h"
#include "core/store/rows.h"
#include "core/store/snapshot.h"
#include "core/store/statement_text.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace padside {

namespace {

const std::string siteOfUnit = selectText(siteColumns, "site WHERE id = ?");
const std::string oneUnit = selectText(unitColumns, "unit WHERE id = ?");
const std::string nameplateOfUnit = selectText(nameplateColumns, "nameplate_value WHERE unit_id = ? ORDER BY place");
const std::string partsOfUnit = selectText(partColumns, "part WHERE unit_id = ? ORDER BY id");
const std::string zonesOfUnit = selectText(zoneColumns, "zone WHERE unit_id = ? ORDER BY part_id, place");
const std::string visitsOfUnit = selectText(visitColumns, "visit WHERE unit_id = ? ORDER BY visited_on, id");
const std::string findingsOfUnit = selectText(findingColumns, "finding WHERE unit_id = ? ORDER BY visited_on, id");
const std::string readingsOfUnit = selectText(readingColumns, "reading WHERE unit_id = ? ORDER BY visited_on, id");
const std::string treatmentsOfUnit
    = selectText(treatmentColumns, "treatment WHERE unit_id = ? ORDER BY visited_on, id");
const std::string photosOfUnit = selectText(photoColumns, "photo WHERE unit_id = ? ORDER BY visited_on, id");
const std::string chargesOfUnit = selectText(chargeColumns, "charge_entry WHERE unit_id = ? ORDER BY visited_on, id");
const std::string followUpsOfUnit = selectText(followUpColumns, "follow_up WHERE unit_id = ? ORDER BY id");
const std::string acknowledgementsOfUnit
    = selectText(acknowledgementColumns, "acknowledgement WHERE unit_id = ? ORDER BY id");
const std::string assumptionsOfUnit = selectText(assumptionColumns, "unit_assumption WHERE unit_id = ? ORDER BY code");

// Of most units, or fewer.
constexpr std::size_t usualVisits = 32;
constexpr std::size_t usualFindings = 512;
constexpr std::size_t usualReadings = 128;

template <typename Row>
void readAll(Connection& connection, const std::string& sql, UnitId unit, std::vector<Row>& rows,
             Row (*read)(const Cursor&))
{
    Cursor row(connection, sql);
    row.bind(1, unit);
    while (row.next())
        rows.push_back(read(row));
}

/// The file gives entries by day and key; keys are made as entries are, so they are nearly always in order already.
template <typename AnyEntry> void sortByEntering(std::vector<AnyEntry>& entries)
{
    const auto order = [](const AnyEntry& entry) { return std::tie(entry.on, entry.enteredAt.utc, entry.id); };
    if (!std::ranges::is_sorted(entries, {}, order))
        std::ranges::sort(entries, {}, order);
}

void sortVisits(std::vector<Visit>& visits)
{
    std::ranges::sort(visits, {}, [](const Visit& visit) { return std::tie(visit.on, visit.openedAt.utc, visit.id); });
}

void readZones(Connection& connection, UnitId unit, std::vector<Part>& parts)
{
    Cursor row(connection, zonesOfUnit);
    row.bind(1, unit);
    while (row.next()) {
        Zone zone = readZone(row);
        const auto part = std::ranges::find(parts, zone.partId, &Part::id);
        if (part != parts.end())
            part->zones.push_back(std::move(zone));
    }
}

} // namespace

RecordReader::RecordReader(Connection& connection)
    : m_connection(connection)
{
}

UnitRecord RecordReader::unitRecord(UnitId id) const
{
    const Snapshot snapshot(m_connection);
    UnitRecord record;
    {
        Cursor row(m_connection, oneUnit);
        row.bind(1, id);
        if (!row.next())
            throw storeError(ProblemKind::refused, PADSIDE_SAY("There is no unit with the key {0} in this file."),
                             {id.text()});
        record.unit = readUnit(row);
    }
    {
        Cursor row(m_connection, siteOfUnit);
        row.bind(1, record.unit.siteId);
        if (row.next())
            record.site = readSite(row);
    }
    readAll(m_connection, nameplateOfUnit, id, record.unit.nameplate, readNameplateValue);
    readAll(m_connection, partsOfUnit, id, record.parts, readPart);
    readZones(m_connection, id, record.parts);
    record.visits.reserve(usualVisits); // so that they are not moved again and again
    record.findings.reserve(usualFindings);
    record.readings.reserve(usualReadings);
    readAll(m_connection, visitsOfUnit, id, record.visits, readVisit);
    readAll(m_connection, findingsOfUnit, id, record.findings, readFinding);
    readAll(m_connection, readingsOfUnit, id, record.readings, readReading);
    readAll(m_connection, treatmentsOfUnit, id, record.treatments, readTreatment);
    readAll(m_connection, photosOfUnit, id, record.photos, readPhoto);
    readAll(m_connection, chargesOfUnit, id, record.charges, readCharge);
    readAll(m_connection, followUpsOfUnit, id, record.followUps, readFollowUp);
    readAll(m_connection, acknowledgementsOfUnit, id, record.acknowledgements, readAcknowledgement);
    readAll(m_connection, assumptionsOfUnit, id, record.assumptions, readAssumption);
    sortVisits(record.visits);
    sortByEntering(record.findings);
    sortByEntering(record.readings);
    sortByEntering(record.treatments);
    sortByEntering(record.photos);
    sortByEntering(record.charges);
    return record;
}

} // namespace padside
