// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"

#include <cstdint>

namespace padside::test {

/// A record of any shape the rules allow, the same for the same seed: up to 12 visits over eight years (some on one
/// day, some open), findings of every sort, treatments, replacements, corrections, promises, parts the catalogue
/// doesn't know.
[[nodiscard]] UnitRecord randomRecord(std::uint32_t seed);

/// The same record with its entries in another order.
[[nodiscard]] UnitRecord shuffled(UnitRecord record, std::uint32_t seed);

} // namespace padside::test
