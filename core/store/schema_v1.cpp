// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/schema_v1.h"

#include <array>
#include <string_view>

namespace padside {

namespace {

constexpr std::string_view siteTables = R"sql(
CREATE TABLE meta (
    key TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO meta VALUES ('about', 'Padside record file: outdoor units, their parts, zones, visits and findings. Values in SI.');

CREATE TABLE site (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    name TEXT NOT NULL CONSTRAINT "site has a name" CHECK (length(trim(name)) > 0),
    address TEXT NOT NULL,
    contact TEXT NOT NULL,
    access TEXT NOT NULL,
    altitude_m REAL NOT NULL,
    temperature_k REAL CHECK (temperature_k > 0),
    relative_humidity REAL CHECK (relative_humidity BETWEEN 0 AND 1),
    sulphur_dioxide_mg_m2_d REAL CHECK (sulphur_dioxide_mg_m2_d >= 0),
    chloride_mg_m2_d REAL CHECK (chloride_mg_m2_d >= 0),
    spring_first_week INTEGER NOT NULL CHECK (spring_first_week BETWEEN 1 AND 53),
    spring_last_week INTEGER NOT NULL CHECK (spring_last_week BETWEEN spring_first_week AND 53),
    fall_first_week INTEGER NOT NULL CHECK (fall_first_week BETWEEN 1 AND 53),
    fall_last_week INTEGER NOT NULL CHECK (fall_last_week BETWEEN fall_first_week AND 53),
    note TEXT NOT NULL,
    retired_on TEXT CHECK (retired_on IS date(retired_on))
) STRICT, WITHOUT ROWID;

CREATE TABLE unit (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    site_id BLOB NOT NULL REFERENCES site (id),
    tag TEXT NOT NULL UNIQUE CONSTRAINT "unit has a tag" CHECK (length(trim(tag)) > 0),
    kind TEXT NOT NULL CHECK (length(kind) > 0),
    maker TEXT NOT NULL,
    model TEXT NOT NULL,
    serial TEXT NOT NULL,
    place TEXT NOT NULL,
    refrigerant TEXT NOT NULL,
    metering TEXT NOT NULL CHECK (metering IN ('unknown', 'fixed-orifice', 'thermostatic-valve', 'electronic-valve')),
    installed_on TEXT CHECK (installed_on IS date(installed_on)),
    retired_on TEXT CHECK (retired_on IS date(retired_on)),
    note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX unit_by_site ON unit (site_id);

CREATE TABLE nameplate_value (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    item TEXT NOT NULL CHECK (length(item) > 0),
    place INTEGER NOT NULL, -- order on the plate
    si REAL NOT NULL,
    quantity TEXT NOT NULL CHECK (length(quantity) > 0),
    unit_code TEXT NOT NULL,
    typed TEXT NOT NULL,
    PRIMARY KEY (unit_id, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE part (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    kind TEXT NOT NULL CHECK (length(kind) > 0),
    position TEXT NOT NULL,
    maker TEXT NOT NULL,
    model TEXT NOT NULL,
    fitted_on TEXT CHECK (fitted_on IS date(fitted_on)),
    removed_on TEXT CHECK (removed_on IS date(removed_on)),
    removed_because TEXT NOT NULL,
    replaces BLOB,
    note TEXT NOT NULL,
    PRIMARY KEY (unit_id, id),
    FOREIGN KEY (unit_id, replaces) REFERENCES part (unit_id, id),
    CONSTRAINT "fitted before removed" CHECK (removed_on IS NULL OR fitted_on IS NULL OR removed_on >= fitted_on)
) STRICT, WITHOUT ROWID;
CREATE INDEX part_by_replaced ON part (unit_id, replaces) WHERE replaces IS NOT NULL;

CREATE TABLE zone (
    unit_id BLOB NOT NULL,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    part_id BLOB NOT NULL,
    place INTEGER NOT NULL, -- order within the part
    kind TEXT NOT NULL CHECK (length(kind) > 0),
    name TEXT NOT NULL,
    PRIMARY KEY (unit_id, id),
    FOREIGN KEY (unit_id, part_id) REFERENCES part (unit_id, id)
) STRICT, WITHOUT ROWID;
CREATE INDEX zone_by_part ON zone (unit_id, part_id);
)sql";

constexpr std::string_view visitTable = R"sql(
CREATE TABLE visit (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    visited_on TEXT NOT NULL CHECK (visited_on IS date(visited_on)),
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    reason TEXT NOT NULL CHECK (reason IN ('spring', 'fall', 'call-out')),
    technician TEXT NOT NULL,
    air_temperature_k REAL CHECK (air_temperature_k > 0),
    relative_humidity REAL CHECK (relative_humidity BETWEEN 0 AND 1),
    sky TEXT NOT NULL CHECK (sky IN ('unknown', 'clear', 'cloudy', 'fog', 'rain', 'snow')),
    running TEXT NOT NULL CHECK (running IN ('unknown', 'off', 'cooling', 'heating', 'defrosting')),
    note TEXT NOT NULL,
    opened_at TEXT NOT NULL CHECK (length(opened_at) = 25 AND datetime(opened_at) IS NOT NULL),
    closed_at TEXT CHECK (closed_at IS NULL OR (length(closed_at) = 25 AND datetime(closed_at) IS NOT NULL)),
    seal TEXT CHECK (seal IS NULL OR length(seal) = 64), -- SHA-256 over the visit as it was closed
    PRIMARY KEY (unit_id, visited_on, id),
    UNIQUE (unit_id, id),
    CHECK ((closed_at IS NULL) = (seal IS NULL))
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX one_open_visit ON visit (unit_id) WHERE closed_at IS NULL;

CREATE TRIGGER visit_insert BEFORE INSERT ON visit BEGIN
    SELECT RAISE(ABORT, 'the visit begins open') WHERE NEW.closed_at IS NOT NULL;
    SELECT RAISE(ABORT, 'the visit is closed')
    WHERE EXISTS (SELECT 1 FROM visit WHERE id = NEW.id AND closed_at IS NOT NULL);
END;
CREATE TRIGGER visit_update BEFORE UPDATE ON visit BEGIN
    SELECT RAISE(ABORT, 'the visit is closed') WHERE OLD.closed_at IS NOT NULL;
    SELECT RAISE(ABORT, 'the visit keeps its unit and day')
    WHERE OLD.unit_id <> NEW.unit_id OR OLD.visited_on <> NEW.visited_on OR OLD.id <> NEW.id
        OR OLD.opened_at <> NEW.opened_at;
END;
CREATE TRIGGER visit_delete BEFORE DELETE ON visit BEGIN
    SELECT RAISE(ABORT, 'the visit is closed') WHERE OLD.closed_at IS NOT NULL;
END;
)sql";

/// What every entry of a visit has. {table} is replaced. The composite foreign keys hold an entry to its visit's unit
/// and day, its zone and part to its unit, and a correction to an entry of that day.
constexpr std::string_view entryTable = R"sql(
CREATE TABLE {table} (
    unit_id BLOB NOT NULL,
    visited_on TEXT NOT NULL,
    id BLOB NOT NULL CHECK (length(id) = 16),
    visit_id BLOB NOT NULL,
{columns}
    entered_at TEXT NOT NULL CHECK (length(entered_at) = 25 AND datetime(entered_at) IS NOT NULL),
    corrects BLOB CHECK (corrects <> id),
    correction_reason TEXT,
    PRIMARY KEY (unit_id, visited_on, id),
    FOREIGN KEY (unit_id, visited_on, visit_id) REFERENCES visit (unit_id, visited_on, id),
    FOREIGN KEY (unit_id, visited_on, corrects) REFERENCES {table} (unit_id, visited_on, id),
{constraints}
    CONSTRAINT "correction has a reason"
        CHECK ((corrects IS NULL) = (correction_reason IS NULL) AND (corrects IS NULL OR length(trim(correction_reason)) > 0))
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX {table}_by_corrected ON {table} (unit_id, visited_on, corrects) WHERE corrects IS NOT NULL;

CREATE TRIGGER {table}_insert BEFORE INSERT ON {table} BEGIN
    SELECT CASE
        WHEN visit.id IS NULL THEN RAISE(ABORT, 'the visit is not in the file')
        WHEN visit.unit_id <> NEW.unit_id OR visit.visited_on <> NEW.visited_on
            THEN RAISE(ABORT, 'the entry is not dated as its visit')
        WHEN NEW.corrects IS NULL AND visit.closed_at IS NOT NULL THEN RAISE(ABORT, 'the visit is closed')
        WHEN NEW.corrects IS NOT NULL AND visit.closed_at IS NULL THEN RAISE(ABORT, 'the visit is still open')
        END
    FROM (SELECT 1) LEFT JOIN visit ON visit.id = NEW.visit_id;
    SELECT RAISE(ABORT, 'the correction points elsewhere')
    WHERE NEW.corrects IS NOT NULL AND NOT EXISTS (
        SELECT 1 FROM {table}
        WHERE unit_id = NEW.unit_id AND visited_on = NEW.visited_on AND id = NEW.corrects AND visit_id = NEW.visit_id);
    SELECT RAISE(ABORT, 'the visit is closed')
    WHERE NEW.corrects IS NOT NULL AND EXISTS (
        SELECT 1 FROM {table} WHERE unit_id = NEW.unit_id AND visited_on = NEW.visited_on AND id = NEW.id);
END;
CREATE TRIGGER {table}_update BEFORE UPDATE ON {table} BEGIN
    SELECT CASE
        WHEN visit.id IS NULL THEN RAISE(ABORT, 'the visit is not in the file')
        WHEN visit.closed_at IS NOT NULL OR OLD.corrects IS NOT NULL
            OR (SELECT closed_at FROM visit WHERE id = OLD.visit_id) IS NOT NULL
            THEN RAISE(ABORT, 'the visit is closed')
        WHEN visit.unit_id <> NEW.unit_id OR visit.visited_on <> NEW.visited_on
            THEN RAISE(ABORT, 'the entry is not dated as its visit')
        WHEN NEW.corrects IS NOT NULL THEN RAISE(ABORT, 'the visit is still open')
        END
    FROM (SELECT 1) LEFT JOIN visit ON visit.id = NEW.visit_id;
END;
CREATE TRIGGER {table}_delete BEFORE DELETE ON {table} BEGIN
    SELECT RAISE(ABORT, 'the visit is closed')
    WHERE (SELECT closed_at FROM visit WHERE id = OLD.visit_id) IS NOT NULL;
END;
)sql";

struct EntryTable
{
    std::string_view name;
    std::string_view columns;
    std::string_view constraints;
};

constexpr std::string_view zoneKey = "    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id),\n";
constexpr std::string_view partAndZoneKeys = "    FOREIGN KEY (unit_id, part_id) REFERENCES part (unit_id, id),\n"
                                             "    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id),\n";

constexpr std::array entryTables{
    EntryTable{"finding", R"sql(    zone_id BLOB NOT NULL,
    phase TEXT NOT NULL CHECK (phase IN ('as-found', 'as-left')),
    grade INTEGER CHECK (grade BETWEEN 1 AND 5),
    not_seen_reason TEXT CHECK (not_seen_reason IN
        ('covered', 'no-access', 'ice-or-snow', 'running', 'not-safe', 'no-time', 'other')),
    wetness TEXT CHECK (wetness IN ('dry', 'damp', 'wet')),
    note TEXT NOT NULL,)sql",
               "    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id),\n"
               "    CHECK ((grade IS NULL) <> (not_seen_reason IS NULL)),\n"},
    EntryTable{"reading", R"sql(    kind TEXT NOT NULL CHECK (length(kind) > 0),
    part_id BLOB,
    zone_id BLOB,
    phase TEXT NOT NULL CHECK (phase IN ('as-found', 'as-left')),
    si REAL NOT NULL,
    quantity TEXT NOT NULL CHECK (length(quantity) > 0),
    unit_code TEXT NOT NULL,
    typed TEXT NOT NULL,
    note TEXT NOT NULL,)sql",
               partAndZoneKeys},
    EntryTable{"treatment", R"sql(    kind TEXT NOT NULL CHECK (kind IN
        ('clean', 'brush-and-coat', 'grease', 'lubricate', 'repair', 'replace')),
    part_id BLOB NOT NULL,
    zone_id BLOB,
    product TEXT NOT NULL,
    note TEXT NOT NULL,
    dry_by TEXT CHECK (dry_by IS NULL OR (length(dry_by) = 25 AND datetime(dry_by) IS NOT NULL)),
    cost_cents INTEGER CHECK (cost_cents >= 0),)sql",
               partAndZoneKeys},
    EntryTable{"photo", R"sql(    zone_id BLOB,
    phase TEXT NOT NULL CHECK (phase IN ('as-found', 'as-left')),
    sha256 TEXT NOT NULL CHECK (length(sha256) = 64 AND sha256 NOT GLOB '*[^0-9a-f]*'),
    media_type TEXT NOT NULL CHECK (length(media_type) > 0),
    original_name TEXT NOT NULL,
    bytes INTEGER NOT NULL CHECK (bytes >= 0),
    width INTEGER NOT NULL CHECK (width >= 0),
    height INTEGER NOT NULL CHECK (height >= 0),
    taken_at TEXT CHECK (taken_at IS NULL OR (length(taken_at) = 25 AND datetime(taken_at) IS NOT NULL)),
    caption TEXT NOT NULL,)sql",
               zoneKey},
    EntryTable{"charge_entry", R"sql(    direction TEXT NOT NULL CHECK (direction IN ('added', 'recovered', 'lost')),
    refrigerant TEXT NOT NULL CHECK (length(trim(refrigerant)) > 0),
    si REAL NOT NULL CONSTRAINT "mass is not negative" CHECK (si >= 0),
    quantity TEXT NOT NULL CHECK (quantity = 'mass'),
    unit_code TEXT NOT NULL,
    typed TEXT NOT NULL,
    cylinder TEXT NOT NULL,
    because TEXT NOT NULL,)sql",
               ""},
};

