// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Many units at once, and taking back what was added by mistake.

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/cursor.h"
#include "core/store/site_book.h"
#include "core/store/transaction.h"

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr std::size_t unitsBetweenTellings = 20;

/// Whether `sql`, which has one key to bind, finds anything.
template <typename AnyId> bool finds(Connection& connection, std::string_view sql, AnyId id)
{
    Cursor row(connection, sql);
    row.bind(1, id);
    return row.next();
}

} // namespace

std::set<std::string> SiteBook::tags() const
{
    std::set<std::string> tags;
    Cursor row(m_connection, "SELECT tag FROM unit ORDER BY tag");
    while (row.next())
        tags.insert(tags.end(), row.text(0));
    return tags;
}

bool SiteBook::addAll(const std::vector<Site>& sites, const std::vector<FittedUnit>& units,
                      const std::function<bool(double)>& tell)
{
    Transaction transaction(m_connection);
    for (const Site& site : sites)
        addSite(site);
    for (std::size_t i = 0; i < units.size(); ++i) {
        if (i % unitsBetweenTellings == 0 && !tell(static_cast<double>(i) / static_cast<double>(units.size())))
            return false;
        addUnit(units[i].unit);
        for (const Part& part : units[i].parts)
            addPart(part);
    }
    if (!tell(1.0))
        return false;
    transaction.commit();
    return true;
}

void SiteBook::removeUnit(UnitId id)
{
    Transaction transaction(m_connection);
    if (finds(m_connection, "SELECT 1 FROM visit WHERE unit_id = ? LIMIT 1", id))
        throw storeError(ProblemKind::refused,
                         PADSIDE_SAY("This unit was visited, so it stays in the record: retire it instead."));
    for (const QString& table :
         {u"acknowledgement"_s, u"unit_assumption"_s, u"nameplate_value"_s, u"zone"_s, u"part"_s})
        m_connection.write(u"DELETE FROM %1 WHERE unit_id = ?"_s.arg(table), {bound(id)});
    if (m_connection.write(u"DELETE FROM unit WHERE id = ?"_s, {bound(id)}) == 0)
        throw storeError(ProblemKind::refused, PADSIDE_SAY("This unit is not in the file any more."));
    transaction.commit();
}

void SiteBook::removeSite(SiteId id)
{
    Transaction transaction(m_connection);
    if (finds(m_connection, "SELECT 1 FROM unit WHERE site_id = ? LIMIT 1", id))
        throw storeError(ProblemKind::refused, PADSIDE_SAY("This site has units: move or remove them first."));
    if (m_connection.write(u"DELETE FROM site WHERE id = ?"_s, {bound(id)}) == 0)
        throw storeError(ProblemKind::refused, PADSIDE_SAY("This site is not in the file any more."));
    transaction.commit();
}

} // namespace padside
