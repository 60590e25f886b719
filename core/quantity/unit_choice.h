// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/unit.h"

#include <map>
#include <string>

namespace padside {

/// The units a person reads and types without naming them: those of a system, but for the quantities they chose
/// otherwise.
struct UnitChoice
{
    UnitSystem system = UnitSystem::metric;
    std::map<QuantityKind, std::string> own; ///< unit codes; a code that is not of its quantity counts for nothing

    UnitChoice() = default;
    UnitChoice(UnitSystem usual) // NOLINT(google-explicit-constructor): a system is a choice
        : system(usual)
    {
    }

    friend bool operator==(const UnitChoice&, const UnitChoice&) = default;
};

/// The unit shown for `kind`: the person's own, else the system's.
[[nodiscard]] const MeasuringUnit& shownUnit(QuantityKind kind, const UnitChoice& choice);

/// The unit shown for this very value; see the overload for a system.
[[nodiscard]] const MeasuringUnit& fittingUnit(QuantityKind kind, const UnitChoice& choice, double si);

/// The unit of something measured that has usual units of its own (a static pressure is read in Pa or in. w.c., not in
/// kPa or psig). Where its unit is the one usual for the quantity the person's own choice holds; where it is not,
/// theirs was not made for it, and its own unit stays. Empty or unknown codes: as shownUnit().
[[nodiscard]] const MeasuringUnit& unitFor(QuantityKind kind, const UnitChoice& choice, std::string_view metricCode,
                                           std::string_view customaryCode);

} // namespace padside
