// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/small_catalogue.h"

#include <array>
#include <stdexcept>

namespace padside::test {

namespace {

const std::string kinds = R"({
"unit_kinds": {"split-air-conditioner": {"name": "split air conditioner", "parts": {
    "suction-accumulator": {}, "fan-blade": {}, "fins": {}, "base-pan": {}, "run-capacitor": {"positions": ["fan", "compressor"]}}}},
"part_kinds": {
 "suction-accumulator": {"name": "Suction accumulator", "unit_kinds": ["split-air-conditioner"],
   "zones": {"crown": {"name": "crown"}, "shell": {"name": "shell"}, "bottom": {"name": "bottom"}},
   "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"},
   "tasks": {"spring-look": {"season": "spring", "sentence": "Look.", "needs": ["off"]},
             "fall-look": {"season": "fall", "sentence": "Look when dry.", "needs": ["dry", "off"]}},
   "failure_modes": ["rust"], "preserves": "paint", "consequences": ["loss-of-charge", "ends-unit"], "spare": "fair",
   "outlives_unit": false},
 "fan-blade": {"name": "Fan blade", "unit_kinds": ["split-air-conditioner"], "zones": {"root": {"name": "root"}},
   "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"}, "tasks": {},
   "failure_modes": ["crack"], "preserves": "balance", "consequences": ["safety"], "spare": "easy", "outlives_unit": true},
 "fins": {"name": "Fins", "unit_kinds": ["split-air-conditioner"], "zones": {"face": {"name": "face", "soiling": true}},
   "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"},
   "tasks": {"spring-wash": {"season": "spring", "sentence": "Wash.", "needs": ["off", "hot"]}},
   "failure_modes": ["matted"], "preserves": "washing", "consequences": ["loss-of-cooling"], "spare": "none",
   "outlives_unit": false},
 "base-pan": {"name": "Base pan", "unit_kinds": ["split-air-conditioner"], "zones": {"corners": {"name": "corners"}},
   "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"}, "tasks": {},
   "failure_modes": ["rust"], "preserves": "open holes", "consequences": ["nuisance"], "spare": "none",
   "outlives_unit": true},
 "run-capacitor": {"name": "Run capacitor", "unit_kinds": ["split-air-conditioner"], "zones": {"case": {"name": "case"}},
   "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"}, "tasks": {},
   "failure_modes": ["drift"], "preserves": "shade", "consequences": ["loss-of-cooling"], "spare": "easy",
   "outlives_unit": false}},
"reading_kinds": {}, "nameplate_items": {}, "refrigerants": {}, "cautions": {}, "coatings": {},
"leak_limits": {
 "small": {"name": "any charge", "use": "comfort-cooling", "smallest_charge_lb": 0, "limit_percent": 10, "force": "advisory", "source": "t"},
 "law": {"name": "the law", "use": "comfort-cooling", "smallest_charge_lb": 50, "limit_percent": 10, "force": "regulatory",
   "refrigerants": ["R-22"],
   "duties": {"repair_days": 30, "repair_days_with_shutdown": 120, "record_years": 3, "reported_loss_percent": 125}, "source": "u"}}, "reading_limits": {},
"outlook": {"pace_sigma": 0.6, "grade_shares": [0.25, 0.25, 0.25, 0.25], "unit_life_years": 20, "soiling_life_years": 4,
   "slowest_air": 0.2, "fastest_air": 5, "damp_factor": 1.2, "wet_factor": 1.5, "learning_sigma": 0.7, "furthest_years": 60,
   "protections": {"brush-and-coat": {"effect": 0.7, "years": 3}}, "corroding_zones": {"suction-accumulator": {"zones": ["crown", "shell", "bottom"]}, "base-pan": {"zones": ["corners"]}},
   "part_kinds": {}, "source": "s"}
})";

