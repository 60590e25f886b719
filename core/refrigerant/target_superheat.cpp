// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/refrigerant/target_superheat.h"

#include "core/quantity/amounts.h"
#include "core/quantity/unit.h"
#include "core/refrigerant/superheat_chart.h"

#include <cmath>

namespace padside {

namespace {

constexpr double lowestK = 223.15; // -50 °C
constexpr double highestK = 353.15; // 80 °C

double fahrenheitOf(double temperatureK)
{
    return fromSi(temperatureK, *unitByCode("degF"));
}

double kelvinSteps(double fahrenheitSteps)
{
    return toSi(fahrenheitSteps, *unitByCode("dF"));
}

} // namespace

Result<TargetSuperheat> targetSuperheat(double returnWetBulbK, double outdoorDryBulbK)
{
    for (const double temperature : {returnWetBulbK, outdoorDryBulbK}) {
        if (!std::isfinite(temperature))
            return problem(ProblemKind::badInput, PADSIDE_SAY("The temperature is not a number."));
        if (temperature < lowestK || temperature > highestK) {
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("{0} is outside {1} to {2}; no target superheat can be told from it."),
                           {temperatureAmount(temperature), temperatureAmount(lowestK), temperatureAmount(highestK)});
        }
    }
    const double wetBulbF = fahrenheitOf(returnWetBulbK);
    const double outdoorF = fahrenheitOf(outdoorDryBulbK);
    TargetSuperheat target;
    target.byFormulaK = kelvinSteps((3 * wetBulbF - 80 - outdoorF) / 2);
    if (const auto chartF = chartSuperheatF(wetBulbF, outdoorF))
        target.byChartK = kelvinSteps(*chartF);
    return target;
}

} // namespace padside
