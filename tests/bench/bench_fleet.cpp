// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/bench_fleet.h"

#include "core/record/unit_record.h"
#include "core/store/connection.h"
#include "core/store/site_book.h"
#include "core/store/transaction.h"
#include "core/store/visit_book.h"

#include <algorithm>
#include <random>
#include <sqlite3.h>
#include <stdexcept>

namespace padside::bench {

namespace {

constexpr int unitsPerSite = 8;

/// Findings are many: they go straight into the table, past Qt's queries, through the same triggers.
class FindingInserter
{
public:
    explicit FindingInserter(sqlite3* handle)
    {
        constexpr const char* sql
            = "INSERT INTO finding (unit_id, visited_on, id, visit_id, zone_id, phase, grade, note, entered_at, "
              "not_seen_reason, wetness) VALUES (?, ?, ?, ?, ?, 'as-found', ?, ?, ?, ?, ?)";
        if (sqlite3_prepare_v2(handle, sql, -1, &m_statement, nullptr) != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(handle));
    }
    ~FindingInserter() { sqlite3_finalize(m_statement); }
    FindingInserter(const FindingInserter&) = delete;
    FindingInserter& operator=(const FindingInserter&) = delete;

    /// A grade of 0 means not seen; no wetness is an empty one.
    void insert(const Visit& visit, ZoneId zone, FindingId id, int grade, const std::string& note,
                const std::string& wetness)
    {
        const std::string on = isoText(visit.on);
        const std::string at = instantText(visit.openedAt);
        bindId(1, visit.unitId);
        bindText(2, on);
        bindId(3, id);
        bindId(4, visit.id);
        bindId(5, zone);
        if (grade > 0)
            sqlite3_bind_int(m_statement, 6, grade);
        else
            sqlite3_bind_null(m_statement, 6);
        bindText(7, note);
        bindText(8, at);
        if (grade > 0)
            sqlite3_bind_null(m_statement, 9);
        else
            bindText(9, "covered");
        if (wetness.empty())
            sqlite3_bind_null(m_statement, 10);
        else
            bindText(10, wetness);
        if (sqlite3_step(m_statement) != SQLITE_DONE)
            throw std::runtime_error(sqlite3_errmsg(sqlite3_db_handle(m_statement)));
        sqlite3_reset(m_statement);
    }

private:
    template <typename AnyId> void bindId(int place, const AnyId& id)
    {
        sqlite3_bind_blob(m_statement, place, id.bytes().data(), 16, SQLITE_TRANSIENT);
    }
    void bindText(int place, const std::string& text)
    {
        sqlite3_bind_text(m_statement, place, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
    }

    sqlite3_stmt* m_statement = nullptr;
};

/// The first kind of unit that has so many zones.
const UnitKind& kindWith(int zones, const Catalogue& catalogue)
{
    const auto zonesOf = [&](const UnitKind& kind) {
        std::size_t count = 0;
        for (const UnitKind::Fitted& fitted : kind.parts)
            count += catalogue.partKind(fitted.partKind)->zones.size();
        return count;
    };
    const auto large = std::ranges::find_if(
        catalogue.unitKinds(), [&](const UnitKind& kind) { return zonesOf(kind) >= static_cast<std::size_t>(zones); });
    if (large == catalogue.unitKinds().end())
        throw std::runtime_error("no kind of unit has so many zones");
    return *large;
}

class FleetBuilder
{
public:
    FleetBuilder(Store& store, const Catalogue& catalogue, const FleetSize& size)
        : m_store(store)
        , m_catalogue(catalogue)
        , m_kind(kindWith(size.zonesPerUnit, catalogue))
        , m_size(size)
        , m_findings(store.connection().handle())
    {
    }

    UnitId build()
    {
        Transaction transaction(m_store);
        UnitId longUnit;
        for (int number = 0; number < m_size.units; ++number) {
            if (number % unitsPerSite == 0)
                addSite(number / unitsPerSite);
            const bool isLong = number == m_size.units / 2;
            const Unit unit = addUnit(number);
            if (isLong)
                longUnit = unit.id;
            addVisits(unit, addParts(unit), isLong ? m_size.visitsOfTheLongUnit : m_size.visitsPerUnit);
        }
        transaction.commit();
        m_store.connection().run("PRAGMA wal_checkpoint(TRUNCATE)");
        return longUnit;
    }

private:
    void addSite(int number)
    {
        m_site.id = m_ids.make<SiteId>();
        m_site.name = "Site " + std::to_string(number);
        m_site.air = {};
        if (m_size.livedIn && number % 4 != 0)
            m_site.air = {278.0 + number % 17, 0.62 + 0.01 * (number % 23), 2.0 + number % 19, 3.0 + number % 41};
        m_store.sites().addSite(m_site);
    }

