// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/quantity_kind.h"

#include <span>
#include <string_view>

namespace padside {

/// A unit people type and read: si = typed * factor + offset.
struct MeasuringUnit
{
    std::string_view code; ///< kept in the file; ASCII, never changes ("psig", "degF", "in")
    std::string_view symbol; ///< shown ("psig", "°F", "in")
    QuantityKind kind;
    double factor;
    double offset;
    int decimals; ///< digits after the point when shown
    std::span<const std::string_view> otherSpellings; ///< also understood, compared without regard to case
};

/// All units of one kind; the first is the metric choice.
[[nodiscard]] std::span<const MeasuringUnit> unitsOf(QuantityKind kind);

/// The unit with this code, or nullptr.
[[nodiscard]] const MeasuringUnit* unitByCode(std::string_view code);

/// The unit of `kind` that a person spelled so ("psi", "PSIG", "°F", "F"), or nullptr.
[[nodiscard]] const MeasuringUnit* unitBySpelling(std::string_view spelling, QuantityKind kind);

[[nodiscard]] double toSi(double typed, const MeasuringUnit& unit);
[[nodiscard]] double fromSi(double si, const MeasuringUnit& unit);

/// Which units a person reads.
enum class UnitSystem { metric, usCustomary };

/// The unit shown for `kind` in a system.
[[nodiscard]] const MeasuringUnit& shownUnit(QuantityKind kind, UnitSystem system);

/// The unit shown for this very value: as shownUnit(), but an insulation resistance is read in MΩ and a heater's in Ω,
/// so resistances take the largest unit that keeps the number at 1 or above.
[[nodiscard]] const MeasuringUnit& fittingUnit(QuantityKind kind, UnitSystem system, double si);

} // namespace padside
