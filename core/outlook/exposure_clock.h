// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/outlook_figures.h"
#include "core/quantity/date.h"
#include "core/record/grade.h"
#include "core/record/site.h"

#include <optional>
#include <vector>

namespace padside {

/// What a site's air does to the clock of a corroding zone.
struct AirFactor
{
    double factor = 1;
    bool known = false; ///< false: the site's annual means are incomplete or can't be, and 1 stands in

    friend bool operator==(const AirFactor&, const AirFactor&) = default;
};

/// First-year loss of steel in this air (ISO 9223:2012) over that in the middle of category C3, 37.5 µm/a, kept between
/// `slowestAir` and `fastestAir`. That the ratio of losses is the ratio of clocks is ours.
[[nodiscard]] AirFactor airFactor(const SiteAir& air, const OutlookFigures& figures);

/// A zone was found so on that day, and is taken to have stayed so until it was found otherwise.
struct WetnessFrom
{
    Date from{};
    Wetness wetness = Wetness::dry;
};

/// Something that slows decay from a day on, until its expected life is over.
struct Coat
{
    Date from{};
    Date until{};
    double effect = 0; ///< 0..0.9

    friend bool operator==(const Coat&, const Coat&) = default;
};

/// A zone's own time: ds = f_air · f_wet · f_coat dt. Years on it are years of a dry, bare zone in the air of mid-C3.
/// Of several coats at a time the one that slows most counts, once.
class ExposureClock
{
public:
    ExposureClock() = default;
    /// `wetness` in order of days; factors as in `figures`.
    ExposureClock(double airFactor, const std::vector<WetnessFrom>& wetness, const std::vector<Coat>& coats,
                  const OutlookFigures& figures);

    /// Exposure from one day to another; 0 if `to` is not later.
    [[nodiscard]] double yearsBetween(Date from, Date to) const;
    /// The speed at which all of that time passed; 0 where there were several.
    [[nodiscard]] double oneSpeedBetween(Date from, Date to) const;
    /// The day after `from` on which so much more exposure (>= 0) has come together; empty if that is after `last`.
    [[nodiscard]] std::optional<Date> dayAfter(Date from, double exposureYears, Date last) const;
    /// How fast it runs on a day; always above 0.
    [[nodiscard]] double speedOn(Date day) const;

private:
    struct Stretch
    {
        Date from = Date::min(); ///< until the next one begins
        double speed = 1;
    };

    [[nodiscard]] std::size_t stretchOn(Date day) const;

    std::vector<Stretch> m_stretches = std::vector<Stretch>(1); ///< never empty
};

} // namespace padside
