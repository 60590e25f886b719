// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

#include <array>

namespace padside {

namespace {

struct Motor
{
    const char* reading;
    const char* plate; ///< the nameplate's line
    const char* lowestShare; ///< limits, as shares of the nameplate's current
    const char* farShare;
    const char* name;
    const char* below;
    const char* above;
};

constexpr std::array motors{Motor{"compressor-current", "compressor-rla", "compressor-current-lowest",
                                  "compressor-current-far", PADSIDE_SAY("Compressor current"),
                                  PADSIDE_SAY("it works little; low charge, a light load, or it does not pump."),
                                  PADSIDE_SAY("it works hard; head pressure, voltage, or wear.")},
                            Motor{"fan-current", "fan-fla", "fan-current-lowest", "fan-current-far",
                                  PADSIDE_SAY("Fan motor current"),
                                  PADSIDE_SAY("the fan moves little air, or the blade slips."),
                                  PADSIDE_SAY("bearings, capacitor, or the wrong blade.")}};

} // namespace

void judgeMotorCurrents(const Measured& measured, std::vector<Verdict>& verdicts)
{
    for (const Motor& motor : motors) {
        const Taken* taken = measured.find(motor.reading);
        if (taken == nullptr)
            continue;
        const Told told{motor.reading, {motor.reading}, motor.name,
                        motor.below,   motor.above,     measured.sourceOf(motor.farShare),
                        taken->partId};
        const auto rated = measured.plate(motor.plate);
        if (!rated) {
            verdicts.push_back(noAnswer(told,
                                        {PADSIDE_SAY("{0} {1}; note the nameplate's current to know what to ask for."),
                                         {Word{motor.name}, Amount{taken->si, QuantityKind::current}}}));
            continue;
        }
        const double lowest = *rated * measured.limit(motor.lowestShare);
        verdicts.push_back(heldAgainst(taken->si, QuantityKind::current,
                                       {lowest, *rated, 0.0, *rated * measured.limit(motor.farShare)}, told));
    }
}

} // namespace padside
