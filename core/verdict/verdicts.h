// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/measured.h"
#include "core/verdict/verdict.h"

#include <vector>

namespace padside {

/// What the readings of a visit mean: questions to them first, then each subject once; nothing with a catalogue that
/// holds no limits. Deterministic; the order is that
/// of the subjects. Sources stand in the verdicts.
[[nodiscard]] std::vector<Verdict> verdictsOn(const Measured& measured);

} // namespace padside
