// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

#include <array>
#include <string_view>

namespace padside {

/// Why refrigerant was moved. A person may write anything else; these the ledger and the translations know.
enum class ChargeReason { leak, repair, firstCharge };

[[nodiscard]] constexpr auto codesOf(ChargeReason)
{
    return std::array{Coded<ChargeReason>{ChargeReason::leak, "leak", "leak"},
                      Coded<ChargeReason>{ChargeReason::repair, "repair", "repair"},
                      Coded<ChargeReason>{ChargeReason::firstCharge, "first-charge", "first charge"}};
}

/// Whether the reason written down, ChargeEntry::because, is that the unit was filled for the first time.
[[nodiscard]] constexpr bool isFirstCharge(std::string_view because)
{
    return because == wordOf(ChargeReason::firstCharge);
}

} // namespace padside
