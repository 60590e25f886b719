// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/electrical.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

#include <array>

namespace padside {

namespace {

struct Section
{
    const char* code; ///< of the reading and of the nameplate's line
    const char* name;
};

constexpr std::array sections{Section{"capacitor-compressor", PADSIDE_SAY("Capacitor, compressor section,")},
                              Section{"capacitor-fan", PADSIDE_SAY("Capacitor, fan section,")}};

/// A capacitance held against the label in `plateItem`.
Verdict heldAgainstLabel(const Measured& measured, double farads, Told told, const char* plateItem)
{
    told.below = PADSIDE_SAY("it has lost capacity; replace it before it strands the motor.");
    told.above = PADSIDE_SAY("more than it is made for: the meter, or another capacitor than the label says.");
    told.source = measured.sourceOf("capacitor-label-tolerance");
    const auto label = measured.plate(plateItem);
    if (!label) {
        return noAnswer(told,
                        {PADSIDE_SAY("{0} {1}; note the value on its label to know what to ask for."),
                         {Word{told.name}, Amount{farads, QuantityKind::capacitance}}});
    }
    const Range range = around(*label, *label * measured.limit("capacitor-label-tolerance"),
                               *label * measured.limit("capacitor-spent"));
    return heldAgainst(farads, QuantityKind::capacitance, range, told);
}

void judgeUnderLoad(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const Taken* current = measured.find("capacitor-load-current");
    const auto voltage = measured.value("capacitor-load-voltage");
    if (current == nullptr || !voltage)
        return;
    Told told;
    told.code = "capacitor-under-load";
    told.from = {"capacitor-load-current", "capacitor-load-voltage"};
    told.name = PADSIDE_SAY("Capacitor under load");
    told.partId = current->partId;
    const auto farads = capacitanceUnderLoad(current->si, *voltage, measured.limit("line-frequency"));
    verdicts.push_back(farads ? heldAgainstLabel(measured, *farads, told, "capacitor-compressor")
                              : question(told.code, told.from, farads.error().what));
}

} // namespace

void judgeCapacitors(const Measured& measured, std::vector<Verdict>& verdicts)
{
    judgeUnderLoad(measured, verdicts);
    for (const Section& section : sections) {
        const Taken* taken = measured.find(section.code);
        if (taken == nullptr)
            continue;
        Told told;
        told.code = section.code;
        told.from = {section.code};
        told.name = section.name;
        told.partId = taken->partId;
        verdicts.push_back(heldAgainstLabel(measured, taken->si, told, section.code));
    }
}

} // namespace padside
