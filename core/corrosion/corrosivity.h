// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/corrosion_category.h"
#include "core/quantity/problem.h"

#include <array>
#include <vector>

namespace padside {

/// What the air does to metal, as means of a year. The functions are exponential in temperature and humidity: hourly
/// values are averaged first, never the losses of the hours.
struct AnnualAir
{
    double temperatureK = 0;
    double relativeHumidity = 0; ///< 0..1
    double sulphurDioxide = 0; ///< deposition, mg/(m² d); 0.8 times µg/m³, see pollution_class.h
    double chloride = 0; ///< deposition, mg/(m² d)
};

/// What the dose-response functions are fed with.
enum class AirInput { temperature, humidity, sulphurDioxide, chloride };

[[nodiscard]] constexpr auto codesOf(AirInput)
{
    return std::array{Coded<AirInput>{AirInput::temperature, "temperature", "temperature"},
                      Coded<AirInput>{AirInput::humidity, "rh", "relative humidity"},
                      Coded<AirInput>{AirInput::sulphurDioxide, "so2", "sulphur dioxide"},
                      Coded<AirInput>{AirInput::chloride, "chloride", "chloride"}};
}

/// First-year loss of one metal.
struct FirstYearLoss
{
    Metal metal = Metal::steel;
    double loss = 0; ///< µm/a; of aluminium g/(m² a)
    CorrosionCategory category = CorrosionCategory::c1; ///< of this metal, never of another
};

/// Corrosivity at a place.
struct Corrosivity
{
    std::array<FirstYearLoss, 4> metals; ///< in the order of allMetals
    std::vector<AirInput> outside; ///< what lies outside the range the functions were fitted over

    [[nodiscard]] bool isExtrapolated() const { return !outside.empty(); }
    [[nodiscard]] const FirstYearLoss& of(Metal metal) const { return metals.at(static_cast<std::size_t>(metal)); }
};

/// First-year loss and category of the four metals by the dose-response functions of ISO 9223:2012 (6.3), boldly
/// exposed and not sheltered. They say nothing about couples of two metals, crevices, formicary attack of copper or a
/// surface that sweats. Fitted over -17.1..28.7 °C, 34..93 %, SO2 0.7..150.4 and chloride 0.4..760.5 mg/(m² d): what
/// lies outside is answered and named in `outside`. Problem: a value that is not finite, a humidity outside 0..1, a
/// negative deposition, a yearly mean outside -90..60 °C.
[[nodiscard]] Result<Corrosivity> corrosivityOf(const AnnualAir& air);

} // namespace padside
