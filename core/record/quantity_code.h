// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/quantity_kind.h"
#include "core/record/coded.h"

namespace padside {

/// What sort of quantity a measure is: the codes that the file and the catalogue use, and the words shown.
[[nodiscard]] constexpr auto codesOf(QuantityKind)
{
    using enum QuantityKind;
    return std::array{Coded<QuantityKind>{temperature, "temperature", "temperature"},
                      Coded<QuantityKind>{temperatureDifference, "temperature-difference", "temperature difference"},
                      Coded<QuantityKind>{gaugePressure, "gauge-pressure", "gauge pressure"},
                      Coded<QuantityKind>{absolutePressure, "absolute-pressure", "absolute pressure"},
                      Coded<QuantityKind>{length, "length", "length"},
                      Coded<QuantityKind>{mass, "mass", "mass"},
                      Coded<QuantityKind>{current, "current", "current"},
                      Coded<QuantityKind>{voltage, "voltage", "voltage"},
                      Coded<QuantityKind>{resistance, "resistance", "resistance"},
                      Coded<QuantityKind>{capacitance, "capacitance", "capacitance"},
                      Coded<QuantityKind>{duration, "duration", "duration"},
                      Coded<QuantityKind>{ratio, "ratio", "ratio"},
                      Coded<QuantityKind>{airflow, "airflow", "airflow"},
                      Coded<QuantityKind>{velocity, "velocity", "velocity"},
                      Coded<QuantityKind>{power, "power", "power"},
                      Coded<QuantityKind>{count, "count", "count"}};
}

} // namespace padside
