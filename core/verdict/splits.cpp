// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

void judgeSplits(const Measured& measured, std::vector<Verdict>& verdicts)
{
    if (!measured.mayBeCooling())
        return;
    const auto condensing = measured.condensingK();
    const auto outdoor = measured.outdoorK();
    if (condensing && outdoor && *condensing > *outdoor) { // below: judgeSense asks
        verdicts.push_back(
            heldAgainst(*condensing - *outdoor, QuantityKind::temperatureDifference,
                        {measured.limit("condenser-split-lowest"), measured.limit("condenser-split-highest"),
                         std::nullopt, measured.limit("condenser-split-far")},
                        {"condenser-split",
                         {"outdoor-dry-bulb", "liquid-pressure"},
                         PADSIDE_SAY("Condensing above the outdoor air by"),
                         PADSIDE_SAY("little heat is given off; too little charge, or the compressor does not pump."),
                         PADSIDE_SAY("heat is given off with difficulty; coil, fan, charge."),
                         measured.sourceOf("condenser-split-highest")}));
    }
    const auto boiling = measured.boilingK();
    const auto returnAir = measured.value("return-dry-bulb");
    if (boiling && returnAir && *returnAir > *boiling) {
        const double target = measured.limit("evaporator-split-target");
        const double near = measured.limit("evaporator-split-tolerance");
        const double far = measured.limit("evaporator-split-far");
        verdicts.push_back(heldAgainst(*returnAir - *boiling, QuantityKind::temperatureDifference,
                                       around(target, near, far),
                                       {"evaporator-split",
                                        {"return-dry-bulb", "suction-pressure"},
                                        PADSIDE_SAY("Boiling below the return air by"),
                                        PADSIDE_SAY("the suction pressure is high for this air."),
                                        PADSIDE_SAY("the suction pressure is low for this air."),
                                        measured.sourceOf("evaporator-split-target")}));
    }
}

} // namespace padside
