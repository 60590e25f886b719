// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"

namespace padside {

/// How bad it is when a part is spent, mildest first.
enum class Toll { looks, nuisance, cooling, charge, unit };
constexpr std::size_t tollCount = 5;

[[nodiscard]] constexpr auto codesOf(Toll)
{
    return std::array{Coded<Toll>{Toll::looks, "looks", "looks"}, Coded<Toll>{Toll::nuisance, "nuisance", "nuisance"},
                      Coded<Toll>{Toll::cooling, "cooling", "no cooling or heating"},
                      Coded<Toll>{Toll::charge, "charge", "charge or compressor lost"},
                      Coded<Toll>{Toll::unit, "unit", "the unit ends"}};
}

/// The worst that the catalogue says of a part of this kind. Where it is a matter of safety the unit has to stay off
/// until it is put right: no cooling, at least.
[[nodiscard]] Toll tollOf(const PartKind& kind);

} // namespace padside
