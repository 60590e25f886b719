// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/zone_nature.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

using enum NotSeenReason;
using enum PhotoSubject;
using enum Remarks;

constexpr std::string_view accumulator = "suction-accumulator";
constexpr std::string_view coil = "outdoor-coil";
constexpr std::optional<PhotoSubject> none;

constexpr std::array natures{
    ZoneNature{accumulator, "crown", 0.16, true, 0.20, 0.75, 0.10, covered, steel, true, vesselCrown},
    ZoneNature{accumulator, "shell", 0.15, true, 0.25, 0.75, 0.06, covered, steel, true, vesselShell},
    ZoneNature{accumulator, "bottom", 0.21, true, 0.45, 0.80, 0.14, noAccess, steel, true, vesselBottom},
    ZoneNature{accumulator, "joints", 0.07, true, 0.15, 0.65, 0.08, covered, copper, false, vesselJoints},
    ZoneNature{accumulator, "strap", 0.17, true, 0.20, 0.45, 0.15, covered, steel, true, vesselShell},
    ZoneNature{accumulator, "jacket-edge", 0.18, true, 0.45, 0.45, 0.35, covered, steel, true, none},
    ZoneNature{coil, "faces", 0.9, false, 0.15, 0.85, 0.02, noTime, dirt, false, fins},
    ZoneNature{coil, "lower-rows", 0.14, true, 0.25, 0.60, 0.06, noAccess, copper, false, none},
    ZoneNature{coil, "bends", 0.08, true, 0.10, 0.40, 0.15, covered, copper, false, tubing},
    ZoneNature{coil, "joints", 0.07, true, 0.10, 0.40, 0.12, covered, copper, false, tubing},
    ZoneNature{coil, "rub-points", 0.08, false, 0.05, 0.30, 0.15, covered, copper, false, none},
    ZoneNature{"fins", "faces", 0.12, true, 0.15, 0.60, 0.02, noTime, general, false, none},
    ZoneNature{"fan-motor", "bearings", 0.26, false, 0.00, 0.60, 0.10, running, moving, false, none},
    ZoneNature{"fan-motor", "body", 0.13, true, 0.10, 0.35, 0.10, running, steel, false, none},
    ZoneNature{"fan-blade", "blade", 0.06, false, 0.05, 0.45, 0.10, running, moving, false, none},
    ZoneNature{"fan-blade", "hub", 0.08, true, 0.05, 0.25, 0.15, running, steel, false, none},
    ZoneNature{"cabinet", "panels", 0.15, true, 0.25, 0.75, 0.00, noTime, steel, true, cabinet},
    ZoneNature{"cabinet", "seams", 0.18, true, 0.25, 0.60, 0.02, noTime, steel, true, cabinet},
    ZoneNature{"base-pan", "pan", 0.19, true, 0.50, 0.70, 0.06, noAccess, steel, true, basePan},
    ZoneNature{"base-pan", "drain-holes", 0.8, false, 0.40, 0.70, 0.06, noAccess, dirt, false, basePan},
    ZoneNature{"pad", "pad", 0.05, false, 0.25, 0.40, 0.02, iceOrSnow, general, false, none},
    ZoneNature{"clearances", "around", 0.6, false, 0.10, 0.45, 0.02, noTime, dirt, false, none},
    ZoneNature{"crankcase-heater", "band", 0.24, false, 0.05, 0.40, 0.15, noAccess, electrical, false, none},
    ZoneNature{"contactor", "points", 0.32, false, 0.00, 0.75, 0.05, running, electrical, false, contactor},
    ZoneNature{"run-capacitor", "body", 0.27, false, 0.00, 0.75, 0.03, running, electrical, false, capacitor},
    ZoneNature{"start-device", "body", 0.20, false, 0.00, 0.20, 0.10, noTime, electrical, false, none},
    ZoneNature{"defrost-control", "board", 0.07, false, 0.05, 0.40, 0.08, running, electrical, false, none},
    ZoneNature{"defrost-control", "sensor", 0.14, true, 0.15, 0.40, 0.10, noAccess, general, false, none},
    ZoneNature{"disconnect", "box", 0.13, true, 0.05, 0.45, 0.02, noTime, electrical, false, none},
    ZoneNature{"whip", "cable", 0.13, false, 0.05, 0.35, 0.02, noTime, electrical, false, none},
    ZoneNature{"bonding", "lug", 0.14, true, 0.05, 0.30, 0.08, noTime, electrical, false, none},
    ZoneNature{"overcurrent-device", "device", 0.04, false, 0.00, 0.20, 0.20, noAccess, electrical, false, none},
    ZoneNature{"compressor", "shell", 0.14, true, 0.20, 0.50, 0.15, covered, steel, true, none},
    ZoneNature{"compressor", "terminals", 0.08, false, 0.00, 0.35, 0.40, notSafe, electrical, false, none},
    ZoneNature{"compressor", "mounts", 0.14, true, 0.25, 0.35, 0.15, noAccess, steel, true, none},
    ZoneNature{"reversing-valve", "body", 0.08, true, 0.15, 0.40, 0.12, covered, copper, false, tubing},
    ZoneNature{"reversing-valve", "pilot-tubes", 0.07, false, 0.05, 0.30, 0.15, covered, copper, false, none},
    ZoneNature{"outdoor-metering", "valve", 0.06, false, 0.15, 0.25, 0.20, covered, copper, false, none},
    ZoneNature{"filter-drier", "shell", 0.20, true, 0.20, 0.45, 0.08, covered, steel, true, none},
    ZoneNature{"service-valves", "valves", 0.10, true, 0.10, 0.70, 0.01, noTime, copper, false, tubing},
    ZoneNature{"switches-and-tubing", "tubing", 0.09, true, 0.10, 0.30, 0.12, covered, copper, false, tubing},
    ZoneNature{"line-insulation", "outdoor-run", 0.40, false, 0.20, 0.55, 0.01, noTime, general, false, none},
    ZoneNature{"line-insulation", "wall-entry", 0.20, false, 0.10, 0.35, 0.05, noAccess, general, false, none}};

