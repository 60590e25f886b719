// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Safety class of a refrigerant (ISO 817, ANSI/ASHRAE 34): A or B for how poisonous, 1 to 3 for how it burns.
enum class SafetyClass { a1, a2l, a2, a3, b1, b2l, b2, b3 };

[[nodiscard]] constexpr auto codesOf(SafetyClass)
{
    return std::array{Coded<SafetyClass>{SafetyClass::a1, "A1", "does not carry a flame"},
                      Coded<SafetyClass>{SafetyClass::a2l, "A2L", "mildly flammable"},
                      Coded<SafetyClass>{SafetyClass::a2, "A2", "flammable"},
                      Coded<SafetyClass>{SafetyClass::a3, "A3", "highly flammable"},
                      Coded<SafetyClass>{SafetyClass::b1, "B1", "poisonous, does not carry a flame"},
                      Coded<SafetyClass>{SafetyClass::b2l, "B2L", "poisonous, mildly flammable"},
                      Coded<SafetyClass>{SafetyClass::b2, "B2", "poisonous, flammable"},
                      Coded<SafetyClass>{SafetyClass::b3, "B3", "poisonous, highly flammable"}};
}

/// Whether it burns at all in air: any class but A1 and B1.
[[nodiscard]] bool isFlammable(SafetyClass safety);

/// One branch of a saturation curve: p = P exp((T_r / T) * sum of n_i (1 - T / T_r)^t_i).
struct SaturationCurve
{
    double reducingTemperatureK = 0; ///< T_r; of a fitted blend not its critical temperature
    double reducingPressurePa = 0; ///< P
    std::vector<double> coefficients; ///< n_i
    std::vector<double> exponents; ///< t_i, as many
};

/// The pressure of the curve at a temperature below its reducing temperature, Pa; neither argument is checked.
[[nodiscard]] double curvePressurePa(const SaturationCurve& curve, double temperatureK);

/// Global warming potential over 100 years.
struct WarmingPotential
{
    std::string report; ///< the assessment report it stands in: "AR4"
    double value = 0;
    std::string source;
};

/// What is known of a refrigerant.
struct Refrigerant
{
    std::string code; ///< as ANSI/ASHRAE 34 writes it: "R-410A"
    std::string composition;
    SafetyClass safetyClass = SafetyClass::a1;
    std::string safetySource;
    std::vector<WarmingPotential> warmingPotentials; ///< at least one; the first is shown where there is room for one
    double criticalTemperatureK = 0;
    std::string criticalSource;
    double lowestK = 0; ///< the curves are good from here
    double highestK = 0; ///< to here, or to marginBelowCriticalK below the critical temperature
    SaturationCurve bubble; ///< liquid that begins to boil
    SaturationCurve dew; ///< vapour that begins to condense; of a pure fluid the same
    bool glides = false; ///< bubble and dew differ
    std::string curveSource;
};

/// Nearer to the critical temperature than this nothing is answered: the curves are steep and the pressures uncertain.
constexpr double marginBelowCriticalK = 3;

/// The highest temperature an answer is given for, K.
[[nodiscard]] double highestSaturationK(const Refrigerant& refrigerant);

/// A designation to compare by: letters and digits in capitals, without the R in front.
[[nodiscard]] std::string bareDesignation(std::string_view typed);

/// Whether somebody who writes `typed` means this code: "r410a", "R 410A", "410A" and "R-410A" are one.
[[nodiscard]] bool meansRefrigerant(std::string_view typed, std::string_view code);

} // namespace padside
