// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

namespace padside {

/// A foretold chance (0..1) as percent for a sentence: whole percent, since no forecast is finer; one decimal below
/// 10 %, where tolerances lie; never more than 99 %, since nothing foretold is certain.
[[nodiscard]] Number chancePercent(double chance);

} // namespace padside
