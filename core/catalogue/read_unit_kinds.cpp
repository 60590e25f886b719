// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/sections.h"

#include <utility>

namespace padside {

std::vector<UnitKind> readUnitKinds(JsonObject section)
{
    std::vector<UnitKind> all;
    for (auto& [code, fields] : section.members()) {
        UnitKind kind{.code = code, .name = fields.text("name"), .alsoCalled = {}, .parts = {}};
        if (fields.has("also_called"))
            kind.alsoCalled = fields.texts("also_called");
        for (auto& [partCode, fitted] : fields.object("parts").members()) {
            // Most parts stand once in a unit, at a place that needs no name.
            std::vector<std::string> positions{std::string()};
            if (fitted.has("positions"))
                positions = fitted.texts("positions");
            if (positions.empty())
                section.trouble().report(fitted.pathOf("positions"), PADSIDE_SAY("{0}: at least one is needed."));
            for (std::string& position : positions)
                kind.parts.push_back({partCode, std::move(position)});
            fitted.nothingElse();
        }
        fields.nothingElse();
        all.push_back(std::move(kind));
    }
    return all;
}

std::vector<Caution> readCautions(JsonObject section)
{
    std::vector<Caution> all;
    for (auto& [code, fields] : section.members()) {
        all.push_back({code, fields.text("sentence"), fields.flagOr("always", false)});
        fields.nothingElse();
    }
    return all;
}

} // namespace padside
