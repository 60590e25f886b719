// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"
#include "core/verdict/supply_air_drop.h"

namespace padside {

void judgeSupplyAir(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto returnAir = measured.value("return-dry-bulb");
    const auto wetBulb = measured.value("return-wet-bulb");
    const auto supply = measured.value("supply-dry-bulb");
    if (!returnAir || !wetBulb || !supply || !measured.mayBeCooling() || *supply > *returnAir)
        return;
    const auto target = targetSupplyAirDropK(*returnAir, *wetBulb);
    if (!target)
        return;
    const double near = measured.limit("supply-air-drop-tolerance");
    const double far = measured.limit("supply-air-drop-far");
    verdicts.push_back(heldAgainst(*returnAir - *supply, QuantityKind::temperatureDifference,
                                   around(*target, near, far),
                                   {"supply-air-drop",
                                    {"return-dry-bulb", "return-wet-bulb", "supply-dry-bulb"},
                                    PADSIDE_SAY("Supply air colder than the return air by"),
                                    PADSIDE_SAY("the unit cools less than it should; measure again before judging it."),
                                    PADSIDE_SAY("little air moves over the indoor coil."),
                                    std::string(supplyAirDropSource)}));
}

} // namespace padside
