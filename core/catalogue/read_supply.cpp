// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/sections.h"

namespace padside {

std::map<std::string, Supply, std::less<>> readSupply(JsonObject section)
{
    std::map<std::string, Supply, std::less<>> all;
    for (auto& [code, fields] : section.members()) {
        Supply supply;
        supply.leadDays = readBetween(fields, "lead_days", 0, 1000);
        supply.made = fields.flag("made");
        supply.source = fields.text("source");
        fields.nothingElse();
        all.emplace(code, std::move(supply));
    }
    return all;
}

} // namespace padside
