// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/json_rows.h"

namespace padside {

std::string jsonRows(std::span<const nlohmann::ordered_json> rows)
{
    auto array = nlohmann::ordered_json::array();
    for (const auto& row : rows)
        array.push_back(row);
    return array.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

} // namespace padside
