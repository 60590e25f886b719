// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/schema_v2.h"

namespace padside {

std::string schemaVersion2()
{
    return R"sql(
CREATE TABLE forecast (
    unit_id BLOB NOT NULL,
    visited_on TEXT NOT NULL,
    visit_id BLOB NOT NULL,
    zone_id BLOB NOT NULL,
    grade INTEGER CHECK (grade BETWEEN 1 AND 5), -- last seen by then
    half_year REAL NOT NULL CHECK (half_year BETWEEN 0 AND 1), -- chance of being spent within
    one_year REAL NOT NULL CHECK (one_year BETWEEN 0 AND 1),
    two_years REAL NOT NULL CHECK (two_years BETWEEN 0 AND 1),
    five_years REAL NOT NULL CHECK (five_years BETWEEN 0 AND 1),
    early TEXT CHECK (early IS date(early)), -- chance 10 %
    middle TEXT CHECK (middle IS date(middle)), -- 50 %
    late TEXT CHECK (late IS date(late)), -- 90 %
    PRIMARY KEY (unit_id, visited_on, visit_id, zone_id),
    FOREIGN KEY (unit_id, visited_on, visit_id) REFERENCES visit (unit_id, visited_on, id),
    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id)
) STRICT, WITHOUT ROWID;

-- A forecast is made when its visit is closed, never afterwards, and never changed.
CREATE TRIGGER forecast_insert BEFORE INSERT ON forecast BEGIN
    SELECT RAISE(ABORT, 'the visit is closed')
    WHERE (SELECT closed_at FROM visit WHERE id = NEW.visit_id) IS NOT NULL;
END;
CREATE TRIGGER forecast_update BEFORE UPDATE ON forecast BEGIN
    SELECT RAISE(ABORT, 'a forecast is kept as it was made');
END;
CREATE TRIGGER forecast_delete BEFORE DELETE ON forecast BEGIN
    SELECT RAISE(ABORT, 'a forecast is kept as it was made');
END;

CREATE TABLE acknowledgement (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    rule TEXT NOT NULL CHECK (length(rule) > 0),
    part_id BLOB,
    zone_id BLOB,
    severity TEXT NOT NULL CHECK (severity IN ('look', 'plan', 'act')),
    grade INTEGER CHECK (grade BETWEEN 1 AND 5),
    extent REAL,
    reason TEXT NOT NULL CONSTRAINT "acknowledgement says why" CHECK (length(trim(reason)) > 0),
    technician TEXT NOT NULL,
    acknowledged_at TEXT NOT NULL CHECK (length(acknowledged_at) = 25 AND datetime(acknowledged_at) IS NOT NULL),
    taken_back_at TEXT CHECK (taken_back_at IS NULL OR (length(taken_back_at) = 25 AND datetime(taken_back_at) IS NOT NULL)),
    PRIMARY KEY (unit_id, id),
    FOREIGN KEY (unit_id, part_id) REFERENCES part (unit_id, id),
    FOREIGN KEY (unit_id, zone_id) REFERENCES zone (unit_id, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE unit_assumption (
    unit_id BLOB NOT NULL REFERENCES unit (id),
    code TEXT NOT NULL CHECK (length(code) > 0),
    value REAL NOT NULL,
    PRIMARY KEY (unit_id, code)
) STRICT, WITHOUT ROWID;
)sql";
}

} // namespace padside
