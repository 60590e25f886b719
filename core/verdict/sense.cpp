// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

namespace {

constexpr double thermometerErrorK = 1.0; // two thermometers may differ so much; common practice, no source

Amount degrees(double kelvin)
{
    return {kelvin, QuantityKind::temperature};
}

void askAboutAir(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto dryBulb = measured.value("return-dry-bulb");
    const auto wetBulb = measured.value("return-wet-bulb");
    const auto supply = measured.value("supply-dry-bulb");
    if (dryBulb && wetBulb && *wetBulb > *dryBulb) {
        verdicts.push_back(question("wet-bulb-above-dry-bulb", {"return-dry-bulb", "return-wet-bulb"},
                                    {PADSIDE_SAY("A wet bulb of {0} in air of {1}: a wet bulb is never above the air. "
                                                 "Swapped, or the wick is dry?"),
                                     {degrees(*wetBulb), degrees(*dryBulb)}}));
    }
    if (!dryBulb || !supply)
        return;
    const Running running = measured.conditions().running;
    if (running == Running::cooling && *supply > *dryBulb + thermometerErrorK) {
        verdicts.push_back(question(
            "supply-warmer", {"return-dry-bulb", "supply-dry-bulb"},
            {PADSIDE_SAY("The supply air is warmer than the return air while the unit is noted as cooling."), {}}));
    } else if (running == Running::heating && *supply < *dryBulb - thermometerErrorK) {
        verdicts.push_back(question(
            "supply-colder", {"return-dry-bulb", "supply-dry-bulb"},
            {PADSIDE_SAY("The supply air is colder than the return air while the unit is noted as heating."), {}}));
    }
}

void askAboutLines(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto outdoor = measured.outdoorK();
    const auto suction = measured.value("suction-line-temperature");
    const auto liquid = measured.value("liquid-line-temperature");
    const auto returnAir = measured.value("return-dry-bulb");
    if (suction && outdoor && *suction > std::max(*outdoor, returnAir.value_or(*outdoor)) + thermometerErrorK) {
        verdicts.push_back(
            question("suction-line-hot", {"outdoor-dry-bulb", "suction-line-temperature"},
                     {PADSIDE_SAY("A suction line of {0} is warmer than any air around it, which can't be "
                                  "while the unit cools. Is it the right pipe?"),
                      {degrees(*suction)}}));
    }
    if (liquid && outdoor && *liquid < *outdoor - thermometerErrorK) {
        verdicts.push_back(question("liquid-line-cold", {"outdoor-dry-bulb", "liquid-line-temperature"},
                                    {PADSIDE_SAY("A liquid line of {0} is colder than the outdoor air, which can't be "
                                                 "while the unit cools. Is it the right pipe, and is the drier cold?"),
                                     {degrees(*liquid)}}));
    }
}

void askAboutPressures(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto suction = measured.value("suction-pressure");
    const auto liquid = measured.value("liquid-pressure");
    if (suction && liquid && *suction >= *liquid) {
        verdicts.push_back(
            question("pressures-swapped", {"suction-pressure", "liquid-pressure"},
                     {PADSIDE_SAY("The suction pressure is not below the liquid pressure: hoses swapped, "
                                  "or the unit is off."),
                      {}}));
        return;
    }
    const auto condensing = measured.condensingK();
    const auto outdoor = measured.outdoorK();
    if (condensing && outdoor && *condensing <= *outdoor) {
        verdicts.push_back(question("condensing-below-outdoor", {"outdoor-dry-bulb", "liquid-pressure"},
                                    {PADSIDE_SAY("At this liquid pressure {0} condenses at {1}, not above the outdoor "
                                                 "air: pressure in another unit of measure, another refrigerant, or "
                                                 "the unit is off."),
                                     {measured.unit().refrigerant, degrees(*condensing)}}));
    }
    const auto boiling = measured.boilingK();
    const auto returnAir = measured.value("return-dry-bulb");
    if (boiling && returnAir && *boiling >= *returnAir) {
        verdicts.push_back(question("boiling-above-return-air", {"return-dry-bulb", "suction-pressure"},
                                    {PADSIDE_SAY("At this suction pressure {0} boils at {1}, not below the return air: "
                                                 "pressure in another unit of measure, another refrigerant, or the "
                                                 "unit is off."),
                                     {measured.unit().refrigerant, degrees(*boiling)}}));
    }
}

} // namespace

void judgeSense(const Measured& measured, std::vector<Verdict>& verdicts)
{
    askAboutAir(measured, verdicts);
    if (!measured.mayBeCooling())
        return;
    askAboutLines(measured, verdicts);
    askAboutPressures(measured, verdicts);
}

} // namespace padside
