// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/charge_test.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

namespace {

Told subcoolingTold(std::string source)
{
    return {"subcooling",
            {"liquid-pressure", "liquid-line-temperature"},
            PADSIDE_SAY("Subcooling"),
            PADSIDE_SAY("less liquid stands in the condenser than asked for."),
            PADSIDE_SAY("more liquid stands in the condenser than asked for."),
            std::move(source)};
}

} // namespace

void judgeSubcooling(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto subcooling = measured.subcoolingK();
    if (!subcooling) {
        if (auto why = whyNoSaturation(measured, "liquid-pressure"))
            verdicts.push_back(noAnswer(subcoolingTold({}), std::move(*why)));
        return;
    }
    const Amount value{*subcooling, QuantityKind::temperatureDifference};
    if (*subcooling < 0) {
        Verdict doubt
            = question("subcooling", {"liquid-pressure", "liquid-line-temperature"},
                       {PADSIDE_SAY("The liquid line is {0} warmer than the refrigerant condenses at this pressure: "
                                    "vapour in the line, or a reading is off."),
                        {Amount{-*subcooling, QuantityKind::temperatureDifference}}});
        doubt.value = value;
        doubt.side = Side::below;
        verdicts.push_back(std::move(doubt));
        return;
    }
    if (auto why = whyNoChargeTest(measured)) {
        verdicts.push_back(noAnswer(subcoolingTold({}), std::move(*why)));
        return;
    }
    if (const auto plate = measured.plate("subcooling-target")) {
        const double tolerance = measured.limit("subcooling-tolerance");
        verdicts.push_back(heldAgainst(*subcooling, QuantityKind::temperatureDifference,
                                       around(*plate, tolerance, 2 * tolerance),
                                       subcoolingTold(PADSIDE_SAY("nameplate or the maker's data"))));
        return;
    }
    if (measured.unit().metering == Metering::fixedOrifice) {
        verdicts.push_back(noAnswer(
            subcoolingTold({}),
            {PADSIDE_SAY("Subcooling {0}; with a fixed orifice the charge is judged by superheat."), {value}}));
        return;
    }
    const double lowest = measured.limit("subcooling-usual-lowest");
    const double highest = measured.limit("subcooling-usual-highest");
    const double tolerance = measured.limit("subcooling-tolerance");
    verdicts.push_back(heldAgainst(*subcooling, QuantityKind::temperatureDifference,
                                   {lowest, highest, lowest - tolerance, highest + tolerance},
                                   subcoolingTold(measured.sourceOf("subcooling-usual-lowest"))));
}

} // namespace padside