constexpr ZoneNature unknownNature{"", "", 0.1, false, 0.1, 0.3, 0.1, noTime, general, false, none};

using Lines = std::array<std::string_view, 3>;
constexpr std::array<Lines, 5> steelLines{
    Lines{"paint whole", "as new", "dry, no marks"},
    Lines{"first specks at the edge", "light rust, wipes off", "paint dull, a few spots"},
    Lines{"rust through the paint in patches", "blistering, picks off with a nail", "runs of rust below the seam"},
    Lines{"scale comes off in flakes, pits under it", "more pits than last time",
          "heavy, keep off with the brush while it is charged"},
    Lines{"rusted through", "hole you can feel", "metal gone at the edge"}};
constexpr std::array<Lines, 5> copperLines{
    Lines{"dry and clean", "no oil", "bright"}, Lines{"dulled, dry", "a little green at the collar", "brown but dry"},
    Lines{"green crust, no bubbles", "dusty ring, wiped and will watch", "slight oil mark, bubble test clear"},
    Lines{"oil stain is back after wiping", "oily, sniffer nervous", "rubbed bright where it touches"},
    Lines{"bubbles", "leaks", "worn through"}};
constexpr std::array<Lines, 5> electricalLines{
    Lines{"tight, no heat marks", "clean", "good"}, Lines{"slight browning", "one screw took a quarter turn", "dusty"},
    Lines{"points pitted", "heat mark on one lug", "hums when pulled in"},
    Lines{"badly burnt, order one", "hot under load", "top has begun to rise"}, Lines{"failed", "open", "stuck"}};
constexpr std::array<Lines, 5> dirtLines{
    Lines{"clean", "open", "clear"}, Lines{"some fluff", "a little mud", "weeds coming"},
    Lines{"half matted, washed from inside", "leaves and grit, raked out", "hedge has grown in"},
    Lines{"mat like felt", "one hole open out of four", "boxes stacked against it"},
    Lines{"blocked", "standing water", "no air gets in"}};
constexpr std::array<Lines, 5> movingLines{
    Lines{"spins free", "no play", "quiet"}, Lines{"runs down a bit fast", "faint hiss", "small nick"},
    Lines{"play at the shaft", "noisy when cold", "nicked by ice"},
    Lines{"rumbles, will not see another summer", "hot after ten minutes", "wobble at the tip"},
    Lines{"seized", "will not start by itself", "cracked at the root"}};
constexpr std::array<Lines, 5> generalLines{
    Lines{"fine", "as it should be", "no change"}, Lines{"starting to show its age", "sun has got at it", "small gap"},
    Lines{"cracked, taped for now", "split along the top", "bent over a hand's width"},
    Lines{"half of it gone", "soaked", "crumbles when touched"}, Lines{"gone", "no use any more", "bare"}};

constexpr const std::array<Lines, 5>& linesFor(Remarks remarks)
{
    switch (remarks) {
    case steel:
        return steelLines;
    case copper:
        return copperLines;
    case electrical:
        return electricalLines;
    case dirt:
        return dirtLines;
    case moving:
        return movingLines;
    case general:
        return generalLines;
    }
    return generalLines;
}

} // namespace

const ZoneNature& natureOf(std::string_view part, std::string_view zone)
{
    const auto* row
        = std::ranges::find_if(natures, [&](const ZoneNature& one) { return one.part == part && one.zone == zone; });
    return row == natures.end() ? unknownNature : *row;
}

std::span<const std::string_view> remarksFor(Remarks remarks, Grade grade)
{
    return linesFor(remarks)[static_cast<std::size_t>(numeral(grade) - 1)];
}

} // namespace padside
