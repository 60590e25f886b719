// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/voltage_imbalance.h"
#include "tests/core/verdict/verdict_fixture.h"

#include <cmath>
#include <limits>

namespace padside::test {

using ::testing::HasSubstr;

class Electrical : public VerdictTest
{
};

TEST_F(Electrical, ACapacitorIsHeldAgainstItsLabel)
{
    onPlate("capacitor-compressor", "45 uF");
    read("capacitor-compressor", "43 uF");
    EXPECT_EQ(judgementOf("capacitor-compressor"), Judgement::within) << "label ±6 %: 42.3 to 47.7";
}

TEST_F(Electrical, BothLimitsOfACapacitorAreKept)
{
    // 8.3 A at 295.4 V, 60 Hz is 74.5 µF (published service article); the label says 70 ±6 %: 65.8 to 74.2.
    onPlate("capacitor-compressor", "70 uF");
    read("capacitor-compressor", "74.5 uF");
    EXPECT_EQ(judgementOf("capacitor-compressor"), Judgement::watch) << "past the label, inside 10 % of practice";
}

TEST_F(Electrical, SevenAndAHalfMicrofaradsThatReadsSevenPointNoughtTwoIsPastItsLabel)
{
    onPlate("capacitor-fan", "7.5 uF");
    read("capacitor-fan", "7.02 uF");
    EXPECT_EQ(judgementOf("capacitor-fan"), Judgement::watch) << "7.05 to 7.95, published repair forum example";
}

TEST_F(Electrical, MoreThanTenPercentLowIsReplaced)
{
    onPlate("capacitor-fan", "5 uF");
    read("capacitor-fan", "4.4 uF");
    EXPECT_EQ(judgementOf("capacitor-fan"), Judgement::outside);
    EXPECT_THAT(said("capacitor-fan"), HasSubstr("replace"));
}

TEST_F(Electrical, WithoutALabelACapacitorIsNotJudged)
{
    read("capacitor-fan", "5 uF");
    EXPECT_EQ(judgementOf("capacitor-fan"), Judgement::unjudged);
}

TEST_F(Electrical, CompressorCurrentIsHeldAgainstRatedLoad)
{
    onPlate("compressor-rla", "20 A");
    read("compressor-current", "21 A");
    EXPECT_EQ(judgementOf("compressor-current"), Judgement::watch) << "common practice, no source: 100 to 110 %";
}

TEST_F(Electrical, AFanThatDrawsLittleMovesLittleAir)
{
    onPlate("fan-fla", "1.2 A");
    read("fan-current", "0.6 A");
    EXPECT_EQ(judgementOf("fan-current"), Judgement::watch);
    EXPECT_EQ(verdict("fan-current")->side, Side::below);
}

struct Imbalance
{
    std::array<double, 3> volts;
    double percent;
};

class VoltageImbalance : public ::testing::TestWithParam<Imbalance>
{
};

TEST_P(VoltageImbalance, IsTheLargestDepartureFromTheMean)
{
    const auto share = imbalanceOf(GetParam().volts);
    ASSERT_TRUE(share);
    EXPECT_NEAR(*share * 100, GetParam().percent, 0.006);
}

// NEMA MG-1, worked examples of unit data sheets and of a trade association's service manual; the last three are those
// that print a rounded mean, exact values computed.
INSTANTIATE_TEST_SUITE_P(Published, VoltageImbalance,
                         ::testing::Values(Imbalance{{452, 464, 455}, 1.53}, Imbalance{{224, 231, 226}, 1.76},
                                           Imbalance{{460, 467, 450}, 1.96}, Imbalance{{462, 463, 455}, 1.09},
                                           Imbalance{{480, 476, 472}, 0.84}, Imbalance{{220, 216, 213}, 1.69},
                                           Imbalance{{393, 403, 396}, 1.43}, Imbalance{{203, 210, 212}, 2.56}));

TEST(VoltageImbalanceOf, NothingOrNonsenseIsRefused)
{
    EXPECT_FALSE(imbalanceOf({0, 0, 0}));
    EXPECT_FALSE(imbalanceOf({-230, 230, 230}));
    EXPECT_FALSE(imbalanceOf({std::nan(""), 230, 230}));
    EXPECT_FALSE(imbalanceOf({std::numeric_limits<double>::infinity(), 230, 230}));
}

TEST_F(Electrical, TwoPercentImbalanceIsTheLimit)
{
    read("line-voltage-1-2", "203 V");
    read("line-voltage-2-3", "210 V");
    read("line-voltage-3-1", "212 V");
    EXPECT_EQ(judgementOf("voltage-imbalance"), Judgement::outside);
    EXPECT_THAT(verdict("voltage-imbalance")->source, HasSubstr("NEMA MG-1"));
}

TEST_F(Electrical, TwoVoltagesAreNoImbalance)
{
    read("line-voltage-1-2", "203 V");
    read("line-voltage-2-3", "210 V");
    EXPECT_FALSE(verdict("voltage-imbalance"));
}

TEST_F(Electrical, LineVoltageIsHeldAgainstTheNameplate)
{
    onPlate("supply-voltage", "460 V");
    read("line-voltage", "413 V");
    EXPECT_EQ(judgementOf("line-voltage"), Judgement::outside) << "unit data sheets: 414 to 506 V";
}

TEST_F(Electrical, InsulationBelowTwentyMegohmIsOutsideAndCondemnsNothing)
{
    read("insulation-resistance", "12 Mohm");
    EXPECT_EQ(judgementOf("insulation-resistance"), Judgement::outside);
    EXPECT_THAT(said("insulation-resistance"), HasSubstr("again warm before anything is condemned"));
}

TEST_F(Electrical, InsulationThatHalvedIsWatchedThoughItIsHigh)
{
    readBefore("insulation-resistance", "800 Mohm");
    read("insulation-resistance", "300 Mohm");
    EXPECT_EQ(judgementOf("insulation-resistance"), Judgement::watch);
    EXPECT_THAT(said("insulation-resistance"), HasSubstr("less than half"));
}

TEST_F(Electrical, OneReadingOneBound)
{
    read("drier-drop", "4 F");
    read("discharge-line-temperature", "230 F");
    read("contactor-volt-drop", "0.3 V");
    EXPECT_EQ(judgementOf("drier-drop"), Judgement::outside);
    EXPECT_EQ(judgementOf("discharge-line-temperature"), Judgement::watch);
    EXPECT_EQ(judgementOf("contactor-volt-drop"), Judgement::within);
}

} // namespace padside::test
