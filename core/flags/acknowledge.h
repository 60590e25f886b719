// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/flags/flag.h"
#include "core/record/acknowledgement.h"

#include <span>
#include <vector>

namespace padside {

/// What acknowledging this flag writes down of it; key, moment, reason and person are the caller's to fill in.
[[nodiscard]] Acknowledgement acknowledgementOf(const Flag& flag);

/// Whether the acknowledgement is about this flag (rule, aspect, part and zone), is not taken back, and the flag has
/// not become worse since: higher severity, worse grade, or an extent larger by more than "acknowledged-worse-share".
[[nodiscard]] bool stillHolds(const Acknowledgement& acknowledgement, const Flag& flag, const Catalogue& catalogue);

/// Marks the flags that are acknowledged, by the latest one that holds, and puts them after those that stand; else the
/// order is kept.
void markAcknowledged(std::vector<Flag>& flags, std::span<const Acknowledgement> acknowledgements,
                      const Catalogue& catalogue);

/// How many flags stand: those not acknowledged.
[[nodiscard]] std::size_t standingFlags(std::span<const Flag> flags);

} // namespace padside
