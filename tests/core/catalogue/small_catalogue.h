// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "resources/resources.h"

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace padside::test {

using Json = nlohmann::ordered_json;

/// A catalogue with one of everything, small enough to read.
inline std::string smallCatalogue()
{
    return R"({
  "unit_kinds": {"heat-pump": {"name": "heat pump", "parts": {"pad": {}, "fins": {"positions": ["left", "right"]}}}},
  "part_kinds": {
    "pad": {
      "name": "Pad", "unit_kinds": ["heat-pump"],
      "zones": {"top": {"name": "top"},
                "drain": {"name": "drain", "soiling": true, "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"}}},
      "grades": {"1": "level", "2": "nearly level", "3": "tilted", "4": "sunk", "5": "leaning"},
      "tasks": {"spring-pad": {"season": "spring", "sentence": "Measure the slope.", "needs": ["dry", "above-13C"]},
                "fall-pad": {"season": "fall", "sentence": "Look at the feet.", "required": false}},
      "failure_modes": ["tilt"], "preserves": "gravel", "consequences": ["nuisance", "loss-of-charge"],
      "spare": "easy", "outlives_unit": true,
      "median_life": {"years": 20, "source": "common practice, no source"}, "cautions": ["sharp"]},
    "fins": {
      "name": "Fins", "unit_kinds": ["heat-pump"], "zones": {"faces": {"name": "faces"}},
      "grades": {"1": "straight", "2": "a few bent", "3": "many bent", "4": "crumbling", "5": "gone"},
      "tasks": {}, "failure_modes": [], "preserves": "rinsing", "consequences": [], "spare": "none", "outlives_unit": false}},
  "reading_kinds": {"pad-height": {"name": "height", "quantity": "length", "metric_unit": "mm", "customary_unit": "in",
      "part_kind": "pad", "needs": ["off"], "lowest": 10, "highest": 1500, "where": "At the lowest corner.", "seasons": ["fall"]}},
  "reading_limits": {},
  "nameplate_items": {"charge": {"name": "charge", "quantity": "mass", "metric_unit": "kg", "customary_unit": "lb"}},
  "refrigerants": {"r-134a": {"designation": "R-134a", "composition": "a fluid", "safety": {"class": "A1", "source": "s"},
      "gwp": {"ar4": {"value": 1430, "source": "s"}}, "critical": {"temperature_K": 374.21, "source": "s"},
      "saturation": {"lowest_K": 200, "highest_K": 374, "source": "s",
        "bubble": {"reducing_K": 374.21, "reducing_Pa": 4059280, "coefficients": [-7.5], "exponents": [1]}}}},
  "cautions": {"sharp": {"sentence": "Fins cut."}, "advice": {"sentence": "All of this is advice.", "always": true}},
  "assumptions": {"wait": {"name": "wait", "topic": "checks", "value": 1.5, "unit": "years", "lowest": 0, "highest": 9,
      "sentence": "Waits this long.", "source": "common practice, no source"}},
  "leak_limits": {"law": {"name": "the law", "use": "comfort-cooling", "smallest_charge_lb": 50, "limit_percent": 10,
      "force": "regulatory", "since": "2026-01-01", "refrigerants": ["R-22"],
      "duties": {"repair_days": 30, "repair_days_with_shutdown": 120, "record_years": 3, "reported_loss_percent": 125},
      "source": "a rule"}},
  "coatings": {"primer": {"name": "primer", "dry_hours": 4, "reference_celsius": 20, "lowest_celsius": 5,
      "highest_humidity_percent": 85, "source": "common practice, no source"}},
  "outlook": {"pace_sigma": 0.6, "grade_shares": [0.25, 0.25, 0.25, 0.25], "unit_life_years": 20, "soiling_life_years": 4,
   "slowest_air": 0.2, "fastest_air": 5, "damp_factor": 1.2, "wet_factor": 1.5, "learning_sigma": 0.7, "furthest_years": 60,
   "protections": {"brush-and-coat": {"effect": 0.7, "years": 3}}, "corroding_zones": {"pad": {"zones": ["top"]}},
   "part_kinds": {}, "source": "s"}
})";
}

/// The small catalogue with a merge patch laid over it, as if we had shipped it so.
inline std::string smallCatalogueWith(const std::string& patch)
{
    Json json = Json::parse(smallCatalogue());
    json.merge_patch(Json::parse(patch));
    return json.dump();
}

/// What loading says: empty if it loads.
inline std::string complaint(const std::vector<std::string>& shipped, const std::string& own = {})
{
    const auto loaded = Catalogue::load(shipped, own);
    return loaded ? std::string() : say(loaded.error().what);
}

} // namespace padside::test
