// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/verify.h"

#include "core/store/connection.h"
#include "core/store/cursor.h"
#include "core/store/photo_files.h"
#include "core/store/photo_path.h"
#include "core/store/seal.h"
#include "core/store/snapshot.h"
#include "core/store/store.h"

#include <QCryptographicHash>
#include <QFile>

#include <algorithm>
#include <array>

namespace padside {

namespace {

constexpr int mostOfOneSort = 20; ///< complaints; more would not help anyone

/// A rule of ours as a query that finds what breaks it: a name or key to show comes first.
struct Rule
{
    std::string_view broken;
    const char* pattern;
};

constexpr std::array entryTables{"finding", "reading", "treatment", "photo", "charge_entry"};

// {table} is each kind of entry in turn; hex() keys, as a person can search for them.
constexpr std::array entryRules{
    Rule{"SELECT hex(e.id), '{table}' FROM {table} e LEFT JOIN visit v ON v.id = e.visit_id "
         "WHERE v.id IS NULL OR v.unit_id <> e.unit_id OR v.visited_on <> e.visited_on LIMIT 20",
         PADSIDE_SAY("The {1} {0} is not dated as its visit: restore the latest backup.")},
    Rule{"SELECT hex(e.id), '{table}' FROM {table} e WHERE e.corrects IS NOT NULL AND NOT EXISTS (SELECT 1 FROM "
         "{table} o "
         "WHERE o.unit_id = e.unit_id AND o.visited_on = e.visited_on AND o.id = e.corrects AND o.visit_id = "
         "e.visit_id) LIMIT 20",
         PADSIDE_SAY("The {1} {0} corrects something that is not there: restore the latest backup.")},
    Rule{"SELECT hex(e.id), '{table}' FROM {table} e WHERE (e.corrects IS NOT NULL AND "
         "length(trim(coalesce(e.correction_reason, "
         "''))) = 0) OR (e.corrects IS NOT NULL AND (SELECT closed_at FROM visit WHERE id = e.visit_id) IS NULL) LIMIT "
         "20",
         PADSIDE_SAY("The {1} {0} is a correction without a reason or at an open visit: restore the latest backup.")},
    Rule{"SELECT hex(id), '{table}' FROM {table} GROUP BY id HAVING count(*) > 1 LIMIT 20",
         PADSIDE_SAY("The {1} {0} is in the file twice: restore the latest backup.")},
};

constexpr std::array zoneRules{
    Rule{"SELECT hex(e.id), 'finding' FROM finding e LEFT JOIN zone z ON z.id = e.zone_id "
         "WHERE z.id IS NULL OR z.unit_id <> e.unit_id LIMIT 20",
         PADSIDE_SAY("The {1} {0} names a zone of another unit: restore the latest backup.")},
    Rule{"SELECT hex(e.id), 'reading' FROM reading e LEFT JOIN zone z ON z.id = e.zone_id "
         "WHERE e.zone_id IS NOT NULL AND (z.id IS NULL OR z.unit_id <> e.unit_id) LIMIT 20",
         PADSIDE_SAY("The {1} {0} names a zone of another unit: restore the latest backup.")},
    Rule{"SELECT hex(e.id), 'treatment' FROM treatment e LEFT JOIN zone z ON z.id = e.zone_id "
         "WHERE e.zone_id IS NOT NULL AND (z.id IS NULL OR z.part_id <> e.part_id) LIMIT 20",
         PADSIDE_SAY("The {1} {0} names a zone of another part: correct it.")},
    Rule{"SELECT hex(z.id), z.kind FROM zone z LEFT JOIN part p ON p.id = z.part_id "
         "WHERE p.id IS NULL OR p.unit_id <> z.unit_id LIMIT 20",
         PADSIDE_SAY("The zone {0} ({1}) belongs to no part of its unit: restore the latest backup.")},
};

std::string withTable(std::string_view pattern, std::string_view table)
{
    constexpr std::string_view place = "{table}";
    std::string text(pattern);
    for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place))
        text.replace(at, place.size(), table);
    return text;
}

class Verification
{
public:
    explicit Verification(Store& store)
        : m_store(store)
        , m_connection(store.connection())
    {
    }

