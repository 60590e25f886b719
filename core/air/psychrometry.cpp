// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/psychrometry.h"

#include <cmath>

namespace padside {

namespace {

constexpr double zeroCelsiusK = 273.15;
constexpr double molarMassRatio = 0.621945; // water to dry air
constexpr double heatOfDryAir = 1.006; // kJ/(kg K)
constexpr double heatOfVapour = 1.86; // kJ/(kg K)

/// What evaporates from the bulb: heat of evaporation at 0 °C, its change per kelvin, heat of the water or ice, kJ/kg.
struct Bulb
{
    double evaporation;
    double perKelvin;
    double liquidHeat;
};

Bulb bulbAt(double wetBulbK)
{
    return wetBulbK >= iceBulbBelowK ? Bulb{2501, 2.326, 4.186} : Bulb{2830, 0.24, 2.1};
}

} // namespace

double waterSaturationPa(double temperatureK)
{
    const double t = temperatureK;
    if (t <= triplePointK) {
        return std::exp(-5.6745359e3 / t + 6.3925247
                        + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13)))
                        + 4.1635019 * std::log(t));
    }
    return std::exp(-5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
                    + 6.5459673 * std::log(t));
}

double humidityRatioFromVapour(double vapourPressurePa, double stationPressurePa)
{
    return molarMassRatio * vapourPressurePa / (stationPressurePa - vapourPressurePa);
}

double vapourFromHumidityRatio(double humidityRatio, double stationPressurePa)
{
    return stationPressurePa * humidityRatio / (molarMassRatio + humidityRatio);
}

double humidityRatioFromBulbs(double dryBulbK, double wetBulbK, double stationPressurePa)
{
    const Bulb bulb = bulbAt(wetBulbK);
    const double dry = dryBulbK - zeroCelsiusK;
    const double wet = wetBulbK - zeroCelsiusK;
    const double saturated = humidityRatioFromVapour(waterSaturationPa(wetBulbK), stationPressurePa);
    return ((bulb.evaporation - bulb.perKelvin * wet) * saturated - heatOfDryAir * (dry - wet))
        / (bulb.evaporation + heatOfVapour * dry - bulb.liquidHeat * wet);
}

double dryBulbFromWetBulb(double wetBulbK, double humidityRatio, double stationPressurePa)
{
    const Bulb bulb = bulbAt(wetBulbK);
    const double wet = wetBulbK - zeroCelsiusK;
    const double saturated = humidityRatioFromVapour(waterSaturationPa(wetBulbK), stationPressurePa);
    const double dry = ((bulb.evaporation - bulb.perKelvin * wet) * saturated + heatOfDryAir * wet
                        - humidityRatio * (bulb.evaporation - bulb.liquidHeat * wet))
        / (heatOfDryAir + heatOfVapour * humidityRatio);
    return dry + zeroCelsiusK;
}

} // namespace padside
