// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"

#include <string_view>

namespace padside::test {

/// The catalogue we ship, loaded once; throws if it can't be.
[[nodiscard]] const Catalogue& shippedAll();

/// One of its refrigerants; throws if there is none.
[[nodiscard]] const Refrigerant& shippedRefrigerant(std::string_view code);

} // namespace padside::test
