// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/sample_costs.h"

#include "core/store/judgement_book.h"
#include "core/store/store.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

/// A JSON merge patch, as a person's own catalogue is kept. Start device and line insulation are left out on purpose:
/// it is seen how missing costs are named.
constexpr const char* invented = R"({
 "money": {"energy_price_per_kwh": 0.24, "upkeep_a_visit": 95},
 "refrigerant_prices": {"r-22": {"per_kg": 110}, "r-410a": {"per_kg": 46}, "r-32": {"per_kg": 38}, "r-454b": {"per_kg": 64},
                        "r-407c": {"per_kg": 52}},
 "costs": {
  "fins": {"part": 890, "labour": 640, "treatment": 40, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 3},
  "base-pan": {"part": 140, "labour": 380, "treatment": 45, "outage_a_day": 25},
  "fan-motor": {"part": 185, "labour": 120, "treatment": 12, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 4, "spare_a_year": 14},
  "fan-blade": {"part": 70, "labour": 60, "treatment": 10, "outage_a_day": 25},
  "cabinet": {"part": 340, "labour": 180, "treatment": 55, "outage_a_day": 0},
  "pad": {"part": 60, "labour": 150, "outage_a_day": 25},
  "crankcase-heater": {"part": 48, "labour": 70, "outage_a_day": 0, "damage": 1900, "damage_chance_percent": 15, "spare_a_year": 5},
  "contactor": {"part": 32, "labour": 60, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 3, "spare_a_year": 3},
  "run-capacitor": {"part": 24, "labour": 55, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 5, "spare_a_year": 3},
  "defrost-control": {"part": 210, "labour": 110, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 5, "spare_a_year": 16},
  "disconnect": {"part": 38, "labour": 80, "treatment": 8, "outage_a_day": 25},
  "whip": {"part": 34, "labour": 75, "outage_a_day": 25},
  "bonding": {"part": 9, "labour": 35, "treatment": 6, "outage_a_day": 0},
  "overcurrent-device": {"part": 42, "labour": 55, "outage_a_day": 25},
  "suction-accumulator": {"part": 240, "labour": 560, "treatment": 48, "outage_a_day": 25, "damage": 1900, "damage_chance_percent": 20, "spare_a_year": 18},
  "outdoor-coil": {"part": 890, "labour": 640, "treatment": 60, "outage_a_day": 25},
  "compressor": {"part": 1150, "labour": 780, "treatment": 35, "outage_a_day": 25, "damage": 0, "damage_chance_percent": 0, "spare_a_year": 90},
  "reversing-valve": {"part": 160, "labour": 480, "treatment": 20, "outage_a_day": 25},
  "outdoor-metering": {"part": 95, "labour": 320, "outage_a_day": 25},
  "filter-drier": {"part": 36, "labour": 240, "treatment": 12, "outage_a_day": 25},
  "service-valves": {"part": 58, "labour": 260, "treatment": 8, "outage_a_day": 25},
  "switches-and-tubing": {"part": 44, "labour": 190, "outage_a_day": 25}}})";

double roundedTo(double step, double value)
{
    return std::round(value / step) * step;
}

} // namespace

std::string costsPatch()
{
    return invented;
}

void writeAssumptions(Store& store, const Unit& unit, double yearsOld)
{
    const auto cooling = std::ranges::find(unit.nameplate, "rated-cooling", &NameplateValue::item);
    const double kilowatts = cooling != unit.nameplate.end() ? cooling->value.si / 1000 : 10;
    store.judgements().assume(unit.id, {"price-new", roundedTo(50, 1600 + 360 * kilowatts)});
    store.judgements().assume(unit.id, {"full-load-hours", 700});
    store.judgements().assume(unit.id, {"seer-old", roundedTo(0.5, std::clamp(15 - 0.25 * yearsOld, 9.0, 15.0))});
    store.judgements().assume(unit.id, {"seer-new", 16});
}

} // namespace padside
