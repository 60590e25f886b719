// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/json_object.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace padside {

/// Each reads one section of the catalogue text; what does not fit is reported to the section's Trouble.
[[nodiscard]] std::vector<UnitKind> readUnitKinds(JsonObject section);
[[nodiscard]] std::vector<PartKind> readPartKinds(JsonObject section);
[[nodiscard]] std::vector<ReadingKind> readReadingKinds(JsonObject section);
[[nodiscard]] std::vector<NameplateItem> readNameplateItems(JsonObject section);
[[nodiscard]] std::vector<Refrigerant> readRefrigerants(JsonObject section);
[[nodiscard]] std::vector<Caution> readCautions(JsonObject section);
[[nodiscard]] std::vector<ReadingLimit> readReadingLimits(JsonObject section);
[[nodiscard]] std::vector<Assumption> readAssumptions(JsonObject section);
[[nodiscard]] std::vector<LeakLimit> readLeakLimits(JsonObject section);
[[nodiscard]] std::vector<Coating> readCoatings(JsonObject section);
[[nodiscard]] OutlookFigures readOutlook(JsonObject section);
[[nodiscard]] std::map<std::string, Supply, std::less<>> readSupply(JsonObject section);

/// Reports every code that points at nothing, and task codes used twice.
void checkReferences(const Catalogue& catalogue, Trouble& trouble);

/// Reports a figure the program works with (an assumption, a reading limit) that own changes have taken away.
void checkNothingNeededIsMissing(const nlohmann::ordered_json& ours, const nlohmann::ordered_json& merged,
                                 Trouble& trouble);

} // namespace padside
