// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rates.h"
#include "core/quantity/problem.h"
#include "core/record/grade.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace padside {

/// Two sightings of one zone with nothing done to it between them.
struct PanelStep
{
    double years = 0; ///< of exposure, finite and >= 0
    Grade from = Grade::sound;
    Grade to = Grade::sound;
};

/// Why a rate is known, or is not.
enum class RateKnowledge {
    fitted, ///< an estimate with its standard error
    neverLeft, ///< zones stayed in this grade and none was seen to leave it: 0 is the likeliest
    neverEntered, ///< nothing says anything of it
    unbounded, ///< no zone was ever seen in this grade, all passed through: the faster the likelier
};

/// One rate as the data have it.
struct FittedRate
{
    RateKnowledge knowledge = RateKnowledge::neverEntered;
    double perYear = 0; ///< meaningful where fitted or neverLeft
    double standardError = 0; ///< meaningful where fitted
};

struct PanelFit
{
    std::array<FittedRate, 4> rates;
    double minusTwoLogLikelihood = 0;
    std::size_t steps = 0; ///< pairs of sightings used
    int rounds = 0; ///< of scoring
};

/// Maximum likelihood rates of the chain from grades seen now and then: Kalbfleisch and Lawless (1985), by Fisher
/// scoring on the logarithms of the rates. Grades are taken as seen (no misgrading) and zones as alike (no pace of
/// their own). Standard errors are from the observed information. Problem: no steps at all, a step to a better grade or
/// to another grade in no time, years that are no number or negative, or an ascent that does not settle.
[[nodiscard]] Result<PanelFit> fitPanel(std::span<const PanelStep> steps);

} // namespace padside
