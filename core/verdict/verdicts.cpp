// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/verdicts.h"

#include "core/verdict/judges.h"

#include <array>

namespace padside {

namespace {

constexpr std::array<Judge, 12> judges{&judgeSense,         &judgeSuperheat,  &judgeSubcooling,      &judgeSplits,
                                       &judgeSupplyAir,     &judgeSweating,   &judgeMotorCurrents,   &judgeCapacitors,
                                       &judgeSupplyVoltage, &judgeInsulation, &judgeCrankcaseHeater, &judgePlainLimits};

} // namespace

std::vector<Verdict> verdictsOn(const Measured& measured)
{
    std::vector<Verdict> verdicts;
    if (measured.catalogue().readingLimits().empty())
        return verdicts; // nothing to hold them against
    for (const Judge judge : judges)
        judge(measured, verdicts);
    return verdicts;
}

} // namespace padside
