// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/coded.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What a unit is for, as leak rules sort appliances (40 CFR 82.152).
enum class LeakUse { comfortCooling, commercialRefrigeration, industrialProcess };

[[nodiscard]] constexpr auto codesOf(LeakUse)
{
    return std::array{
        Coded<LeakUse>{LeakUse::comfortCooling, "comfort-cooling", "comfort cooling"},
        Coded<LeakUse>{LeakUse::commercialRefrigeration, "commercial-refrigeration", "commercial refrigeration"},
        Coded<LeakUse>{LeakUse::industrialProcess, "industrial-process", "industrial process refrigeration"}};
}

/// Whether a limit binds, or is only worth heeding.
enum class LeakForce { regulatory, advisory };

[[nodiscard]] constexpr auto codesOf(LeakForce)
{
    return std::array{Coded<LeakForce>{LeakForce::regulatory, "regulatory", "regulatory"},
                      Coded<LeakForce>{LeakForce::advisory, "advisory", "advisory"}};
}

/// What a rule asks for once its limit is exceeded.
struct LeakDuties
{
    int repairDays = 0; ///< to repair the leak
    int repairDaysWithShutdown = 0; ///< the same where a plant has to be shut down for it
    int recordYears = 0; ///< to keep the records
    double reportedLoss = 0; ///< share of the full charge lost in a calendar year from which on it is to be reported
};

/// From what leak rate on something is to be done, for units of one use, charge and sort of refrigerant.
struct LeakLimit
{
    std::string code;
    std::string name; ///< which rule, in words
    LeakUse use = LeakUse::comfortCooling;
    double smallestChargeKg = 0; ///< holds for full charges of at least this; 0: for all
    double rate = 0; ///< share of the full charge a year, above 0
    LeakForce force = LeakForce::advisory;
    std::optional<Date> since; ///< empty: always
    std::vector<std::string> refrigerants; ///< empty: all
    std::optional<LeakDuties> duties; ///< only where the rule binds
    std::string source; ///< a published source, or "common practice, no source"
};

} // namespace padside