constexpr std::string_view otherTables = R"sql(
CREATE UNIQUE INDEX one_finding_per_zone ON finding (visit_id, zone_id, phase) WHERE corrects IS NULL;
CREATE UNIQUE INDEX photo_by_id ON photo (id);
CREATE INDEX photo_by_file ON photo (sha256);

CREATE TABLE photo_thumbnail (
    photo_id BLOB NOT NULL PRIMARY KEY REFERENCES photo (id) ON DELETE CASCADE,
    jpeg BLOB NOT NULL CHECK (length(jpeg) > 0)
) STRICT;

CREATE TABLE follow_up (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    zone_id BLOB,
    made_at BLOB NOT NULL,
    earliest TEXT NOT NULL CHECK (earliest IS date(earliest)),
    latest TEXT NOT NULL CHECK (latest IS date(latest)),
    conditions TEXT NOT NULL,
    why TEXT NOT NULL CONSTRAINT "follow-up says why" CHECK (length(trim(why)) > 0),
    settled_at BLOB,
    settled_note TEXT NOT NULL,
    PRIMARY KEY (unit_id, id),
    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id),
    FOREIGN KEY (unit_id, made_at) REFERENCES visit (unit_id, id),
    FOREIGN KEY (unit_id, settled_at) REFERENCES visit (unit_id, id),
    CONSTRAINT "earliest before latest" CHECK (earliest <= latest)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER follow_up_insert BEFORE INSERT ON follow_up BEGIN
    SELECT RAISE(ABORT, 'the follow-up belongs to a closed visit')
    WHERE EXISTS (SELECT 1 FROM visit WHERE id IN (NEW.made_at, NEW.settled_at) AND closed_at IS NOT NULL)
        AND NOT EXISTS (SELECT 1 FROM follow_up WHERE unit_id = NEW.unit_id AND id = NEW.id);
