// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/moist_air.h"
#include "core/air/psychrometry.h"
#include "core/air/station_pressure.h"
#include "tests/support/check_rows.h"
#include "tests/support/reference_table.h"
#include "tests/support/typed_units.h"

#include <cmath>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

AirReadings bulbsOf(const CheckRow& row)
{
    if (row.gives("DB_F"))
        return {.dryBulbK = fahrenheit(row.number("DB_F")), .wetBulbK = fahrenheit(row.number("WB_F"))};
    return {.dryBulbK = celsius(row.number("DB_C")), .wetBulbK = celsius(row.number("WB_C"))};
}

double stationOf(const CheckRow& row)
{
    return row.gives("P_psi") ? si(row.number("P_psi"), "psia") : row.number("P_Pa");
}

double wantedOf(const CheckRow& row, const MoistAir& air)
{
    if (row.wanted == "W")
        return air.humidityRatio;
    if (row.wanted == "dew_C")
        return in("degC", air.dewPointK);
    if (row.wanted == "dew_F")
        return in("degF", air.dewPointK);
    if (row.wanted == "RH")
        return air.relativeHumidity;
    if (row.wanted == "RH_pct")
        return air.relativeHumidity * 100;
    const double volume = moistAirVolumeM3PerKg(air.dryBulbK, air.humidityRatio, air.stationPressurePa);
    if (row.wanted == "v_m3_kg")
        return volume;
    if (row.wanted == "v_ft3_lb")
        return volume * 0.45359237 / (0.3048 * 0.3048 * 0.3048);
    ADD_FAILURE() << "no such figure: " << row.wanted;
    return notANumber;
}

} // namespace

TEST(MoistAirAsPublished, FromWetBulb)
{
    for (const char* topic : {"ashrae_example_SI", "ashrae_example_IP", "state_from_wet_bulb"}) {
        for (const CheckRow& row : checkRows("air_checks.csv", topic)) {
            const MoistAir air = moistAir(bulbsOf(row), stationOf(row)).value();
            EXPECT_NEAR(wantedOf(row, air), *row.expected, row.tolerance) << row.what;
        }
    }
}

TEST(MoistAirAsPublished, HumidityRatio)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "humidity_ratio_from_wet_bulb")) {
        const MoistAir air = moistAir(bulbsOf(row), stationOf(row)).value();
        EXPECT_NEAR(air.humidityRatio, *row.expected, row.tolerance) << row.what;
    }
    for (const CheckRow& row : checkRows("air_checks.csv", "sat_humidity_ratio")) {
        const AirReadings saturated{.dryBulbK = celsius(row.number("T_C")), .relativeHumidity = 1};
        const MoistAir air = moistAir(saturated, stationOf(row)).value();
        EXPECT_NEAR(air.humidityRatio, *row.expected, row.tolerance) << row.what;
    }
}

TEST(MoistAirAsPublished, DewPoint)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "dew_point_F")) {
        const AirReadings readings{.dryBulbK = fahrenheit(row.number("DB_F")),
                                   .relativeHumidity = row.number("RH_pct") / 100};
        EXPECT_NEAR(in("degF", moistAir(readings, seaLevelPressurePa)->dewPointK), *row.expected, row.tolerance)
            << row.what;
    }
    for (const char* topic : {"dew_point_published", "dew_point_magnus", "dew_point_iso8502_4"}) {
        for (const CheckRow& row : checkRows("air_checks.csv", topic)) {
            const AirReadings readings{.dryBulbK = celsius(row.number("T")),
                                       .relativeHumidity = row.number("RH") / 100};
            EXPECT_NEAR(in("degC", moistAir(readings, seaLevelPressurePa)->dewPointK), *row.expected, row.tolerance)
                << row.what;
        }
    }
}

TEST(MoistAirAsPublished, Enthalpy)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "moist_air_enthalpy")) {
        const bool british = row.text("unit") == "Btu/lb";
        const double temperature = british ? fahrenheit(row.number("T_F")) : celsius(row.number("T_C"));
        const double enthalpy = moistAirEnthalpyJPerKg(temperature, row.number("W"));
        // In Btu/lb dry air counts from 0 °F: 32 °F of it, at 0.240 Btu/(lb °F), lie between.
        const double shown = british ? enthalpy / 2326 + 32 * 0.240 : enthalpy / 1000;
        EXPECT_NEAR(shown, *row.expected, row.tolerance) << row.what;
    }
}

// PsychroLib finds both temperatures only within 0.001 K and the table holds four decimals.
TEST(MoistAirAsPublished, TenThousandStatesAgreeWithAnotherImplementation)
{
    const ReferenceTable states("moist_air_states.csv");
    ASSERT_EQ(states.rows(), 10000U);
    double worstDew = 0;
    double worstWet = 0;
    double worstRatio = 0;
    for (std::size_t row = 0; row < states.rows(); ++row) {
        const AirReadings readings{.dryBulbK = celsius(states.number(row, "dry_bulb_C")),
                                   .relativeHumidity = states.number(row, "relative_humidity")};
        const MoistAir air = moistAir(readings, states.number(row, "station_pressure_Pa")).value();
        const double dew = std::abs(in("degC", air.dewPointK) - states.number(row, "dew_point_C"));
        const double wet = std::abs(in("degC", air.wetBulbK) - states.number(row, "wet_bulb_C"));
        const double ratio = std::abs(air.humidityRatio / states.number(row, "humidity_ratio") - 1);
        EXPECT_LT(dew, 0.01) << "row " << row;
        EXPECT_LT(wet, 0.01) << "row " << row;
        EXPECT_LT(ratio, 1e-6) << "row " << row;
        worstDew = std::max(worstDew, dew);
        worstWet = std::max(worstWet, wet);
        worstRatio = std::max(worstRatio, ratio);
    }
    RecordProperty("worst_dew_point_K", std::to_string(worstDew));
    RecordProperty("worst_wet_bulb_K", std::to_string(worstWet));
    RecordProperty("worst_humidity_ratio", std::to_string(worstRatio));
}

} // namespace padside::test
