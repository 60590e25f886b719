// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

#include <array>
#include <string>

namespace padside {

/// What an assumption is about.
enum class AssumptionTopic { checks, flags, forecasts };

[[nodiscard]] constexpr auto codesOf(AssumptionTopic)
{
    return std::array{Coded<AssumptionTopic>{AssumptionTopic::checks, "checks", "When to look again"},
                      Coded<AssumptionTopic>{AssumptionTopic::flags, "flags", "Flags"},
                      Coded<AssumptionTopic>{AssumptionTopic::forecasts, "forecasts", "Forecasts"}};
}

/// What an assumption is counted in. A share is written as a number of 0 to 1 and shown in per cent.
enum class AssumptionUnit { share, days, months, years, number };

[[nodiscard]] constexpr auto codesOf(AssumptionUnit)
{
    return std::array{Coded<AssumptionUnit>{AssumptionUnit::share, "share", "%"},
                      Coded<AssumptionUnit>{AssumptionUnit::days, "days", "days"},
                      Coded<AssumptionUnit>{AssumptionUnit::months, "months", "months"},
                      Coded<AssumptionUnit>{AssumptionUnit::years, "years", "years"},
                      Coded<AssumptionUnit>{AssumptionUnit::number, "1", "number"}};
}

/// A starting number of ours that a rule uses; shown to the person as an assumption and theirs to change.
struct Assumption
{
    std::string code;
    std::string name; ///< what it is in a few words, without its unit
    AssumptionTopic topic = AssumptionTopic::checks;
    double value = 0; ///< lowest..highest; whole days and months
    AssumptionUnit unit = AssumptionUnit::number;
    double lowest = 0;
    double highest = 0;
    std::string sentence; ///< what it decides
    std::string source;
};

} // namespace padside