END;
CREATE TRIGGER follow_up_update BEFORE UPDATE ON follow_up BEGIN
    SELECT RAISE(ABORT, 'the follow-up belongs to a closed visit')
    WHERE (SELECT closed_at FROM visit WHERE id = OLD.made_at) IS NOT NULL
        AND (OLD.unit_id <> NEW.unit_id OR OLD.id <> NEW.id OR OLD.zone_id IS NOT NEW.zone_id
             OR OLD.made_at <> NEW.made_at OR OLD.earliest <> NEW.earliest OR OLD.latest <> NEW.latest
             OR OLD.conditions <> NEW.conditions OR OLD.why <> NEW.why);
    SELECT RAISE(ABORT, 'the follow-up belongs to a closed visit')
    WHERE (OLD.settled_at IS NOT NEW.settled_at OR OLD.settled_note <> NEW.settled_note OR OLD.made_at <> NEW.made_at)
        AND EXISTS (SELECT 1 FROM visit WHERE closed_at IS NOT NULL
                    AND (id IN (OLD.settled_at, NEW.settled_at) OR (id = NEW.made_at AND OLD.made_at <> NEW.made_at)));
END;
CREATE TRIGGER follow_up_delete BEFORE DELETE ON follow_up BEGIN
    SELECT RAISE(ABORT, 'the follow-up belongs to a closed visit')
    WHERE EXISTS (SELECT 1 FROM visit WHERE id IN (OLD.made_at, OLD.settled_at) AND closed_at IS NOT NULL);
END;

CREATE TABLE own_catalogue (
    only_row INTEGER NOT NULL PRIMARY KEY CHECK (only_row = 1),
    merge_patch TEXT NOT NULL CHECK (length(merge_patch) > 0) -- JSON, RFC 7396
) STRICT;

CREATE TABLE draft (
    key TEXT NOT NULL PRIMARY KEY CHECK (length(key) > 0),
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;
)sql";

std::string replaced(std::string text, std::string_view place, std::string_view with)
{
    for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place, at + with.size()))
        text.replace(at, place.size(), with);
    return text;
}

} // namespace

std::string schemaVersion1()
{
    std::string sql(siteTables);
    sql += visitTable;
    for (const EntryTable& table : entryTables) {
        std::string one = replaced(std::string(entryTable), "{table}", table.name);
        one = replaced(std::move(one), "{columns}", table.columns);
        sql += replaced(std::move(one), "{constraints}\n", table.constraints);
    }
    sql += otherTables;
    return sql;
}

} // namespace padside
