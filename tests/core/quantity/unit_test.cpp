// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/unit.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace padside {

namespace {

using enum QuantityKind;

constexpr std::array allKinds{temperature,   temperatureDifference,
                              gaugePressure, absolutePressure,
                              length,        mass,
                              current,       voltage,
                              resistance,    capacitance,
                              duration,      ratio,
                              airflow,       velocity,
                              power,         count};

struct Factor
{
    const char* code;
    double si; ///< one of the unit in SI
    double tolerance; ///< half a digit of what is printed
};

} // namespace

// NIST Special Publication 811 (2008), Appendix B.8, to the digits printed there; from memory.
TEST(MeasuringUnits, FactorsAreThoseOfNistSp811)
{
    constexpr std::array factors{Factor{"psig", 6894.757, 5e-4},
                                 Factor{"psia", 6894.757, 5e-4},
                                 Factor{"inwc", 249.0889, 5e-5},
                                 Factor{"barg", 1e5, 0},
                                 Factor{"in", 2.54e-2, 0},
                                 Factor{"ft", 3.048e-1, 0},
                                 Factor{"lb", 4.535924e-1, 5e-8},
                                 Factor{"oz", 2.834952e-2, 5e-9},
                                 Factor{"cfm", 4.719474e-4, 5e-11},
                                 Factor{"m3h", 2.777778e-4, 5e-11},
                                 Factor{"Btuh", 2.930711e-1, 5e-8},
                                 Factor{"ips", 2.54e-2, 0},
                                 Factor{"h", 3600, 0},
                                 Factor{"min", 60, 0},
                                 Factor{"um", 1e-6, 0}};
    for (const Factor& factor : factors) {
        const MeasuringUnit* unit = unitByCode(factor.code);
        ASSERT_TRUE(unit) << factor.code;
        EXPECT_NEAR(toSi(1, *unit), factor.si, factor.tolerance) << factor.code;
    }
}

// NIST SP 811, B.8: T/K = t/°C + 273.15; T/K = (t/°F + 459.67)/1.8. From memory.
TEST(MeasuringUnits, TemperaturesMeetAtTheirFixedPoints)
{
    const MeasuringUnit& celsius = *unitByCode("degC");
    const MeasuringUnit& fahrenheit = *unitByCode("degF");
    EXPECT_DOUBLE_EQ(toSi(0, celsius), 273.15);
    EXPECT_DOUBLE_EQ(toSi(32, fahrenheit), 273.15);
    EXPECT_DOUBLE_EQ(toSi(212, fahrenheit), 373.15);
    EXPECT_NEAR(toSi(-40, fahrenheit), toSi(-40, celsius), 1e-12);
    EXPECT_NEAR(toSi(-459.67, fahrenheit), 0, 1e-12);
    // A difference knows no zero point.
    EXPECT_DOUBLE_EQ(toSi(18, *unitByCode("dF")), 10);
}

TEST(MeasuringUnits, EveryUnitComesBackFromSi)
{
    for (const QuantityKind kind : allKinds) {
        for (const MeasuringUnit& unit : unitsOf(kind)) {
            for (const double typed : {-40.0, 0.0, 0.125, 1.0, 68.0, 9999.0})
                EXPECT_NEAR(fromSi(toSi(typed, unit), unit), typed, 1e-11 * (std::abs(typed) + 500)) << unit.code;
        }
    }
}

TEST(MeasuringUnits, CodesAreAsciiUniqueAndFound)
{
    std::set<std::string> codes;
    for (const QuantityKind kind : allKinds) {
        EXPECT_FALSE(unitsOf(kind).empty());
        for (const MeasuringUnit& unit : unitsOf(kind)) {
            EXPECT_EQ(unit.kind, kind);
            EXPECT_TRUE(codes.emplace(unit.code).second) << unit.code << " is there twice";
            EXPECT_EQ(unitByCode(unit.code), &unit);
            for (const char character : unit.code)
                EXPECT_TRUE(character > ' ' && character < 0x7f) << unit.code;
        }
    }
    EXPECT_EQ(unitByCode("furlong"), nullptr);
    EXPECT_EQ(unitByCode(""), nullptr);
}

TEST(MeasuringUnits, EverySpellingMeansOneUnitOnly)
{
    for (const QuantityKind kind : allKinds) {
        for (const MeasuringUnit& unit : unitsOf(kind)) {
            EXPECT_EQ(unitBySpelling(unit.code, kind), &unit) << unit.code;
            EXPECT_EQ(unitBySpelling(unit.symbol, kind), &unit) << unit.symbol;
            for (const std::string_view spelling : unit.otherSpellings)
                EXPECT_EQ(unitBySpelling(spelling, kind), &unit) << spelling;
        }
    }
}

