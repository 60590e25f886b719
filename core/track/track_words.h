// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/track_record.h"

namespace padside {

/// "half a year", "one year", "two years", "five years".
[[nodiscard]] Word horizonWord(std::size_t horizon);

/// What was said and what came of it.
[[nodiscard]] Sentence missSentence(const Miss& miss, const HeldForecast& held, const UnitRecord& record,
                                    const Catalogue& catalogue);

/// The verdict on scores and the reasons for it. It rests on the horizons with enough settled forecasts: on the one
/// that is furthest off if that is too far, else on the one with most forecasts. Too gloomy: fewer came to pass than
/// expected by more than the limit's standard errors; too hopeful: more. No better than the plain share: neither, but
/// its Brier score is worse than that of always saying the base rate.
[[nodiscard]] TrackVerdict trackVerdict(const TrackSummary& summary, const TrackLimits& limits);

} // namespace padside
