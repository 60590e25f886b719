// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/station_pressure.h"
#include "tests/support/check_rows.h"
#include "tests/support/typed_units.h"

#include <gmock/gmock.h>

namespace padside::test {

TEST(StationPressure, IsThatOfThePublishedTables)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "std_atmosphere_pressure_Pa"))
        EXPECT_NEAR(stationPressurePa(row.number("altitude_m")).value(), *row.expected, row.tolerance) << row.what;
    for (const CheckRow& row : checkRows("air_checks.csv", "std_atmosphere_pressure_psi")) {
        const double pressure = stationPressurePa(si(row.number("altitude_ft"), "ft")).value();
        EXPECT_NEAR(in("psia", pressure), *row.expected, row.tolerance) << row.what;
    }
}

TEST(StationPressure, ComesFromTheTemperatureOfTheSameAtmosphere)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "std_atmosphere_temperature_F")) {
        const double temperature = standardTemperatureK(si(row.number("altitude_ft"), "ft")).value();
        EXPECT_NEAR(in("degF", temperature), *row.expected, row.tolerance) << row.what;
    }
}

TEST(StationPressure, IsWhatAGaugeChartForSeaLevelIsCorrectedBy)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "gauge_altitude_correction_psi")) {
        const double pressure = stationPressurePa(si(row.number("altitude_ft"), "ft")).value();
        EXPECT_NEAR(in("psia", seaLevelPressurePa - pressure), *row.expected, row.tolerance) << row.what;
    }
}

TEST(StationPressure, FallsWithEveryStepUp)
{
    double below = stationPressurePa(lowestAltitudeM).value();
    for (double altitude = lowestAltitudeM + 50; altitude <= highestAltitudeM; altitude += 50) {
        const double here = stationPressurePa(altitude).value();
        EXPECT_LT(here, below) << altitude;
        below = here;
    }
}

TEST(StationPressure, RefusesAltitudesThatNobodyWorksAt)
{
    for (const double altitude : {notANumber, endless, -endless, -1000.5, 11000.5, 1e300}) {
        const auto refused = stationPressurePa(altitude);
        ASSERT_FALSE(refused) << altitude;
        EXPECT_EQ(refused.error().kind, ProblemKind::badInput);
        EXPECT_THAT(say(refused.error().what),
                    testing::Not(testing::AnyOf(testing::HasSubstr("nan"), testing::HasSubstr("inf"))));
    }
    EXPECT_EQ(say(stationPressurePa(20000).error().what),
              "An altitude of 20000 m is outside -1000 to 11000 m. Give the height above the sea.");
}

} // namespace padside::test
