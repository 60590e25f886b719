// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline.h"

#include <span>

namespace padside {

/// A part's zones told in one lane: at each time the worst grade that is known of any of them, unsure as soon as a zone
/// of that grade was not seen; at each visit the worst grade found, and what was done to any zone.
[[nodiscard]] TimelineLane worstOf(std::span<const TimelineLane> lanes);

} // namespace padside
