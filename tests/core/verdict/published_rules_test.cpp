// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/verdict/electrical.h"
#include "core/verdict/supply_air_drop.h"
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

using ::testing::HasSubstr;

namespace {

double kelvinOf(double fahrenheit)
{
    return (fahrenheit + 459.67) / 1.8;
}

/// California 2008 Residential Appendices, RA3: what an installer may leave.
class ChargeProtocol : public VerdictTest
{
protected:
    /// Superheat so far from its target, by a line temperature over R-22 boiling at 68.5 psig.
    Judgement superheatOff(double fahrenheitOff)
    {
        const double boiling = *measuredWith("suction-pressure", 68.5 * 6894.757293168).boilingK();
        onPlate("superheat-target", "10 F");
        const double line = boiling + (10 + fahrenheitOff) / 1.8;
        const Measured one(
            {{"suction-pressure", {}, 68.5 * 6894.757293168, {}}, {"suction-line-temperature", {}, line, {}}}, {},
            m_unit, 0, m_conditions, m_catalogue);
        return verdictsOn(one).front().judgement;
    }

    [[nodiscard]] Measured measuredWith(const std::string& kind, double si) const
    {
        return {{{kind, {}, si, {}}}, {}, m_unit, 0, m_conditions, m_catalogue};
    }
};

} // namespace

TEST_F(ChargeProtocol, FiveDegreesFahrenheitFromTheTargetPassesAndMoreDoesNot)
{
    EXPECT_EQ(superheatOff(4.9), Judgement::within);
    EXPECT_NE(superheatOff(5.2), Judgement::within);
    EXPECT_EQ(superheatOff(-4.9), Judgement::within);
}

struct SuperheatRow
{
    const char* refrigerant;
    double psig;
    double lineF;
    double superheatF;
    double within;
};

TEST(PublishedSuperheat, IsMatched)
{
    // Superheat charging tables of two makers' installation instructions; R-410A computed from the published curve.
    const auto catalogue = Catalogue::load(shippedCatalogue());
    ASSERT_TRUE(catalogue);
    for (const SuperheatRow& row : {SuperheatRow{"R-22", 70, 51, 10, 0.3}, SuperheatRow{"R-22", 61.5, 45, 10, 0.3},
                                    SuperheatRow{"R-410A", 118.4, 52, 12, 0.2}}) {
        Unit unit;
        unit.refrigerant = row.refrigerant;
        const Conditions conditions;
        const Measured one({{"suction-pressure", {}, row.psig * 6894.757293168, {}},
                            {"suction-line-temperature", {}, kelvinOf(row.lineF), {}}},
                           {}, unit, 0, conditions, *catalogue);
        ASSERT_TRUE(one.superheatK());
        EXPECT_NEAR(*one.superheatK() * 1.8, row.superheatF, row.within) << row.refrigerant << ' ' << row.psig;
    }
    Unit unit;
    unit.refrigerant = "R-410A";
    const Conditions conditions;
    const Measured liquid(
        {{"liquid-pressure", {}, 341.9 * 6894.757293168, {}}, {"liquid-line-temperature", {}, kelvinOf(95), {}}}, {},
        unit, 0, conditions, *catalogue);
    EXPECT_NEAR(*liquid.subcoolingK() * 1.8, 10, 0.2);
}

TEST(PublishedSupplyAirDrop, IsMatched)
{
    // California Title 24 RA3.2, table of target temperature split, from memory.
    const double rows[][3] = {{70, 57, 19.1}, {70, 67, 12.8}, {72, 63, 17.0}, {75, 67, 15.5},
                              {78, 65, 18.8}, {80, 63, 21.3}, {80, 69, 16.4}};
    for (const auto& row : rows)
        EXPECT_NEAR(*targetSupplyAirDropK(kelvinOf(row[0]), kelvinOf(row[1])) * 1.8, row[2], 1e-6);
}

class PublishedSweating : public VerdictTest
{
protected:
    [[nodiscard]] double marginF(double airF, double humidity, double surfaceF)
    {
        m_conditions.airTemperatureK = kelvinOf(airF);
        m_conditions.relativeHumidity = humidity;
        const Measured one({{"suction-line-temperature", {}, kelvinOf(surfaceF), {}}}, {}, m_unit, 0, m_conditions,
                           m_catalogue);
        const auto all = verdictsOn(one);
        const auto found = std::ranges::find(all, "sweating", &Verdict::code);
        return found == all.end() ? std::nan("") : found->value->si * 1.8;
    }
};

