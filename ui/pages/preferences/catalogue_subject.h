// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/assumption.h"

#include <string>
#include <variant>

namespace padside {

/// Prices, costs and what else money is reckoned from, for all units.
struct MoneyFigures
{
    friend bool operator==(const MoneyFigures&, const MoneyFigures&) = default;
};

/// What the person's own catalogue is edited about: one part kind (its code), or figures that hold for all units.
using CatalogueSubject = std::variant<std::string, AssumptionTopic, MoneyFigures>;

} // namespace padside
