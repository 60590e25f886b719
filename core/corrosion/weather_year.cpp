// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/weather_year.h"

#include "core/air/water_vapour.h"
#include "core/corrosion/surface_humidity.h"
#include "core/corrosion/time_of_wetness.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace padside {

namespace {

constexpr double hoursInAYear = 8766; // 365.25 days

/// Answers, for many steps, what sweats() answers for one. Saturation pressures at whole kelvins settle nearly every
/// step: the pressure at a temperature lies between those of the whole kelvins around it.
class SweatQuestion
{
public:
    static Result<SweatQuestion> at(double surfaceK)
    {
        const auto surfacePa = saturationPressureOfWaterPa(surfaceK);
        if (!surfacePa)
            return tl::unexpected(surfacePa.error());
        SweatQuestion question(surfaceK, *surfacePa);
        for (double kelvin = std::floor(surfaceK); kelvin <= highestVapourTemperatureK; ++kelvin)
            question.m_atWholeK.push_back(
                saturationPressureOfWaterPa(std::max(kelvin, lowestVapourTemperatureK)).value());
        return question;
    }

    [[nodiscard]] Result<bool> sweatsIn(const WeatherStep& step) const
    {
        if (step.temperatureK <= m_surfaceK)
            return false; // the air would have to be above saturation
        const auto place = static_cast<std::size_t>(step.temperatureK - std::floor(m_surfaceK));
        if (place + 1 < m_atWholeK.size()) {
            if (step.humidity * m_atWholeK[place + 1] <= m_surfacePa)
                return false;
            if (step.humidity * m_atWholeK[place] > m_surfacePa)
                return true;
        }
        return sweats(step.temperatureK, step.humidity, m_surfaceK);
    }

private:
    SweatQuestion(double surfaceK, double surfacePa)
        : m_surfaceK(surfaceK)
        , m_surfacePa(surfacePa)
    {
    }

    double m_surfaceK;
    double m_surfacePa;
    std::vector<double> m_atWholeK; ///< from the whole kelvin below the surface on
};

} // namespace

bool WeatherYear::coversWholeYears() const
{
    constexpr double fewDays = 20 * 24.0;
    const double years = std::round(hours / hoursInAYear);
    return years >= 1 && std::abs(hours - years * hoursInAYear) <= fewDays;
}

Result<WeatherYear> digestWeather(std::span<const WeatherStep> steps, double surfaceK)
{
    WeatherYear year;
    double degreeHours = 0;
    double humidityHours = 0;
    const auto question = SweatQuestion::at(surfaceK);
    if (!question)
        return tl::unexpected(question.error());
    for (const WeatherStep& step : steps) {
        year.hours += step.hours;
        degreeHours += step.temperatureK * step.hours;
        humidityHours += step.humidity * step.hours;
        if (isWetHour(step.temperatureK, step.humidity))
            year.wetHours += step.hours;
        const auto wet = question->sweatsIn(step);
        if (!wet)
            return tl::unexpected(wet.error());
        if (*wet)
            year.sweatingHours += step.hours;
    }
    if (!(year.hours > 0))
        return problem(ProblemKind::badInput, PADSIDE_SAY("There is no weather to take means of."));
    year.meanTemperatureK = degreeHours / year.hours;
    year.meanHumidity = humidityHours / year.hours;
    year.wetHoursPerYear = year.wetHours * hoursInAYear / year.hours;
    year.wetnessClass = wetnessClass(year.wetHoursPerYear);
    year.sweatingShare = year.sweatingHours / year.hours;
    return year;
}

} // namespace padside