    Unit addUnit(int number)
    {
        Unit unit;
        unit.id = m_ids.make<UnitId>();
        unit.siteId = m_site.id;
        unit.tag = "U-" + std::to_string(number);
        unit.kind = m_kind.code;
        unit.refrigerant = "R-410A";
        unit.installedOn = Date(std::chrono::year(2004) / 4 / 1);
        m_store.sites().addUnit(unit);
        return unit;
    }

    /// Parts of the catalogue in its order, until the unit has its zones.
    std::vector<Part> addParts(const Unit& unit)
    {
        std::vector<Part> parts;
        int zones = 0;
        for (const UnitKind::Fitted& fitted : m_kind.parts) {
            const PartKind* kind = m_catalogue.partKind(fitted.partKind);
            Part part;
            part.id = m_ids.make<PartId>();
            part.unitId = unit.id;
            part.kind = fitted.partKind;
            part.position = fitted.position;
            part.fittedOn = unit.installedOn;
            for (const ZoneKind& zone : kind->zones) {
                if (zones++ < m_size.zonesPerUnit)
                    part.zones.push_back({m_ids.make<ZoneId>(), part.id, zone.code, zone.name});
            }
            if (!part.zones.empty()) {
                m_store.sites().addPart(part);
                parts.push_back(std::move(part));
            }
        }
        return parts;
    }

    void addVisits(const Unit& unit, const std::vector<Part>& parts, int visits)
    {
        std::vector<int> grades(static_cast<std::size_t>(m_size.zonesPerUnit), 1);
        for (int back = visits - 1; back >= 0; --back) {
            Visit visit;
            visit.id = m_ids.make<VisitId>();
            visit.unitId = unit.id;
            visit.on = addMonths(lastVisitDay(), -6 * back);
            if (m_size.livedIn && back > 0)
                visit.on += std::chrono::days(static_cast<int>(m_random() % 61) - 30);
            visit.reason = back % 2 == 0 ? VisitReason::spring : VisitReason::fall;
            visit.technician = "A. Tester";
            visit.openedAt = Instant{visit.on + std::chrono::hours(9), {}};
            m_store.visits().open(visit);
            auto grade = grades.begin();
            for (const Part& part : parts) {
                for (const Zone& zone : part.zones)
                    addFinding(visit, zone, *grade++);
            }
            addReadings(visit);
            m_store.visits().close(visit.id, visit.openedAt);
        }
    }

    void addFinding(const Visit& visit, const Zone& zone, int& grade)
    {
        if (m_random() % 16 == 0)
            grade = std::min(5, grade + 1);
        const bool noted = m_random() % 8 == 0;
        const bool seen = !m_size.livedIn || m_random() % 8 != 0;
        const auto sky = m_size.livedIn ? m_random() % 9 : 9;
        m_findings.insert(visit, zone.id, m_ids.make<FindingId>(), seen ? grade : 0,
                          noted ? "rust around the weld, brushed" : "",
                          sky > 2        ? ""
                              : sky == 0 ? "wet"
                                         : "damp");
    }

    void addReadings(const Visit& visit)
    {
        for (const char* kind : {"suction-pressure", "liquid-pressure"}) {
            Reading reading;
            reading.id = m_ids.make<ReadingId>();
            reading.unitId = visit.unitId;
            reading.visitId = visit.id;
            reading.on = visit.on;
            reading.enteredAt = visit.openedAt;
            reading.kind = kind;
            reading.value
                = {800'000.0 + static_cast<double>(m_random() % 1000), QuantityKind::gaugePressure, "psig", "116 psig"};
            m_store.visits().put(reading);
        }
    }

    Store& m_store;
    const Catalogue& m_catalogue;
    const UnitKind& m_kind;
    FleetSize m_size;
    FindingInserter m_findings;
    Site m_site;
    IdMaker m_ids{[] { return std::int64_t{1'700'000'000'000}; }, 1};
    std::mt19937 m_random{1};
};

} // namespace

Date lastVisitDay()
{
    return Date(std::chrono::year(2026) / 5 / 4);
}

Fleet buildFleet(const QString& path, const Catalogue& catalogue, const FleetSize& size)
{
    Fleet fleet{Store::create(path), {}};
    fleet.longUnit = FleetBuilder(*fleet.store, catalogue, size).build();
    return fleet;
}

} // namespace padside::bench
