// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

void judgeCrankcaseHeater(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const Taken* shell = measured.find("shell-temperature");
    const auto outdoor = measured.outdoorK();
    if (shell == nullptr || !outdoor)
        return;
    const Running running = measured.conditions().running;
    const Told told{"crankcase-heater",
                    {"outdoor-dry-bulb", "shell-temperature"},
                    PADSIDE_SAY("Compressor shell warmer than the outdoor air by"),
                    PADSIDE_SAY("the heater does not keep refrigerant out of the oil; is it on, and since 12 hours?"),
                    {},
                    measured.sourceOf("heater-margin-good"),
                    shell->partId};
    if (running != Running::off && running != Running::unknown) {
        verdicts.push_back(noAnswer(
            told, {PADSIDE_SAY("The crankcase heater is judged with the unit off; noted is that it runs."), {}}));
        return;
    }
    verdicts.push_back(heldAgainst(
        shell->si - *outdoor, QuantityKind::temperatureDifference,
        {measured.limit("heater-margin-good"), std::nullopt, measured.limit("heater-margin-lowest"), std::nullopt},
        told));
}

} // namespace padside
