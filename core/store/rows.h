// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/kept_forecast.h"
#include "core/record/unit_record.h"
#include "core/store/cursor.h"

#include <string_view>

namespace padside {

// The columns of each kind of record in the order its reader expects, and the readers. Kept side by side on purpose: a
// change of one is a change of the other.

constexpr std::string_view siteColumns
    = "id, name, address, contact, access, altitude_m, temperature_k, relative_humidity, sulphur_dioxide_mg_m2_d, "
      "chloride_mg_m2_d, spring_first_week, spring_last_week, fall_first_week, fall_last_week, note, retired_on";
[[nodiscard]] Site readSite(const Cursor& row);

constexpr std::string_view unitColumns
    = "id, site_id, tag, kind, maker, model, serial, place, refrigerant, metering, installed_on, retired_on, note";
[[nodiscard]] Unit readUnit(const Cursor& row); ///< without its nameplate

constexpr std::string_view nameplateColumns = "unit_id, item, si, quantity, unit_code, typed";
[[nodiscard]] NameplateValue readNameplateValue(const Cursor& row);

constexpr std::string_view partColumns
    = "id, unit_id, kind, position, maker, model, fitted_on, removed_on, removed_because, replaces, note";
[[nodiscard]] Part readPart(const Cursor& row); ///< without its zones

constexpr std::string_view zoneColumns = "id, part_id, kind, name";
[[nodiscard]] Zone readZone(const Cursor& row);

constexpr std::string_view visitColumns = "id, unit_id, visited_on, reason, technician, air_temperature_k, "
                                          "relative_humidity, sky, running, note, opened_at, "
                                          "closed_at";
[[nodiscard]] Visit readVisit(const Cursor& row);

// Entries begin alike: id, unit, visit, day, time of entering, correction.
constexpr std::string_view findingColumns
    = "id, unit_id, visit_id, visited_on, entered_at, corrects, correction_reason, "
      "zone_id, phase, grade, not_seen_reason, wetness, note";
[[nodiscard]] Finding readFinding(const Cursor& row);

constexpr std::string_view readingColumns
    = "id, unit_id, visit_id, visited_on, entered_at, corrects, correction_reason, "
      "kind, part_id, zone_id, phase, si, quantity, unit_code, typed, note";
[[nodiscard]] Reading readReading(const Cursor& row);

constexpr std::string_view treatmentColumns
    = "id, unit_id, visit_id, visited_on, entered_at, corrects, correction_reason, "
      "kind, part_id, zone_id, product, note, dry_by, cost_cents";
[[nodiscard]] Treatment readTreatment(const Cursor& row);

constexpr std::string_view photoColumns
    = "id, unit_id, visit_id, visited_on, entered_at, corrects, correction_reason, "
      "zone_id, phase, sha256, media_type, original_name, bytes, width, height, taken_at, caption";
[[nodiscard]] Photo readPhoto(const Cursor& row);

constexpr std::string_view chargeColumns
    = "id, unit_id, visit_id, visited_on, entered_at, corrects, correction_reason, "
      "direction, refrigerant, si, quantity, unit_code, typed, cylinder, because";
[[nodiscard]] ChargeEntry readCharge(const Cursor& row);

constexpr std::string_view followUpColumns
    = "id, unit_id, zone_id, made_at, earliest, latest, conditions, why, settled_at, settled_note";
[[nodiscard]] FollowUp readFollowUp(const Cursor& row);

constexpr std::string_view forecastColumns = "unit_id, visited_on, visit_id, zone_id, grade, half_year, one_year, "
                                             "two_years, five_years, early, middle, late";
[[nodiscard]] KeptForecast readForecast(const Cursor& row);

constexpr std::string_view acknowledgementColumns
    = "id, unit_id, rule, part_id, zone_id, severity, grade, extent, reason, technician, acknowledged_at, "
      "taken_back_at";
[[nodiscard]] Acknowledgement readAcknowledgement(const Cursor& row);

constexpr std::string_view assumptionColumns = "code, value";
[[nodiscard]] UnitAssumption readAssumption(const Cursor& row);

} // namespace padside
