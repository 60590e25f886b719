// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/refrigerant.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace padside {

bool isFlammable(SafetyClass safety)
{
    return safety != SafetyClass::a1 && safety != SafetyClass::b1;
}

double curvePressurePa(const SaturationCurve& curve, double temperatureK)
{
    const double below = 1 - temperatureK / curve.reducingTemperatureK;
    double sum = 0;
    for (std::size_t i = 0; i < curve.coefficients.size(); ++i)
        sum += curve.coefficients[i] * std::pow(below, curve.exponents[i]);
    return curve.reducingPressurePa * std::exp(sum * curve.reducingTemperatureK / temperatureK);
}

double highestSaturationK(const Refrigerant& refrigerant)
{
    return std::min(refrigerant.highestK, refrigerant.criticalTemperatureK - marginBelowCriticalK);
}

std::string bareDesignation(std::string_view typed)
{
    std::string bare;
    for (const char c : typed) {
        if (c >= 'a' && c <= 'z')
            bare += static_cast<char>(c - 'a' + 'A');
        else if ((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'))
            bare += c;
        else if (c != ' ' && c != '-')
            bare += '?'; // anything else makes it another name
    }
    if (bare.starts_with('R'))
        bare.erase(0, 1);
    return bare;
}

bool meansRefrigerant(std::string_view typed, std::string_view code)
{
    const std::string bare = bareDesignation(typed);
    return !bare.empty() && bare == bareDesignation(code);
}

} // namespace padside
