// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"

#include <optional>
#include <string_view>

namespace padside {

/// The SI value of a reading limit; a code that is not in the catalogue is a broken promise of the program (assert).
[[nodiscard]] double limitOf(const Catalogue& catalogue, std::string_view code);

/// The SI value of a line of the nameplate; empty if it is not written down.
[[nodiscard]] std::optional<double> plateOf(const Unit& unit, std::string_view item);

} // namespace padside
