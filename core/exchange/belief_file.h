// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/belief_question.h"
#include "core/quantity/problem.h"

#include <string>
#include <string_view>

namespace padside {

/// Reads what a belief is to be worked out from, a JSON object: `rates_per_year` (4 numbers), `frailty_sigma`,
/// `frailty_nodes` (15 if left out), `start` ("unknown" or {"grade": 1, "exposure": 0}), `observations` (each with
/// `exposure` and either `grade` or `"seen": false`, then optionally `"works": false`), `horizons`. Every misfit is
/// refused with its place; so is a field that is not known.
[[nodiscard]] Result<BeliefQuestion> readBeliefFile(std::string_view text, const std::string& name);

} // namespace padside
