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

void judgeUnderLoad(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const Taken* current = measured.find("capacitor-load-current");
    const auto voltage = measured.value("capacitor-load-voltage");
    if (current == nullptr || !voltage)
        return;
    const std::vector<std::string> from{"capacitor-load-current", "capacitor-load-voltage"};
    const auto farads = capacitanceUnderLoad(current->si, *voltage, measured.limit("line-frequency"));
    if (!farads) {
        verdicts.push_back(question("capacitor-under-load", from, farads.error().what));
        return;
    }
    const Told told{"capacitor-under-load",
                    from,
                    PADSIDE_SAY("Capacitor under load"),
                    PADSIDE_SAY("it has lost capacity; replace it before it strands the motor."),
                    PADSIDE_SAY("more than it is made for: the meter, or another capacitor than the label says."),
                    measured.sourceOf("capacitor-label-tolerance"),
                    current->partId};
    const auto label = measured.plate("capacitor-compressor");
    const Amount value{*farads, QuantityKind::capacitance};
    if (!label) {
        verdicts.push_back(noAnswer(
            told,
            {PADSIDE_SAY("{0} {1}; note the value on its label to know what to ask for."), {Word{told.name}, value}}));
        return;
    }
    const double near = measured.limit("capacitor-label-tolerance");
    const double far = measured.limit("capacitor-spent");
    verdicts.push_back(heldAgainst(*farads, QuantityKind::capacitance,
                                   {*label * (1 - near), *label * (1 + near), *label * (1 - far), *label * (1 + far)},
                                   told));
}

} // namespace

void judgeCapacitors(const Measured& measured, std::vector<Verdict>& verdicts)
{
    judgeUnderLoad(measured, verdicts);
    for (const Section& section : sections) {
        const Taken* taken = measured.find(section.code);
        if (taken == nullptr)
            continue;
        const Told told{section.code,
                        {section.code},
                        section.name,
                        PADSIDE_SAY("it has lost capacity; replace it before it strands the motor."),
                        PADSIDE_SAY("more than it is made for: the meter, or another capacitor than the label says."),
                        measured.sourceOf("capacitor-label-tolerance"),
                        taken->partId};
        const auto label = measured.plate(section.code);
        if (!label) {
            verdicts.push_back(noAnswer(told,
                                        {PADSIDE_SAY("{0} {1}; note the value on its label to know what to ask for."),
                                         {Word{section.name}, Amount{taken->si, QuantityKind::capacitance}}}));
            continue;
        }
        const double near = measured.limit("capacitor-label-tolerance");
        const double far = measured.limit("capacitor-spent");
        verdicts.push_back(
            heldAgainst(taken->si, QuantityKind::capacitance,
                        {*label * (1 - near), *label * (1 + near), *label * (1 - far), *label * (1 + far)}, told));
    }
}

} // namespace padside
