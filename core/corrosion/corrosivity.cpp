// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/corrosivity.h"

#include "core/quantity/measure.h"

#include <cmath>

namespace padside {

namespace {

constexpr double zeroCelsiusK = 273.15;
constexpr double turningC = 10; // the functions change their slope with temperature here
constexpr double coldestC = -90;
constexpr double hottestC = 60;

/// r = a Pd^b exp(c RH + f) + d Sd^e exp(g RH + h T), f = (T <= 10 °C ? below : above) (T - 10 °C).
struct DoseResponse
{
    double a, b, c, below, above;
    double d, e, g, h;
};

// ISO 9223:2012, formulas 1 to 4, as printed in a public transcription; those for steel agree with two more.
constexpr std::array<DoseResponse, 4> functions{
    DoseResponse{1.77, 0.52, 0.020, 0.150, -0.054, 0.102, 0.62, 0.033, 0.040},
    DoseResponse{0.0129, 0.44, 0.046, 0.038, -0.071, 0.0175, 0.57, 0.008, 0.085},
    DoseResponse{0.0053, 0.26, 0.059, 0.126, -0.080, 0.01025, 0.27, 0.036, 0.049},
    DoseResponse{0.0042, 0.73, 0.025, 0.009, -0.043, 0.0018, 0.60, 0.020, 0.094}};

struct FittedRange
{
    AirInput input;
    double low;
    double high;
};

// ISO 9223:2012, table 3.
constexpr std::array<FittedRange, 4> fittedRanges{
    FittedRange{AirInput::temperature, -17.1, 28.7}, FittedRange{AirInput::humidity, 34, 93},
    FittedRange{AirInput::sulphurDioxide, 0.7, 150.4}, FittedRange{AirInput::chloride, 0.4, 760.5}};

/// In the units of the standard, in the order of AirInput.
using StandardInputs = std::array<double, 4>;

StandardInputs inStandardUnits(const AnnualAir& air)
{
    // 28.7 °C kept in kelvin is not quite 28.7 °C again: a billionth of a degree decides nothing.
    constexpr double fine = 1e9;
    return {std::round((air.temperatureK - zeroCelsiusK) * fine) / fine,
            std::round(air.relativeHumidity * 100 * fine) / fine, air.sulphurDioxide, air.chloride};
}

double lossBy(const DoseResponse& with, const StandardInputs& inputs)
{
    const auto [temperature, humidity, sulphur, chloride] = inputs;
    const double slope = temperature <= turningC ? with.below : with.above;
    return with.a * std::pow(sulphur, with.b) * std::exp(with.c * humidity + slope * (temperature - turningC))
        + with.d * std::pow(chloride, with.e) * std::exp(with.g * humidity + with.h * temperature);
}

Result<StandardInputs> checkedInputs(const AnnualAir& air)
{
    const StandardInputs inputs = inStandardUnits(air);
    const auto [temperature, humidity, sulphur, chloride] = inputs;
    if (!(temperature >= coldestC && temperature <= hottestC))
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A mean temperature of the year lies between {0} and {1}. Check the temperature."),
                       {Amount{coldestC + zeroCelsiusK, QuantityKind::temperature},
                        Amount{hottestC + zeroCelsiusK, QuantityKind::temperature}});
    if (!(humidity >= 0 && humidity <= 100))
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Relative humidity lies between 0 and 100 %. Check the humidity."));
    for (const double deposition : {sulphur, chloride}) {
        if (!(deposition >= 0 && std::isfinite(deposition)))
            return problem(
                ProblemKind::badInput,
                PADSIDE_SAY("A deposition of sulphur dioxide or chloride can't be less than nothing. Type it in "
                            "mg/(m²·d), 0 or more."));
    }
    return inputs;
}

} // namespace

Result<Corrosivity> corrosivityOf(const AnnualAir& air)
{
    const auto inputs = checkedInputs(air);
    if (!inputs)
        return tl::unexpected(inputs.error());
    Corrosivity corrosivity;
    for (std::size_t i = 0; i < allMetals.size(); ++i) {
        const Metal metal = allMetals.at(i);
        const double loss = lossBy(functions.at(i), *inputs);
        corrosivity.metals.at(i)
            = {metal, loss, metal == Metal::aluminium ? categoryByMass(metal, loss) : categoryByDepth(metal, loss)};
    }
    for (const FittedRange& range : fittedRanges) {
        const double value = inputs->at(static_cast<std::size_t>(range.input));
        if (value < range.low || value > range.high)
            corrosivity.outside.push_back(range.input);
    }
    return corrosivity;
}

} // namespace padside
