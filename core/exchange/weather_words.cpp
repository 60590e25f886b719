// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/weather_words.h"

#include <algorithm>

namespace padside {

std::vector<Sentence> weatherSaid(const WeatherYear& year, double surfaceK)
{
    return {{PADSIDE_SAY("Weather of {0} hours: on average {1} and {2} of relative humidity."),
             {Number{year.hours, 0}, Amount{year.meanTemperatureK, QuantityKind::temperature},
              Amount{year.meanHumidity, QuantityKind::ratio}}},
            {PADSIDE_SAY("Wet hours in a year (above 80 % and above 0 °C, ISO 9223): {0}."),
             {Number{year.wetHoursPerYear, 0}}},
            {PADSIDE_SAY("A bare suction line at {0} would be below the dew point, and sweat, for {1} of the time."),
             {Amount{surfaceK, QuantityKind::temperature}, Amount{year.sweatingShare, QuantityKind::ratio}}}};
}

std::vector<Sentence> weatherReservations(const WeatherFile& file, const WeatherYear& year, std::size_t mostNamed)
{
    std::vector<Sentence> said;
    if (!year.coversWholeYears())
        said.push_back({PADSIDE_SAY("The rows do not cover whole years: these are not means of a year."), {}});
    said.insert(said.end(), file.notes.begin(), file.notes.end());
    if (file.skipped > 0)
        said.push_back({PADSIDE_SAY("Rows skipped: {0}; of these, values were missing in {1}."),
                        {static_cast<std::int64_t>(file.skipped), static_cast<std::int64_t>(file.gaps)}});
    for (std::size_t i = 0; i < std::min(mostNamed, file.faults.size()); ++i)
        said.push_back(file.faults[i].what);
    return said;
}

} // namespace padside