    VerifyReport run()
    {
        checkPages();
        guarded([this] { checkForeignKeys(); });
        guarded([this] { checkRules(); });
        guarded([this] { checkSeals(); });
        guarded([this] { checkPhotos(); });
        guarded([this] { countRows(); });
        return std::move(m_report);
    }

private:
    void complain(std::string pattern, std::vector<Argument> arguments)
    {
        m_report.complaints.push_back({std::move(pattern), std::move(arguments)});
    }

    /// A damaged page stops one check, not the others; what stopped it is a complaint.
    template <typename Check> void guarded(const Check& check)
    {
        try {
            check();
        } catch (const StoreError& error) {
            const bool said = std::ranges::find(m_report.complaints, error.problem().what) != m_report.complaints.end();
            if (!said)
                m_report.complaints.push_back(error.problem().what);
        }
    }

    void checkPages()
    {
        guarded([this] {
            Cursor row(m_connection, "PRAGMA integrity_check(20)");
            while (row.next()) {
                if (row.view(0) != "ok")
                    complain(PADSIDE_SAY("The file is damaged ({0}): leave it as it is and open the latest backup."),
                             {row.text(0)});
            }
        });
    }

    void checkForeignKeys()
    {
        Cursor row(m_connection, "SELECT \"table\", parent, count(*) FROM pragma_foreign_key_check GROUP BY 1, 2");
        while (row.next())
            complain(PADSIDE_SAY("In {0}, {2} rows point at a {1} that is not there: restore the latest backup."),
                     {row.text(0), row.text(1), row.integer(2)});
    }

    void checkRules()
    {
        for (const Rule& rule : entryRules) {
            for (const char* table : entryTables)
                checkRule(withTable(rule.broken, table), rule.pattern);
        }
        for (const Rule& rule : zoneRules)
            checkRule(std::string(rule.broken), rule.pattern);
    }

    void checkRule(const std::string& broken, const char* pattern)
    {
        Cursor row(m_connection, broken);
        while (row.next())
            complain(pattern, {row.text(0), row.text(1)});
    }

    void checkSeals()
    {
        int found = 0;
        Cursor row(m_connection,
                   "SELECT visit.unit_id, visit.id, visit.visited_on, visit.seal, unit.tag FROM visit "
                   "JOIN unit ON unit.id = visit.unit_id WHERE visit.closed_at IS NOT NULL");
        while (row.next() && found < mostOfOneSort) {
            if (sealOf(m_connection, row.id<UnitId>(0), row.id<VisitId>(1)) == row.view(3))
                continue;
            complain(
                PADSIDE_SAY(
                    "The closed visit of unit {0} on {1} was changed after it was closed: compare it with a backup."),
                {row.text(4), row.date(2)});
            ++found;
        }
    }

    void checkPhotos()
    {
        Cursor row(m_connection,
                   "SELECT DISTINCT photo.sha256, photo.media_type, photo.original_name, photo.bytes, unit.tag "
                   "FROM photo JOIN unit ON unit.id = photo.unit_id");
        while (row.next()) {
            QFile file(photoPath(m_store.photos().folder(), row.text(0), row.text(1)));
            const std::vector<Argument> named{row.text(2), row.text(4), file.fileName().toStdString()};
            QCryptographicHash hash(QCryptographicHash::Sha256);
            if (!file.exists())
                complain(PADSIDE_SAY("The photograph {0} of unit {1} is missing ({2}): put it back from a backup."),
                         named);
            else if (!file.open(QIODevice::ReadOnly) || !hash.addData(&file))
                complain(PADSIDE_SAY("The photograph {0} of unit {1} can't be read ({2}): check who may read it."),
                         named);
            else if (hash.result().toHex().toStdString() != row.view(0) || file.size() != row.integer(3))
                complain(PADSIDE_SAY("The photograph {0} of unit {1} is damaged ({2}): put it back from a backup."),
                         named);
        }
    }

    void countRows()
    {
        m_report.sites = m_connection.number("SELECT count(*) FROM site");
        m_report.units = m_connection.number("SELECT count(*) FROM unit");
        m_report.visits = m_connection.number("SELECT count(*) FROM visit");
        m_report.findings = m_connection.number("SELECT count(*) FROM finding");
        m_report.readings = m_connection.number("SELECT count(*) FROM reading");
        m_report.photos = m_connection.number("SELECT count(*) FROM photo");
    }

    Store& m_store;
    Connection& m_connection;
    VerifyReport m_report;
};

} // namespace

VerifyReport verify(Store& store)
{
    const Snapshot snapshot(store.connection());
    return Verification(store).run();
}

} // namespace padside
