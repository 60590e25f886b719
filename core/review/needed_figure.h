// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <string>

namespace padside {

/// A figure that is not given, and where it belongs. No number is ever made up in its place.
struct NeededFigure
{
    enum class Place { partKind, refrigerant, money, unit };

    Place place = Place::partKind;
    std::string key; ///< code of the part kind or refrigerant; empty for the others
    std::string field; ///< "part", "per_kg", "price-new"
    Sentence what; ///< "Run capacitor: cost of a new one"

    friend bool operator==(const NeededFigure&, const NeededFigure&) = default;
};

} // namespace padside
