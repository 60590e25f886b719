// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/refrigerant/superheat.h"

#include "core/air/station_pressure.h"
#include "core/quantity/amounts.h"
#include "core/refrigerant/saturation.h"

#include <cmath>

namespace padside {

namespace {

using Curve = Result<double> (*)(const Refrigerant&, double);

/// The line and its saturation temperature; the difference is still to be told.
Result<LineState> lineState(const Refrigerant& refrigerant, const LineReading& reading, Curve saturationTemperatureK)
{
    if (!std::isfinite(reading.lineTemperatureK) || reading.lineTemperatureK <= 0)
        return problem(ProblemKind::badInput, PADSIDE_SAY("The line's temperature must be above absolute zero."));
    LineState state;
    const auto station = stationPressurePa(reading.altitudeM);
    if (!station)
        return tl::unexpected(station.error());
    state.stationPressurePa = *station;
    const auto absolute = absolutePressurePa(reading.gaugePa, *station);
    if (!absolute)
        return tl::unexpected(absolute.error());
    state.absolutePa = *absolute;
    return saturationTemperatureK(refrigerant, *absolute).map([state](double saturationK) mutable {
        state.saturationK = saturationK;
        return state;
    });
}

} // namespace

Result<double> absolutePressurePa(double gaugePa, double stationPressurePa)
{
    const double absolute = gaugePa + stationPressurePa;
    if (!std::isfinite(absolute))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The gauge pressure is not a number."));
    if (absolute <= 0) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A gauge pressure of {0} at a station pressure of {1} is less than a vacuum."),
                       {Amount{gaugePa, QuantityKind::gaugePressure}, absolutePressureAmount(stationPressurePa)});
    }
    return absolute;
}

Result<LineState> superheat(const Refrigerant& refrigerant, const LineReading& suction)
{
    return lineState(refrigerant, suction, dewTemperatureK).map([&suction](LineState state) {
        state.differenceK = suction.lineTemperatureK - state.saturationK;
        return state;
    });
}

Result<LineState> subcooling(const Refrigerant& refrigerant, const LineReading& liquid)
{
    return lineState(refrigerant, liquid, bubbleTemperatureK).map([&liquid](LineState state) {
        state.differenceK = state.saturationK - liquid.lineTemperatureK;
        return state;
    });
}

} // namespace padside
