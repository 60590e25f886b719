// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/corrosivity.h"

namespace padside {

/// What a corrosivity means, for who typed the air of a site: the category of each metal with the loss of bare steel,
/// what is extrapolated, and where it comes from.
[[nodiscard]] std::vector<Sentence> airMeaning(const Corrosivity& corrosivity);

} // namespace padside
