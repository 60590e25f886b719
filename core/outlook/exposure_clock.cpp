// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/exposure_clock.h"

#include "core/corrosion/corrosivity.h"
#include "core/quantity/date.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double midC3SteelLoss = 37.5; // µm/a: the middle of 25 to 50, ISO 9223:2012 table 2

double factorOf(Wetness wetness, const OutlookFigures& figures)
{
    switch (wetness) {
    case Wetness::wet:
        return figures.wetFactor;
    case Wetness::damp:
        return figures.dampFactor;
    case Wetness::dry:
        break;
    }
    return 1;
}

double daysOf(Date from, Date to)
{
    return static_cast<double>((to - from).count());
}

} // namespace

AirFactor airFactor(const SiteAir& air, const OutlookFigures& figures)
{
    if (!air.temperatureK || !air.relativeHumidity || !air.sulphurDioxide || !air.chloride)
        return {};
    const auto corrosivity
        = corrosivityOf({*air.temperatureK, *air.relativeHumidity, *air.sulphurDioxide, *air.chloride});
    if (!corrosivity)
        return {};
    const double ratio = corrosivity->of(Metal::steel).loss / midC3SteelLoss;
    if (!std::isfinite(ratio))
        return {};
    return {std::clamp(ratio, figures.slowestAir, figures.fastestAir), true};
}

ExposureClock::ExposureClock(double airFactor, const std::vector<WetnessFrom>& wetness, const std::vector<Coat>& coats,
                             const OutlookFigures& figures)
{
    std::vector<Date> turns{Date::min()};
    for (const WetnessFrom& one : wetness)
        turns.push_back(one.from);
    for (const Coat& coat : coats) {
        turns.push_back(coat.from);
        turns.push_back(coat.until);
    }
    std::ranges::sort(turns);
    turns.erase(std::unique(turns.begin(), turns.end()), turns.end()); // clang 14 has no std::ranges::unique
    m_stretches.clear();
    for (const Date turn : turns) {
        double speed = airFactor;
        const auto after = std::ranges::upper_bound(wetness, turn, {}, &WetnessFrom::from);
        if (after != wetness.begin())
            speed *= factorOf(std::prev(after)->wetness, figures);
        double effect = 0;
        for (const Coat& coat : coats) {
            if (coat.from <= turn && turn < coat.until)
                effect = std::max(effect, coat.effect);
        }
        m_stretches.push_back({turn, speed * (1 - effect)});
    }
}

std::size_t ExposureClock::stretchOn(Date day) const
{
    const auto after = std::ranges::upper_bound(m_stretches, day, {}, &Stretch::from);
    return static_cast<std::size_t>(after - m_stretches.begin()) - 1;
}

double ExposureClock::speedOn(Date day) const
{
    return m_stretches[stretchOn(day)].speed;
}

double ExposureClock::yearsBetween(Date from, Date to) const
{
    double days = 0;
    for (std::size_t stretch = stretchOn(from); from < to; ++stretch) {
        const bool last = stretch + 1 == m_stretches.size();
        const Date end = last ? to : std::min(to, m_stretches[stretch + 1].from);
        days += m_stretches[stretch].speed * daysOf(from, end);
        from = end;
    }
    return days / daysInAYear;
}

double ExposureClock::oneSpeedBetween(Date from, Date to) const
{
    std::size_t stretch = stretchOn(from);
    const double speed = m_stretches[stretch].speed;
    while (++stretch < m_stretches.size() && m_stretches[stretch].from < to) {
        if (m_stretches[stretch].speed != speed)
            return 0;
    }
    return speed;
}

std::optional<Date> ExposureClock::dayAfter(Date from, double exposureYears, Date last) const
{
    assert(exposureYears >= 0);
    double missing = exposureYears * daysInAYear;
    for (std::size_t stretch = stretchOn(from); from <= last; ++stretch) {
        const bool end = stretch + 1 == m_stretches.size();
        const Date until = end ? last : std::min(last, m_stretches[stretch + 1].from);
        const double here = m_stretches[stretch].speed * daysOf(from, until);
        if (missing <= here)
            return from + std::chrono::days(static_cast<int>(std::ceil(missing / m_stretches[stretch].speed)));
        if (until == last)
            return std::nullopt;
        missing -= here;
        from = until;
    }
    return std::nullopt;
}

} // namespace padside
