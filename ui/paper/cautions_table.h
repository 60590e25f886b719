// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "ui/paper/paper_block.h"

#include <string>
#include <vector>

namespace padside {

class Speaker;

/// The cautions that belong on every paper and those of `codes`, in the catalogue's order, two to a row; what nearly
/// all of them end in is said once below. Never empty: without a catalogue it still says that all of it is advice.
[[nodiscard]] TableBlock cautionsTable(const Catalogue& catalogue, const Speaker& speaker,
                                       const std::vector<std::string>& codes);

} // namespace padside