TEST(MeasuringUnits, AreFoundWithoutRegardToCase)
{
    EXPECT_EQ(unitBySpelling("PSIG", gaugePressure), unitByCode("psig"));
    EXPECT_EQ(unitBySpelling("Psi", gaugePressure), unitByCode("psig"));
    EXPECT_EQ(unitBySpelling("MFD", capacitance), unitByCode("uF"));
    EXPECT_EQ(unitBySpelling("c", temperature), unitByCode("degC"));
    EXPECT_EQ(unitBySpelling("mpa", gaugePressure), unitByCode("MPag"));
    EXPECT_EQ(unitBySpelling("N/mm2", gaugePressure), unitByCode("MPag"));
    EXPECT_EQ(unitBySpelling("N/mm²", gaugePressure), unitByCode("MPag"));
    EXPECT_EQ(unitBySpelling("MM", length), unitByCode("mm"));
}

TEST(MeasuringUnits, MilliIsNeverTakenForMega)
{
    for (const char* spelling : {"mohm", "mΩ"})
        EXPECT_EQ(unitBySpelling(spelling, resistance), nullptr) << spelling << " was taken for megohm";
    EXPECT_EQ(unitBySpelling("Mohm", resistance), unitByCode("Mohm"));
    EXPECT_EQ(unitBySpelling("MOHM", resistance), unitByCode("Mohm"));
    EXPECT_EQ(unitBySpelling("megohm", resistance), unitByCode("Mohm"));
}

TEST(MeasuringUnits, SignsThatOnlyLookAlikeAreUnderstood)
{
    EXPECT_EQ(unitBySpelling("\u03bcF", capacitance), unitByCode("uF")) << "Greek mu";
    EXPECT_EQ(unitBySpelling("\u00b5F", capacitance), unitByCode("uF")) << "micro sign";
    EXPECT_EQ(unitBySpelling("k\u2126", resistance), unitByCode("kohm")) << "ohm sign";
    EXPECT_EQ(unitBySpelling("\u00baC", temperature), unitByCode("degC")) << "masculine ordinal";
}

TEST(MeasuringUnits, AUnitOfAnotherKindDoesNotFit)
{
    EXPECT_EQ(unitBySpelling("psia", gaugePressure), nullptr);
    EXPECT_EQ(unitBySpelling("psig", absolutePressure), nullptr);
    EXPECT_EQ(unitBySpelling("psi", absolutePressure), nullptr) << "psi alone is gauge in the trade";
    EXPECT_EQ(unitBySpelling("mm", mass), nullptr);
    EXPECT_EQ(unitBySpelling("", temperature), nullptr);
}

TEST(MeasuringUnits, EachSystemShowsItsOwn)
{
    EXPECT_EQ(shownUnit(temperature, UnitSystem::metric).code, "degC");
    EXPECT_EQ(shownUnit(temperature, UnitSystem::usCustomary).code, "degF");
    EXPECT_EQ(shownUnit(temperatureDifference, UnitSystem::usCustomary).code, "dF");
    EXPECT_EQ(shownUnit(gaugePressure, UnitSystem::metric).code, "kPag");
    EXPECT_EQ(shownUnit(gaugePressure, UnitSystem::usCustomary).code, "psig");
    EXPECT_EQ(shownUnit(absolutePressure, UnitSystem::usCustomary).code, "psia");
    EXPECT_EQ(shownUnit(length, UnitSystem::usCustomary).code, "in");
    EXPECT_EQ(shownUnit(mass, UnitSystem::usCustomary).code, "lb");
    EXPECT_EQ(shownUnit(airflow, UnitSystem::usCustomary).code, "cfm");
    EXPECT_EQ(shownUnit(velocity, UnitSystem::usCustomary).code, "ips");
    EXPECT_EQ(shownUnit(power, UnitSystem::usCustomary).code, "Btuh");
    for (const QuantityKind kind : {current, voltage, resistance, capacitance, duration, ratio, count})
        EXPECT_EQ(&shownUnit(kind, UnitSystem::usCustomary), &shownUnit(kind, UnitSystem::metric));
}

TEST(FittingUnit, ReadsAnInsulationInMegohmAndAHeaterInOhm)
{
    const auto codeAt
        = [](double ohms) { return fittingUnit(QuantityKind::resistance, UnitSystem::metric, ohms).code; };
    EXPECT_EQ(codeAt(459e6), "Mohm");
    EXPECT_EQ(codeAt(1e6), "Mohm");
    EXPECT_EQ(codeAt(1440), "kohm");
    EXPECT_EQ(codeAt(36), "ohm");
    EXPECT_EQ(codeAt(0), "ohm");
    EXPECT_EQ(fittingUnit(QuantityKind::length, UnitSystem::usCustomary, 0.1).code, "in") << "other kinds as ever";
}

} // namespace padside
