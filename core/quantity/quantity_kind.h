// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

/// What is measured. The SI unit each is kept in stands beside it.
enum class QuantityKind {
    temperature, ///< K
    temperatureDifference, ///< K
    gaugePressure, ///< Pa above the air around
    absolutePressure, ///< Pa
    length, ///< m
    mass, ///< kg
    current, ///< A
    voltage, ///< V
    resistance, ///< ohm
    capacitance, ///< F
    duration, ///< s
    ratio, ///< 1 (shown in percent)
    airflow, ///< m3/s
    velocity, ///< m/s (vibration)
    power, ///< W
    count, ///< 1 (shown as it is)
};

} // namespace padside
