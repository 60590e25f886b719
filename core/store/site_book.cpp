// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"

#include "core/record/quantity_code.h"
#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/rows.h"
#include "core/store/statement_text.h"
#include "core/store/transaction.h"

#include <unordered_map>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

const std::string allSites = selectText(siteColumns, "site ORDER BY name COLLATE reading, id");
const std::string oneSite = selectText(siteColumns, "site WHERE id = ?");
const std::string allUnits = selectText(
    "unit.id, unit.site_id, unit.tag, unit.kind, unit.maker, unit.model, unit.serial, "
    "unit.place, unit.refrigerant, unit.metering, unit.installed_on, unit.retired_on, "
    "unit.note",
    "unit JOIN site ON site.id = unit.site_id ORDER BY site.name COLLATE reading, site.id, unit.tag COLLATE reading");
const std::string oneUnitByTag = selectText(unitColumns, "unit WHERE tag = ?");
const std::string allNameplates = selectText(nameplateColumns, "nameplate_value ORDER BY unit_id, place");
const std::string oneNameplate = selectText(nameplateColumns, "nameplate_value WHERE unit_id = ? ORDER BY place");

QVariantList boundSite(const Site& site)
{
    return {bound(site.id),
            bound(site.name),
            bound(site.address),
            bound(site.contact),
            bound(site.access),
            bound(site.altitudeM),
            bound(site.air.temperatureK),
            bound(site.air.relativeHumidity),
            bound(site.air.sulphurDioxide),
            bound(site.air.chloride),
            bound(site.spring.first),
            bound(site.spring.last),
            bound(site.fall.first),
            bound(site.fall.last),
            bound(site.note),
            bound(site.retiredOn)};
}

QVariantList boundUnit(const Unit& unit)
{
    return {bound(unit.id),          bound(unit.siteId),   bound(unit.tag),         bound(unit.kind),
            bound(unit.maker),       bound(unit.model),    bound(unit.serial),      bound(unit.place),
            bound(unit.refrigerant), bound(unit.metering), bound(unit.installedOn), bound(unit.retiredOn),
            bound(unit.note)};
}

QVariantList boundPart(const Part& part)
{
    return {bound(part.id),       bound(part.unitId),    bound(part.kind),
            bound(part.position), bound(part.maker),     bound(part.model),
            bound(part.fittedOn), bound(part.removedOn), bound(part.removedBecause),
            bound(part.replaces), bound(part.note)};
}

void writeNameplate(Connection& connection, const Unit& unit)
{
    connection.write(u"DELETE FROM nameplate_value WHERE unit_id = ?"_s, {bound(unit.id)});
    int place = 0;
    for (const NameplateValue& line : unit.nameplate)
        connection.write(insertText("nameplate_value", "unit_id, item, place, si, quantity, unit_code, typed"),
                         {bound(unit.id), bound(line.item), bound(place++), bound(line.value.si),
                          bound(line.value.kind), bound(line.value.unitCode), bound(line.value.typed)});
}

void writeZones(Connection& connection, const Part& part)
{
    int place = 0;
    for (const Zone& zone : part.zones) {
        if (zone.partId != part.id)
            throw storeError(ProblemKind::badInput, PADSIDE_SAY("The zone {0} belongs to another part: add it there."),
                             {zone.kind});
        connection.write(
            upsertText("zone", "unit_id, id, part_id, place, kind, name", "unit_id, id"),
            {bound(part.unitId), bound(zone.id), bound(part.id), bound(place++), bound(zone.kind), bound(zone.name)});
    }
}

void removeOtherZones(Connection& connection, const Part& part)
{
    QString keep;
    QVariantList values{bound(part.unitId), bound(part.id)};
    for (const Zone& zone : part.zones) {
        keep += keep.isEmpty() ? u"?"_s : u", ?"_s;
        values.append(bound(zone.id));
    }
    connection.write(u"DELETE FROM zone WHERE unit_id = ? AND part_id = ? AND id NOT IN (%1)"_s.arg(keep), values);
}

void requireOneChanged(int changed)
{
    if (changed == 0)
        throw storeError(ProblemKind::refused, PADSIDE_SAY("What was to be changed is not in the file: add it first."));
}

void requireFreeTag(Connection& connection, const Unit& unit)
{
    Cursor cursor(connection, "SELECT id FROM unit WHERE tag = ?");
    cursor.bind(1, unit.tag);
    if (cursor.next() && cursor.id<UnitId>(0) != unit.id)
        throw storeError(ProblemKind::refused, PADSIDE_SAY("The tag {0} is taken by another unit: choose another one."),
                         {unit.tag});
}

/// Columns of `columns` but the key, as "a = ?, b = ?".
QString assignments(std::string_view columns)
{
    QString text = QString::fromUtf8(columns.data(), static_cast<qsizetype>(columns.size()));
    return text.replace(u", "_s, u" = ?, "_s) + u" = ?"_s;
}

} // namespace

SiteBook::SiteBook(Connection& connection)
    : m_connection(connection)
{
}

