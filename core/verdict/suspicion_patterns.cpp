// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/suspicion_patterns.h"

#include <array>

namespace padside {

namespace {

using enum Side;

// "evaporator-split" above: the suction pressure is low for the air; below: high. "condenser-split" stands for the
// head.
constexpr std::array lowCharge{Expectation{"superheat", above},
                               Expectation{"subcooling", below, 1.5},
                               Expectation{"evaporator-split", above},
                               Expectation{"condenser-split", below, 1, true},
                               Expectation{"compressor-current", below, 0.5, true},
                               Expectation{"discharge-line-temperature", above, 0.5, true}};
constexpr std::array restriction{
    Expectation{"superheat", above}, Expectation{"subcooling", above, 1.5}, Expectation{"evaporator-split", above},
    Expectation{"condenser-split", above, 0.5, true}, Expectation{"drier-drop", above, 2, true}};
constexpr std::array overcharge{Expectation{"superheat", below, 1, true}, Expectation{"subcooling", above, 1.5},
                                Expectation{"evaporator-split", below, 1, true}, Expectation{"condenser-split", above},
                                Expectation{"compressor-current", above, 0.5, true}};
constexpr std::array lowAirflow{Expectation{"superheat", below},
                                Expectation{"evaporator-split", above},
                                Expectation{"supply-air-drop", above, 1.5},
                                Expectation{"subcooling", inside, 0.5},
                                Expectation{"external-static-pressure", above, 1, true},
                                Expectation{"condenser-split", below, 0.5, true}};
constexpr std::array notPumping{
    Expectation{"superheat", below, 0.5, true},        Expectation{"evaporator-split", below, 1.5},
    Expectation{"condenser-split", below, 1.5},        Expectation{"subcooling", below, 0.5, true},
    Expectation{"compressor-current", below, 1, true}, Expectation{"reversing-valve-rise", above, 1, true},
    Expectation{"supply-air-drop", below, 0.5, true}};
constexpr std::array dirtyCondenser{Expectation{"condenser-split", above, 2},
                                    Expectation{"superheat", inside},
                                    Expectation{"subcooling", above, 0.5, true},
                                    Expectation{"evaporator-split", inside, 0.5},
                                    Expectation{"compressor-current", above, 0.5, true},
                                    Expectation{"fan-current", below, 0.5, true}};

constexpr std::array patterns{
    SuspicionPattern{
        "low-charge", PADSIDE_SAY("low charge or a leak"),
        PADSIDE_SAY("Search for the leak first; then weigh what is in it. Subcooling and superheat together "
                    "tell it from a restriction."),
        lowCharge},
    SuspicionPattern{"restriction", PADSIDE_SAY("a restriction (drier, valve or screen)"),
                     PADSIDE_SAY("The temperature drop across the drier, and where frost begins on the line."),
                     restriction},
    SuspicionPattern{
        "overcharge", PADSIDE_SAY("too much charge"),
        PADSIDE_SAY("Recover and weigh it; before that, a clean coil and its fan are ruled out by looking."),
        overcharge},
    SuspicionPattern{"low-airflow", PADSIDE_SAY("too little air over the indoor coil"),
                     PADSIDE_SAY("External static pressure, filter and blower; supply and return air temperature."),
                     lowAirflow},
    SuspicionPattern{
        "not-pumping", PADSIDE_SAY("a compressor that pumps little, or a valve that lets gas by"),
        PADSIDE_SAY("The compressor's current, and the temperatures on both sides of the reversing valve."),
        notPumping},
    SuspicionPattern{"dirty-condenser", PADSIDE_SAY("a dirty outdoor coil, a weak fan, or air in the circuit"),
                     PADSIDE_SAY("Wash the coil and take the liquid pressure again; look at the fan's current."),
                     dirtyCondenser}};

} // namespace

std::span<const SuspicionPattern> suspicionPatterns()
{
    return patterns;
}

} // namespace padside
