// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/scenario.h"

#include <array>

namespace padside {

namespace {

constexpr std::array<std::string_view, 2> technicians{"Ines Tarrow", "Joss Winnick"};

// Salt falls off quickly behind the first row of houses; the figures are invented, of the size ISO 9223 speaks of.
constexpr std::array sites{
    ScenarioSite{"HW", "Harbour Wall Café", "1 Harbour Wall, Merrowmouth", "Nell Garrick, counter",
                 "gate on the wall side; tide over the step above 4.8 m", 4, 11.2, 0.84, 6, 130, 2.0,
                 "Spray reaches the units in any westerly."},
    ScenarioSite{"FR", "Gull House, guest rooms", "8 Strand Row, Merrowmouth", "Mr Padgett, night bell",
                 "side passage, key at the desk; small dog, friendly", 6, 11.3, 0.82, 6, 65, 1.45,
                 "First row, open to the bay."},
    ScenarioSite{"BY", "Lantern Boatyard", "The Slip, Merrowmouth", "Yard office, ask for Wim",
                 "yard closed 12:00-13:00; hard hat", 3, 11.2, 0.84, 10, 60, 1.6, "Grinding dust and salt."},
    ScenarioSite{"TN", "Ovenlight Bakery", "22 Market Street, Merrowmouth", "Dora Finch, before 11:00",
                 "back lane; flour dust on the coil", 18, 11.5, 0.77, 8, 30, 1.0,
                 "Dryer and oven vents near the unit."},
    ScenarioSite{"LB", "Merrowmouth Library", "3 Assembly Place, Merrowmouth", "Front desk",
                 "roof ladder in the plant room, code 4417", 21, 11.5, 0.76, 8, 25, 0.9,
                 "Unit under a deep eave, rinsed by the caretaker each month."},
    ScenarioSite{"SC", "Hollin Lane School", "Hollin Lane, Merrowmouth", "Site manager, 07:30-15:30",
                 "sign in at the office; not during breaks", 34, 11.3, 0.77, 6, 18, 0.9, ""},
    ScenarioSite{"CH", "St Aldan's Hall", "Chapel Hill, Merrowmouth", "Mrs Orrin, warden",
                 "key under the warden's bench", 58, 11.0, 0.78, 5, 12, 0.8, "Hall used at weekends only."},
    ScenarioSite{"HF", "Upper Cray Farm", "Cray Top, above Merrowmouth", "Tam Hesketh",
                 "two gates, shut both; sheepdog loose", 410, 8.9, 0.80, 3, 5, 0.55,
                 "Cold, clean air; snow lies until March."}};

} // namespace

std::span<const ScenarioSite> scenarioSites()
{
    return sites;
}
std::span<const std::string_view> scenarioTechnicians()
{
    return technicians;
}

} // namespace padside