std::vector<Site> SiteBook::sites() const
{
    std::vector<Site> sites;
    Cursor row(m_connection, allSites);
    while (row.next())
        sites.push_back(readSite(row));
    return sites;
}

std::optional<Site> SiteBook::site(SiteId id) const
{
    Cursor row(m_connection, oneSite);
    row.bind(1, id);
    if (!row.next())
        return std::nullopt;
    return readSite(row);
}

std::vector<Unit> SiteBook::units() const
{
    std::vector<Unit> units;
    std::unordered_map<UnitId, std::size_t> places;
    Cursor row(m_connection, allUnits);
    while (row.next()) {
        units.push_back(readUnit(row));
        places.emplace(units.back().id, units.size() - 1);
    }
    Cursor line(m_connection, allNameplates);
    while (line.next()) {
        const auto unit = places.find(line.id<UnitId>(0));
        if (unit != places.end())
            units[unit->second].nameplate.push_back(readNameplateValue(line));
    }
    return units;
}

std::optional<Unit> SiteBook::unitByTag(const std::string& tag) const
{
    Cursor row(m_connection, oneUnitByTag);
    row.bind(1, tag);
    if (!row.next())
        return std::nullopt;
    Unit unit = readUnit(row);
    Cursor line(m_connection, oneNameplate);
    line.bind(1, unit.id);
    while (line.next())
        unit.nameplate.push_back(readNameplateValue(line));
    return unit;
}

void SiteBook::addSite(const Site& site)
{
    m_connection.write(insertText("site", siteColumns), boundSite(site));
}

void SiteBook::changeSite(const Site& site)
{
    static const QString sql = u"UPDATE site SET "_s + assignments(siteColumns) + u" WHERE id = ?"_s;
    requireOneChanged(m_connection.write(sql, boundSite(site) << bound(site.id)));
}

void SiteBook::addUnit(const Unit& unit)
{
    Transaction transaction(m_connection);
    requireFreeTag(m_connection, unit);
    m_connection.write(insertText("unit", unitColumns), boundUnit(unit));
    writeNameplate(m_connection, unit);
    transaction.commit();
}

void SiteBook::changeUnit(const Unit& unit)
{
    static const QString sql = u"UPDATE unit SET "_s + assignments(unitColumns) + u" WHERE id = ?"_s;
    Transaction transaction(m_connection);
    requireFreeTag(m_connection, unit);
    requireOneChanged(m_connection.write(sql, boundUnit(unit) << bound(unit.id)));
    writeNameplate(m_connection, unit);
    transaction.commit();
}

void SiteBook::addPart(const Part& part)
{
    Transaction transaction(m_connection);
    m_connection.write(insertText("part", partColumns), boundPart(part));
    writeZones(m_connection, part);
    transaction.commit();
}

void SiteBook::changePart(const Part& part)
{
    static const QString sql = u"UPDATE part SET "_s + assignments(partColumns) + u" WHERE id = ?"_s;
    Transaction transaction(m_connection);
    requireOneChanged(m_connection.write(sql, boundPart(part) << bound(part.id)));
    removeOtherZones(m_connection, part);
    writeZones(m_connection, part);
    transaction.commit();
}

void SiteBook::replacePart(PartId old, Date on, const std::string& because, const Part& fresh)
{
    if (fresh.replaces != old)
        throw storeError(ProblemKind::badInput,
                         PADSIDE_SAY("The new part does not name the part it replaces: name it."));
    Transaction transaction(m_connection);
    const int changed = m_connection.write(u"UPDATE part SET removed_on = ?, removed_because = ? "
                                           "WHERE id = ? AND unit_id = ? AND removed_on IS NULL"_s,
                                           {bound(on), bound(because), bound(old), bound(fresh.unitId)});
    if (changed == 0)
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("The part to be replaced is not fitted to this unit: choose one that is."));
    addPart(fresh);
    transaction.commit();
}

void SiteBook::undoReplacement(const Part& fresh)
{
    if (!fresh.replaces)
        throw storeError(ProblemKind::badInput,
                         PADSIDE_SAY("This part replaced no other: there is no replacement to take back."));
    Transaction transaction(m_connection);
    // The foreign keys refuse the zones and the part while an entry points at them. A flag about the new part goes with
    // it.
    m_connection.write(u"DELETE FROM acknowledgement WHERE unit_id = ? AND part_id = ?"_s,
                       {bound(fresh.unitId), bound(fresh.id)});
    m_connection.write(u"DELETE FROM zone WHERE unit_id = ? AND part_id = ?"_s, {bound(fresh.unitId), bound(fresh.id)});
    requireOneChanged(m_connection.write(u"DELETE FROM part WHERE unit_id = ? AND id = ? AND replaces = ?"_s,
                                         {bound(fresh.unitId), bound(fresh.id), bound(*fresh.replaces)}));
    requireOneChanged(
        m_connection.write(u"UPDATE part SET removed_on = NULL, removed_because = '' WHERE unit_id = ? AND id = ?"_s,
                           {bound(fresh.unitId), bound(*fresh.replaces)}));
    transaction.commit();
}

} // namespace padside
