// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/id.h"

#include <optional>
#include <string>

namespace padside {

/// A range of ISO 8601 weeks within one year; a site's spring or fall season for visits.
struct SeasonWeeks
{
    int first = 1; ///< 1..53
    int last = 53; ///< 1..53, not before first

    friend bool operator==(const SeasonWeeks&, const SeasonWeeks&) = default;
};

/// What the air at a site does to metal, as annual means (ISO 9223); unknown stays empty.
struct SiteAir
{
    std::optional<double> temperatureK;
    std::optional<double> relativeHumidity; ///< 0..1
    std::optional<double> sulphurDioxide; ///< deposition, mg/(m2 d)
    std::optional<double> chloride; ///< deposition, mg/(m2 d)

    friend bool operator==(const SiteAir&, const SiteAir&) = default;
};

/// Where units stand.
struct Site
{
    SiteId id;
    std::string name;
    std::string address;
    std::string contact;
    std::string access; ///< gate code, dog, ladder
    double altitudeM = 0;
    SiteAir air;
    SeasonWeeks spring{12, 20}; ///< ours: mid-March to mid-May
    SeasonWeeks fall{38, 45}; ///< ours: mid-September to early November
    std::string note;
    std::optional<Date> retiredOn;

    friend bool operator==(const Site&, const Site&) = default;
};

} // namespace padside
