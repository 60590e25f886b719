// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/cursor.h"
#include "core/store/record_reader.h"
#include "core/store/snapshot.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace padside {

namespace {

// In the order of the table itself: SQLite reads it from end to end and sorts nothing.
constexpr std::string_view gradesInKeyOrder = "SELECT unit_id, visited_on, id, zone_id, grade, corrects FROM finding "
                                              "WHERE phase = 'as-found' ORDER BY unit_id, visited_on, id";

struct SeenGrade
{
    FindingId id;
    ZoneId zoneId;
    std::optional<Grade> grade; ///< empty: not seen
};

/// Gathers the findings of one unit, day by day, and hands over its zones when the unit is done.
class UnitPass
{
public:
    explicit UnitPass(const std::function<void(const LastTwoGrades&)>& take)
        : m_take(take)
    {
    }

    void add(const Cursor& row)
    {
        const auto unit = row.id<UnitId>(0);
        const Date day = row.date(1);
        if (unit != m_unit) {
            finishUnit();
            m_unit = unit;
            m_day = day;
        } else if (day != m_day) {
            finishDay();
            m_day = day;
        }
        SeenGrade seen{row.id<FindingId>(2), row.id<ZoneId>(3), std::nullopt};
        if (!row.isNull(4)) {
            seen.grade = gradeFromNumeral(static_cast<int>(row.integer(4)));
            if (!seen.grade)
                row.damaged(4);
        }
        if (!row.isNull(5))
            m_corrected.push_back(row.id<FindingId>(5));
        m_today.push_back(seen);
    }

    void finishUnit()
    {
        finishDay();
        std::ranges::sort(m_zones, {}, &LastTwoGrades::zoneId);
        for (const LastTwoGrades& zone : m_zones)
            m_take(zone);
        m_zones.clear();
    }

private:
    void finishDay()
    {
        for (const SeenGrade& seen : m_today) {
            if (seen.grade && std::ranges::find(m_corrected, seen.id) == m_corrected.end())
                remember(seen.zoneId, *seen.grade);
        }
        m_today.clear();
        m_corrected.clear();
    }

    void remember(ZoneId zoneId, Grade grade)
    {
        const auto zone = std::ranges::find(m_zones, zoneId, &LastTwoGrades::zoneId);
        if (zone == m_zones.end()) {
            m_zones.push_back({m_unit, zoneId, m_day, grade, std::nullopt});
            return;
        }
        zone->previous = zone->last;
        zone->last = grade;
        zone->lastOn = m_day;
    }

    const std::function<void(const LastTwoGrades&)>& m_take;
    UnitId m_unit;
    Date m_day{};
    std::vector<SeenGrade> m_today;
    std::vector<FindingId> m_corrected;
    std::vector<LastTwoGrades> m_zones;
};

/// Zones of parts that are fitted today.
std::unordered_set<ZoneId> fittedZones(Connection& connection)
{
    std::unordered_set<ZoneId> zones;
    Cursor row(connection,
               "SELECT zone.id FROM zone JOIN part ON part.unit_id = zone.unit_id AND part.id = zone.part_id "
               "WHERE part.removed_on IS NULL");
    while (row.next())
        zones.insert(row.id<ZoneId>(0));
    return zones;
}

std::vector<UnitLine> linesWithoutGrades(Connection& connection)
{
    std::vector<UnitLine> lines;
    Cursor row(connection,
               "SELECT unit.id, unit.site_id, site.name, unit.tag, unit.kind, unit.place, "
               "unit.retired_on IS NOT NULL, "
               "(SELECT count(*) FROM visit WHERE visit.unit_id = unit.id AND closed_at IS NULL), "
               "(SELECT max(visited_on) FROM visit WHERE visit.unit_id = unit.id AND closed_at IS NOT NULL), "
               "unit.installed_on "
               "FROM unit JOIN site ON site.id = unit.site_id "
               "ORDER BY site.name COLLATE reading, site.id, unit.tag COLLATE reading");
    while (row.next()) {
        UnitLine line;
        line.unitId = row.id<UnitId>(0);
        line.siteId = row.id<SiteId>(1);
        line.siteName = row.text(2);
        line.tag = row.text(3);
        line.kind = row.text(4);
        line.place = row.text(5);
        line.retired = row.integer(6) != 0;
        line.hasOpenVisit = row.integer(7) != 0;
        line.lastVisitOn = row.optionalDate(8);
        line.installedOn = row.optionalDate(9);
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace

void RecordReader::lastTwoGrades(const std::function<void(const LastTwoGrades&)>& take) const
{
    Cursor row(m_connection, gradesInKeyOrder);
    UnitPass pass(take);
    while (row.next())
        pass.add(row);
    pass.finishUnit();
}

std::vector<UnitLine> RecordReader::unitLines() const
{
    const Snapshot snapshot(m_connection);
    std::vector<UnitLine> lines = linesWithoutGrades(m_connection);
    const auto fitted = fittedZones(m_connection);
    std::unordered_map<UnitId, std::size_t> places;
    for (std::size_t i = 0; i < lines.size(); ++i)
        places.emplace(lines[i].unitId, i);
    lastTwoGrades([&](const LastTwoGrades& grades) {
        const auto place = places.find(grades.unitId);
        if (place == places.end() || !fitted.contains(grades.zoneId))
            return;
        auto& worst = lines[place->second].worst;
        if (!worst || *worst < grades.last)
            worst = grades.last;
    });
    return lines;
}

} // namespace padside
