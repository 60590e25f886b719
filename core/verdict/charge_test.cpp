// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/charge_test.h"

#include "core/refrigerant/saturation.h"

namespace padside {

std::optional<Sentence> whyNoChargeTest(const Measured& measured)
{
    if (!measured.mayBeCooling())
        return Sentence{PADSIDE_SAY("The charge is judged while the unit runs cooling; noted is another state."), {}};
    const auto outdoor = measured.outdoorK();
    const double coldest = measured.limit("charge-test-outdoor-lowest");
    if (outdoor && *outdoor < coldest) {
        return Sentence{
            PADSIDE_SAY("At {0} outdoors superheat and subcooling don't tell the charge (from {1} on); weigh "
                        "it instead."),
            {Amount{*outdoor, QuantityKind::temperature}, Amount{coldest, QuantityKind::temperature}}};
    }
    return std::nullopt;
}

std::optional<Sentence> whyNoSaturation(const Measured& measured, std::string_view pressureKind)
{
    const auto gauge = measured.value(pressureKind);
    if (!gauge)
        return std::nullopt;
    if (measured.refrigerant() == nullptr) {
        if (measured.unit().refrigerant.empty())
            return Sentence{PADSIDE_SAY("Pressures mean little without the refrigerant: note it with the unit."), {}};
        return Sentence{PADSIDE_SAY("No curve of {0} is known, so pressures can't be turned into temperatures."),
                        {measured.unit().refrigerant}};
    }
    if (!measured.stationPressurePa())
        return Sentence{PADSIDE_SAY("The site's altitude makes no sense, so gauge pressures can't be used."), {}};
    const double absolute = *gauge + *measured.stationPressurePa();
    const bool suction = pressureKind == "suction-pressure";
    const auto found = suction ? dewTemperatureK(*measured.refrigerant(), absolute)
                               : bubbleTemperatureK(*measured.refrigerant(), absolute);
    if (found)
        return std::nullopt;
    return found.error().what;
}

} // namespace padside
