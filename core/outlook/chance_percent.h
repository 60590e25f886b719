// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <utility>

namespace padside {

/// A foretold chance (0..1) as percent for a sentence: whole percent, since no forecast is finer; one decimal below
/// 10 %, where tolerances lie; never more than 99 %, since nothing foretold is certain.
[[nodiscard]] Number chancePercent(double chance);

/// Two chances told beside each other: as chancePercent(), but one decimal from 10 % on too where whole percents would
/// be the same.
[[nodiscard]] std::pair<Number, Number> chancePercents(double before, double after);

} // namespace padside
