// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/coded.h"

namespace padside {

/// The four metals of ISO 9223.
enum class Metal { steel, zinc, copper, aluminium };

[[nodiscard]] constexpr auto codesOf(Metal)
{
    return std::array{Coded<Metal>{Metal::steel, "steel", "steel"}, Coded<Metal>{Metal::zinc, "zinc", "zinc"},
                      Coded<Metal>{Metal::copper, "copper", "copper"},
                      Coded<Metal>{Metal::aluminium, "aluminium", "aluminium"}};
}

inline constexpr std::array allMetals{Metal::steel, Metal::zinc, Metal::copper, Metal::aluminium};

} // namespace padside