TEST_F(PublishedSweating, IsMatched)
{
    // Computed from ASHRAE Fundamentals' formulas.
    EXPECT_NEAR(marginF(90, 0.6, 55), -19.2, 0.2);
    EXPECT_NEAR(marginF(90, 0.4, 65), 2.6, 0.2);
    EXPECT_NEAR(marginF(60, 0.8, 50), -3.8, 0.2);
}

TEST(PublishedElectrical, CapacitanceUnderLoad)
{
    EXPECT_NEAR(*capacitanceUnderLoad(8.3, 295.4, 60) * 1e6, 74.5, 0.05) << "training page of the trade";
    EXPECT_NEAR(*capacitanceUnderLoad(1, 1, 60) * 1e6, 2652.58, 0.01) << "computed: 1e6 / (2 pi 60)";
    EXPECT_NEAR(*capacitanceUnderLoad(1, 1, 50) * 1e6, 3183.1, 0.01) << "computed";
    EXPECT_FALSE(capacitanceUnderLoad(1, 0, 60));
    EXPECT_FALSE(capacitanceUnderLoad(std::nan(""), 230, 60));
}

TEST(PublishedElectrical, ExtraHeatOfAnUnbalancedWinding)
{
    EXPECT_NEAR(extraWindingHeat(0.035) * 100, 24.5, 0.6) << "NEMA MG-1 rule of thumb; a print says 25";
}

TEST(PublishedElectrical, InsulationIsBroughtTo40Degrees)
{
    // Halving for each 10 K, form of IEEE 43-2000, from memory.
    EXPECT_NEAR(insulationAt40C(100, 293.15), 25, 0.1);
    EXPECT_NEAR(insulationAt40C(30, 303.15), 15, 0.1);
    EXPECT_DOUBLE_EQ(insulationAt40C(7, 313.15), 7);
}

class PublishedLimits : public VerdictTest
{
};

TEST_F(PublishedLimits, TenPercentBetweenLegsIsTheLimit)
{
    read("leg-current-1", "10 A");
    read("leg-current-2", "10 A");
    read("leg-current-3", "12 A");
    EXPECT_EQ(judgementOf("current-imbalance"), Judgement::outside) << "service manual of a trade association";
}

TEST_F(PublishedLimits, ACapacitorUnderLoadIsOutsideItsLabelButInsidePractice)
{
    onPlate("capacitor-compressor", "70 uF");
    read("capacitor-load-current", "8.3 A");
    read("capacitor-load-voltage", "295.4 V");
    EXPECT_EQ(judgementOf("capacitor-under-load"), Judgement::watch) << "label 65.8 to 74.2, 10 % practice";
}

TEST_F(PublishedLimits, ASmallWindingNeedsFiveMegohmAt40Degrees)
{
    read("insulation-resistance", "25 Mohm");
    read("shell-temperature", "10 C");
    EXPECT_EQ(judgementOf("insulation-resistance"), Judgement::outside) << "3.1 MΩ at 40 °C; IEEE 43-2013, from memory";
    EXPECT_THAT(said("insulation-resistance"), HasSubstr("40 °C"));
}

TEST_F(PublishedLimits, ImbalanceSaysHowMuchHotterTheWindingsRun)
{
    read("line-voltage-1-2", "460 V");
    read("line-voltage-2-3", "467 V");
    read("line-voltage-3-1", "430 V");
    EXPECT_THAT(said("voltage-imbalance"), HasSubstr("must not run"));
}

TEST_F(PublishedLimits, AHeaterOfTenDegreesPassesAndEightIsWatched)
{
    m_conditions.running = Running::off;
    read("outdoor-dry-bulb", "40 F");
    read("shell-temperature", "50.2 F");
    EXPECT_EQ(judgementOf("crankcase-heater"), Judgement::within) << "compressor service handbook: 10 °F";
}

TEST_F(PublishedLimits, AHeaterOfEightDegreesIsWatched)
{
    m_conditions.running = Running::off;
    read("outdoor-dry-bulb", "40 F");
    read("shell-temperature", "48 F");
    EXPECT_EQ(judgementOf("crankcase-heater"), Judgement::watch) << "common practice, no source: 5 to 10 °F";
}

} // namespace padside::test
