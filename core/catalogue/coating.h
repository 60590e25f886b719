// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

namespace padside {

/// A generic kind of coating and what its data sheet usually asks for.
struct Coating
{
    std::string code;
    std::string name;
    double dryTimeS = 0; ///< until it may get wet, at the reference temperature; above 0
    double referenceTemperatureK = 0;
    double lowestTemperatureK = 0; ///< colder than this it does not dry as it should
    double highestHumidity = 0; ///< 0..1, above 0
    std::string source;
};

} // namespace padside