const std::string assumptions = R"({"assumptions": {
 "not-seen-months": {"name": "n", "topic": "flags", "value": 18, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "usual-wear-months": {"name": "n", "topic": "flags", "value": 12, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "work-holds-months": {"name": "n", "topic": "flags", "value": 36, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "faster-minimum-days": {"name": "n", "topic": "flags", "value": 60, "unit": "days", "lowest": 0, "highest": 3650, "sentence": "s", "source": "t"},
 "track-least-settled": {"name": "n", "topic": "forecasts", "value": 50, "unit": "1", "lowest": 1, "highest": 1000000, "sentence": "s", "source": "t"},
 "track-least-zones": {"name": "n", "topic": "forecasts", "value": 20, "unit": "1", "lowest": 1, "highest": 1000000, "sentence": "s", "source": "t"},
 "track-most-errors": {"name": "n", "topic": "forecasts", "value": 2, "unit": "1", "lowest": 0.1, "highest": 100, "sentence": "s", "source": "t"},
 "faster-factor": {"name": "n", "topic": "flags", "value": 1.5, "unit": "1", "lowest": 1, "highest": 100, "sentence": "s", "source": "t"},
 "grade-1-months": {"name": "n", "topic": "checks", "value": 12, "unit": "months", "lowest": 1, "highest": 600, "sentence": "s", "source": "t"},
 "grade-2-months": {"name": "n", "topic": "checks", "value": 12, "unit": "months", "lowest": 1, "highest": 600, "sentence": "s", "source": "t"},
 "grade-3-months": {"name": "n", "topic": "checks", "value": 12, "unit": "months", "lowest": 1, "highest": 600, "sentence": "s", "source": "t"},
 "grade-4-months": {"name": "n", "topic": "checks", "value": 12, "unit": "months", "lowest": 1, "highest": 600, "sentence": "s", "source": "t"},
 "grade-5-days": {"name": "n", "topic": "checks", "value": 14, "unit": "days", "lowest": 0, "highest": 3650, "sentence": "s", "source": "t"},
 "look-again-most-months": {"name": "n", "topic": "checks", "value": 12, "unit": "months", "lowest": 1, "highest": 600, "sentence": "s", "source": "t"},
 "see-dry-months": {"name": "n", "topic": "checks", "value": 6, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "kept-day-grace-days": {"name": "n", "topic": "checks", "value": 14, "unit": "days", "lowest": 0, "highest": 365, "sentence": "s", "source": "t"},
 "season-grace-days": {"name": "n", "topic": "checks", "value": 28, "unit": "days", "lowest": 0, "highest": 365, "sentence": "s", "source": "t"},
 "charge-put-back-days": {"name": "n", "topic": "flags", "value": 60, "unit": "days", "lowest": 0, "highest": 3650, "sentence": "s", "source": "t"},
 "top-up-again-months": {"name": "n", "topic": "flags", "value": 24, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "top-up-season-share": {"name": "n", "topic": "flags", "value": 0.1, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"},
 "top-up-season-days": {"name": "n", "topic": "flags", "value": 183, "unit": "days", "lowest": 0, "highest": 3650, "sentence": "s", "source": "t"},
 "rust-growing-share": {"name": "n", "topic": "flags", "value": 0.01, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"},
 "spent-tolerance-loss-of-charge": {"name": "n", "topic": "checks", "value": 0.02, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-compressor-at-risk": {"name": "n", "topic": "checks", "value": 0.02, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-ends-unit": {"name": "n", "topic": "checks", "value": 0.02, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-safety": {"name": "n", "topic": "checks", "value": 0.02, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-loss-of-cooling": {"name": "n", "topic": "checks", "value": 0.05, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-nuisance": {"name": "n", "topic": "checks", "value": 0.1, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "spent-tolerance-looks": {"name": "n", "topic": "checks", "value": 0.2, "unit": "share", "lowest": 0.0001, "highest": 0.5, "sentence": "s", "source": "t"},
 "acknowledged-worse-share": {"name": "n", "topic": "flags", "value": 0.25, "unit": "share", "lowest": 0, "highest": 10, "sentence": "s", "source": "t"},
 "likely-chance": {"name": "n", "topic": "forecasts", "value": 0.1, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"},
 "rust-spent-share": {"name": "n", "topic": "forecasts", "value": 0.4, "unit": "share", "lowest": 0.001, "highest": 1, "sentence": "s", "source": "t"},
 "spare-at-once-days": {"name": "n", "topic": "flags", "value": 3, "unit": "days", "lowest": 0, "highest": 1000, "sentence": "s", "source": "t"},
 "spent-plan-chance": {"name": "n", "topic": "flags", "value": 0.1, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"},
 "spent-act-chance": {"name": "n", "topic": "flags", "value": 0.3, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"},
 "drift-months": {"name": "n", "topic": "flags", "value": 12, "unit": "months", "lowest": 0, "highest": 600, "sentence": "s", "source": "t"},
 "window-open-share": {"name": "n", "topic": "checks", "value": 0.5, "unit": "share", "lowest": 0, "highest": 1, "sentence": "s", "source": "t"}
}})";

} // namespace

Catalogue smallCatalogue(const std::string& ownChanges)
{
    const std::array shipped{kinds, assumptions};
    auto catalogue = Catalogue::load(shipped, ownChanges);
    if (!catalogue)
        throw std::invalid_argument("the small catalogue: " + say(catalogue.error().what));
    return *catalogue;
}

} // namespace padside::test
