// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/scenario.h"

#include <array>

namespace padside {

namespace {

constexpr std::string_view cooler = "split-air-conditioner";
constexpr std::string_view pump = "heat-pump";
constexpr auto orifice = Metering::fixedOrifice;
constexpr auto valve = Metering::thermostaticValve;
constexpr auto electronic = Metering::electronicValve;

// Makers and models are invented. The sites are numbered as in scenario_sites.cpp.
constexpr std::array units{
    ScenarioUnit{0, "01", pump, "Hestral", "HP-36C", "R-410A", valve, 8.6, 10.5,
                 "sea side of the wall, under the window", Story::seafrontVessel, true, "Ours since it was new."},
    ScenarioUnit{0, "02", cooler, "Brumwell", "B24-13", "R-410A", orifice, 12.4, 7.0, "lee side, behind the bins",
                 Story::newAccumulator, true, ""},
    ScenarioUnit{1, "01", pump, "Ostrick", "TideLine 30", "R-410A", valve, 10.5, 8.8, "south passage, on feet",
                 Story::motorFailure, false, ""},
    ScenarioUnit{1, "02", cooler, "Brumwell", "B36-10", "R-22", orifice, 20.4, 10.5, "north yard", Story::retires,
                 false, "Came with the house; age from the serial."},
    ScenarioUnit{1, "03", cooler, "Hestral", "AC-36E", "R-454B", valve, 3.1, 10.5, "north yard, on the old pad",
                 Story::successor, false, "Mildly flammable refrigerant: own tools, no flame."},
    ScenarioUnit{3, "01", cooler, "Ostrick", "Yard 42", "R-410A", valve, 11.5, 12.3, "back lane, by the oven vent",
                 Story::capacitorFailure, false, ""},
    ScenarioUnit{4, "01", pump, "Calvane", "Quiet 28", "R-32", electronic, 9.3, 8.2, "roof, under the eave",
                 Story::wellKept, false, "Caretaker rinses it monthly."},
    ScenarioUnit{5, "01", pump, "Hestral", "HP-48B", "R-410A", valve, 13.2, 14.0, "east wall, classroom block",
                 Story::ordinary, false, ""},
    ScenarioUnit{5, "02", cooler, "Hestral", "AC-30B", "R-410A", orifice, 13.2, 8.8, "east wall, office",
                 Story::openToday, false, ""},
    ScenarioUnit{6, "01", cooler, "Brumwell", "B30-10", "R-22", orifice, 22.3, 8.8, "behind the vestry",
                 Story::slowLeak, false, "Warden knows it will not last for ever."},
    ScenarioUnit{2, "01", pump, "Calvane", "Yard 36", "R-410A", valve, 11.1, 10.5, "workshop gable", Story::corrected,
                 false, ""},
    ScenarioUnit{2, "02", cooler, "Ostrick", "Yard 24", "R-410A", orifice, 14.3, 7.0, "office, on the slip side",
                 Story::stillDue, false, ""},
    ScenarioUnit{7, "01", pump, "Calvane", "Quiet 36", "R-32", electronic, 7.2, 10.5, "farmhouse, 45 cm legs",
                 Story::stillDue, false, ""},
    ScenarioUnit{7, "02", cooler, "Brumwell", "B18-13", "R-410A", orifice, 15.4, 5.3, "dairy, north side",
                 Story::ordinary, false, ""}};

} // namespace

std::span<const ScenarioUnit> scenarioUnits()
{
    return units;
}

} // namespace padside
