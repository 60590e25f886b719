// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/track_figures.h"

namespace padside {

/// "half a year", "one year", "two years", "five years".
[[nodiscard]] Word horizonWord(std::size_t horizon);

/// What was said and what came of it.
[[nodiscard]] Sentence missSentence(const Miss& miss, const HeldForecast& held, const UnitRecord& record,
                                    const Catalogue& catalogue);

} // namespace padside
