// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

namespace padside {

/// Saturation pressure in psig at sea level, for making up believable readings only: straight lines between a few
/// points (core's refrigerant curves are the real thing). R-454B is taken as 0.96 of R-410A (from memory).
[[nodiscard]] double roughSaturationPsig(std::string_view refrigerant, double fahrenheit);

} // namespace padside
