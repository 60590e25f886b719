// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/entry.h"

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// How much a treatment slows decay, and for how long.
struct Protection
{
    double effect = 0; ///< 0: not at all; at most 0.9
    double years = 0; ///< expected life
};

/// What the outlook of one part kind has of its own.
struct OutlookOfKind
{
    std::optional<std::array<double, 4>> gradeShares;
    std::optional<double> medianLifeYears; ///< instead of the part kind's
    std::optional<Date> learntOn; ///< both were learned from the person's own records then
    std::optional<std::array<double, 4>> soilingGradeShares; ///< of its zones that get dirty
    std::optional<double> soilingLifeYears;
    std::optional<Date> soilingLearntOn;
};

/// The numbers of ours that beliefs and outlooks rest on; theirs to change. Adding up to 1: grade shares.
struct OutlookFigures
{
    double paceSigma = 0; ///< spread of the pace among zones of one kind, 0..2
    std::array<double, 4> gradeShares{}; ///< of the life spent in grades 1 to 4
    double unitLifeYears = 0; ///< of parts that last as long as the unit, and other kinds without a median life
    double soilingLifeYears = 0; ///< from clean to spent, of zones that get dirty
    double slowestAir = 0; ///< bounds of what a site's air does to the clock
    double fastestAir = 0;
    double dampFactor = 0; ///< of the clock of a corroding zone that was found damp or wet
    double wetFactor = 0;
    double learningSigma = 0; ///< spread of the logarithm of a rate around its prior
    double furthestYears = 0; ///< no dates are told beyond this
    std::map<TreatmentKind, Protection> protections;
    std::map<std::string, std::vector<std::string>> corrodingZones; ///< by part kind
    std::map<std::string, OutlookOfKind> kinds; ///< by part kind
    std::string source;

    /// Whether this zone dies of corrosion, so that air and wetness count.
    [[nodiscard]] bool corrodes(const std::string& partKind, const std::string& zoneKind) const;
};

/// One plain number of the outlook's figures: its field in the catalogue's text, what it is, and what it may be.
struct OutlookField
{
    std::string_view code;
    const char* label; ///< in English, for the translators; with its unit
    const char* sentence; ///< what it decides
    double OutlookFigures::*value = nullptr;
    double lowest = 0;
    double highest = 0;
};

[[nodiscard]] std::span<const OutlookField> outlookFields(); ///< in the order a person reads them

} // namespace padside
