// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"

#include "core/flags/rule.h"

#include <array>

namespace padside {

std::span<const Rule> allRules()
{
    static constexpr std::array rules{
        Rule{"spent", spent},
        Rule{"spent-before-next-visit", spentBeforeNextVisit},
        Rule{"safety-part-poor", safetyPartPoor},
        Rule{"end-of-unit-part-poor", endOfUnitPartPoor},
        Rule{"treated-but-worse-again", treatedButWorseAgain},
        Rule{"worse-faster", worseFaster},
        Rule{"worse-by-a-grade", worseByAGrade},
        Rule{"not-seen-too-long", notSeenTooLong},
        Rule{"better-without-work", betterWithoutWork},
        Rule{"wet-and-bare", wetAndBare},
        Rule{"wall-near-minimum", wallNearMinimum},
        Rule{"rust-growing", rustGrowing},
    };
    return rules;
}

std::span<const UnitRule> allUnitRules()
{
    static constexpr std::array rules{
        UnitRule{"order-spare-now", orderSpareNow},    UnitRule{"charge-added-again", chargeAddedAgain},
        UnitRule{"reading-outside", readingOutside},   UnitRule{"crankcase-heater-cold", crankcaseHeaterCold},
        UnitRule{"reading-drifting", readingDrifting},
    };
    return rules;
}

} // namespace padside
