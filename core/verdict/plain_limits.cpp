// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

#include <array>

namespace padside {

namespace {

/// One reading with an upper bound that is the same for every unit.
struct Bound
{
    const char* reading;
    QuantityKind quantity;
    const char* limit;
    const char* far;
    const char* name;
    const char* above;
};

constexpr std::array bounds{
    Bound{"discharge-line-temperature", QuantityKind::temperature, "discharge-line-highest", "discharge-line-far",
          PADSIDE_SAY("Discharge line"), PADSIDE_SAY("oil breaks down; low charge, high head, or little cooling gas.")},
    Bound{"drier-drop", QuantityKind::temperatureDifference, "drier-drop-highest", "drier-drop-far",
          PADSIDE_SAY("Temperature drop across the drier"), PADSIDE_SAY("it is plugging up.")},
    Bound{"contactor-volt-drop", QuantityKind::voltage, "contactor-drop-highest", "contactor-drop-highest",
          PADSIDE_SAY("Voltage drop across the contactor"), PADSIDE_SAY("pitted points or a loose connection.")},
    Bound{"ground-resistance", QuantityKind::resistance, "ground-resistance-highest", "ground-resistance-highest",
          PADSIDE_SAY("Ground continuity"), PADSIDE_SAY("the bond is loose, painted or rusted.")},
    Bound{"reversing-valve-rise", QuantityKind::temperatureDifference, "reversing-valve-rise-highest",
          "reversing-valve-rise-far", PADSIDE_SAY("Rise across the reversing valve"),
          PADSIDE_SAY("hot gas leaks through the valve.")}};

void judgeStaticPressure(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto pascals = measured.value("external-static-pressure");
    if (!pascals)
        return;
    const auto plate = measured.plate("static-pressure-limit");
    const double highest = plate.value_or(measured.limit("static-pressure-highest"));
    const double far = std::max(highest, plate.value_or(measured.limit("static-pressure-far")));
    Verdict verdict = heldAgainst(
        *pascals, QuantityKind::gaugePressure, {std::nullopt, highest, std::nullopt, far},
        {"external-static-pressure",
         {"external-static-pressure"},
         PADSIDE_SAY("External static pressure"),
         {},
         PADSIDE_SAY("the ducts, coil or filter choke the air."),
         plate ? PADSIDE_SAY("nameplate or the maker's data") : measured.sourceOf("static-pressure-highest")});
    verdicts.push_back(std::move(verdict));
}

} // namespace

void judgePlainLimits(const Measured& measured, std::vector<Verdict>& verdicts)
{
    for (const Bound& bound : bounds) {
        const Taken* taken = measured.find(bound.reading);
        if (taken == nullptr)
            continue;
        verdicts.push_back(
            heldAgainst(taken->si, bound.quantity,
                        {std::nullopt, measured.limit(bound.limit), std::nullopt, measured.limit(bound.far)},
                        {bound.reading,
                         {bound.reading},
                         bound.name,
                         {},
                         bound.above,
                         measured.sourceOf(bound.limit),
                         taken->partId}));
    }
    judgeStaticPressure(measured, verdicts);
}

} // namespace padside
