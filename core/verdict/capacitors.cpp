// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
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

} // namespace

void judgeCapacitors(const Measured& measured, std::vector<Verdict>& verdicts)
{
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
