// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rate_learner.h"
#include "core/quantity/sentence.h"

#include <optional>

namespace padside {

/// A life told in years of exposure: those of a dry, bare zone in the air of mid-C3.
struct LifeInYears
{
    double medianLife = 0; ///< of the part, sound to spent; of one zone where it gets dirty
    std::array<double, 4> inGrade{}; ///< of the median life of one zone, what is spent in grades 1 to 4
};

/// What a person's own records teach about the life of one part kind.
struct KindLesson
{
    std::string partKind;
    bool soils = false; ///< about its zones that get dirty
    std::size_t zonesMet = 0; ///< with at least one step
    std::size_t zonesUsed = 0;
    std::size_t sightings = 0; ///< grades seen, of the zones used
    LifeInYears prior; ///< without anything learned
    LifeInYears inUse; ///< what forecasts rest on today
    std::optional<Date> learntOn; ///< inUse was learned on that day
    std::optional<LifeFigures> learnt; ///< to be kept; empty where nothing could be learned
    LifeInYears learntLife;
    double lowLife = 0; ///< one standard error of the logarithm around the learned life
    double highLife = 0;
    /// How much of what is known of the life comes from the records, 0..1: 1 less the variance of its logarithm after
    /// over that before (prior) the records were looked at.
    double dataShare = 0;
    std::optional<Sentence> failure; ///< why nothing was learned
};

/// The day on which the life in use of this part kind (of its zones that get dirty, if `soils`) was learned from the
/// person's own records; empty where ours is in use.
[[nodiscard]] std::optional<Date> lifeLearntOn(const Catalogue& catalogue, const std::string& partKind, bool soils);

/// Puts what was learned into the words of practice, kinds of the catalogue only; behind them those that use figures
/// learned before though there is nothing to learn now. `priors` is the model without learned figures, `used` the one
/// forecasts rest on. The error of a life is put together from those of
/// the four rates, taken as independent, by their shares of the life.
[[nodiscard]] std::vector<KindLesson> kindLessons(std::span<const LearntKind> learnt, const Catalogue& catalogue,
                                                  const OutlookModel& priors, const OutlookModel& used);

} // namespace padside
