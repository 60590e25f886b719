// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/site_altitude.h"

#include "app/commands/calc/topics.h"
#include "core/air/station_pressure.h"

#include <CLI/CLI.hpp>

namespace padside {

void addAltitudeOption(CLI::App& topic, std::string& typed)
{
    typed = "0m";
    topic.add_option("--altitude", typed, "height of the site above the sea (0m)")->type_name("LENGTH");
}

double typedAltitudeM(const std::string& typed)
{
    return typedSi("--altitude", typed, QuantityKind::length);
}

double typedStationPressurePa(const std::string& typed)
{
    return orThrow(stationPressurePa(typedAltitudeM(typed)));
}

} // namespace padside
