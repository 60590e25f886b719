// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"

#include <span>
#include <string_view>

namespace padside {

/// A place in Merrowmouth, an invented harbour town.
struct ScenarioSite
{
    std::string_view prefix; ///< of the tags of its units
    std::string_view name;
    std::string_view address;
    std::string_view contact;
    std::string_view access;
    double altitudeM;
    double temperatureC; ///< annual mean
    double humidity; ///< annual mean, 0..1
    double sulphurDioxide; ///< mg/(m2 d)
    double chloride; ///< mg/(m2 d)
    double pace; ///< how fast steel goes here, 1 = in town
    std::string_view note;
};

/// What a unit has to tell.
enum class Story {
    ordinary,
    seafrontVessel, ///< its accumulator's bottom goes from sound to poor, coated twice, worse again
    wellKept, ///< stays young
    slowLeak, ///< refrigerant added again and again, repaired once
    newAccumulator,
    motorFailure, ///< a call-out in summer
    capacitorFailure, ///< a call-out in summer
    retires,
    successor, ///< stands where the retired one stood
    openToday, ///< its visit is not finished
    corrected, ///< a grade was corrected after the visit was closed
    stillDue, ///< not yet seen this season
};

struct ScenarioUnit
{
    std::size_t site; ///< index into scenarioSites()
    std::string_view number;
    std::string_view kind;
    std::string_view maker;
    std::string_view model;
    std::string_view refrigerant;
    Metering metering;
    double yearsOld; ///< on the last day
    double coolingKw;
    std::string_view place;
    Story story;
    bool gauged; ///< the accumulator's wall is measured
    std::string_view note;
};

[[nodiscard]] std::span<const ScenarioSite> scenarioSites();
[[nodiscard]] std::span<const ScenarioUnit> scenarioUnits();
/// The two who do the work; the first types metric units, the second US customary ones.
[[nodiscard]] std::span<const std::string_view> scenarioTechnicians();

} // namespace padside
