// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

/// Deposition of sulphur dioxide, mg/(m² d), from its concentration in the air, µg/m³ (ISO 9223:2012: Pd = 0.8 Pc).
[[nodiscard]] constexpr double depositionOfSulphurDioxide(double microgramsPerM3)
{
    constexpr double perConcentration = 0.8;
    return perConcentration * microgramsPerM3;
}

/// Which printing of ISO 9223 a class is read from; its limits for sulphur dioxide changed between them.
enum class StandardEdition { of1992, of2012 };

/// The last number of a pollution class, 0 to 3 (P0 to P3, S0 to S3); 4 is above the table.
/// `deposition` in mg/(m² d), >= 0.
[[nodiscard]] int sulphurDioxideClass(double deposition, StandardEdition edition);
[[nodiscard]] int chlorideClass(double deposition); ///< its limits are those of both editions

} // namespace padside
