// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/outlook_model.h"

#include "core/outlook/first_passage.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

/// Quantiles for a life of one mean, by shares and number of zones; most kinds have the same few.
class LifeScale
{
public:
    explicit LifeScale(std::shared_ptr<const Pace> pace)
        : m_pace(std::move(pace))
    {
    }

    Rates rates(double medianLifeYears, const std::array<double, 4>& shares, std::size_t zones)
    {
        const auto key = std::pair(shares, zones);
        auto known = m_ofOneYear.find(key);
        if (known == m_ofOneYear.end())
            known = m_ofOneYear.emplace(key, ratesFromLife(1, shares, zones, m_pace)).first;
        Rates rates = known->second;
        for (double& rate : rates)
            rate /= medianLifeYears;
        return rates;
    }

private:
    std::shared_ptr<const Pace> m_pace;
    std::map<std::pair<std::array<double, 4>, std::size_t>, Rates> m_ofOneYear;
};

} // namespace

Rates ratesFromLife(double medianLifeYears, const std::array<double, 4>& gradeShares, std::size_t zones,
                    const std::shared_ptr<const Pace>& pace)
{
    assert(medianLifeYears > 0 && zones > 0);
    Rates rates{};
    for (std::size_t grade = 0; grade < rates.size(); ++grade)
        rates[grade] = 1 / gradeShares[grade];
    // The part is whole as long as all its zones are: each is spent by then with 1 - 0.5^(1/zones).
    const double chance = -std::expm1(-std::log(2.0) / static_cast<double>(zones));
    const auto years = exposureToSpent(Belief(pace, Grade::sound), rates, chance);
    assert(years && "no rate is zero");
    for (double& rate : rates)
        rate *= *years / medianLifeYears;
    return rates;
}

OutlookModel::OutlookModel(const Catalogue& catalogue)
{
    const OutlookFigures& figures = catalogue.outlook();
    auto pace = logNormalPace(figures.paceSigma);
    assert(pace && "the catalogue holds only spreads that can be");
    m_pace = std::make_shared<const Pace>(*std::move(pace));
    LifeScale scale(m_pace);
    m_ofUnknown = chainAt(scale.rates(figures.unitLifeYears, figures.gradeShares, 1));
    for (const PartKind& part : catalogue.partKinds()) {
        const auto own = figures.kinds.find(part.code);
        const OutlookOfKind special = own != figures.kinds.end() ? own->second : OutlookOfKind{};
        const auto& shares = special.gradeShares ? *special.gradeShares : figures.gradeShares;
        const double usualLife = part.medianLifeYears ? part.medianLifeYears->value : figures.unitLifeYears;
        const double life = std::clamp(special.medianLifeYears.value_or(usualLife), 0.1, 200.0);
        const auto decaying = static_cast<std::size_t>(std::ranges::count(part.zones, false, &ZoneKind::soiling));
        m_ofKind[part.code] = {chainAt(scale.rates(life, shares, std::max<std::size_t>(1, decaying))),
                               chainAt(scale.rates(figures.soilingLifeYears, figures.gradeShares, 1))};
    }
}

std::shared_ptr<const PacedChain> OutlookModel::chainAt(const Rates& rates)
{
    if (const auto known = m_chains.find(rates); known != m_chains.end())
        return known->second;
    const auto like
        = std::ranges::find_if(m_chains, [&](const auto& one) { return areProportional(rates, one.first); });
    const PacedChain* series = like != m_chains.end() ? like->second.get() : nullptr;
    return m_chains.emplace(rates, std::make_shared<const PacedChain>(rates, m_pace, series)).first->second;
}

const std::shared_ptr<const PacedChain>& OutlookModel::chainOf(const std::string& partKind, bool soils) const
{
    const auto found = m_ofKind.find(partKind);
    return found != m_ofKind.end() ? found->second[soils ? 1 : 0] : m_ofUnknown;
}

void OutlookModel::setRates(const std::string& partKind, bool soils, const Rates& rates)
{
    const auto known = m_ofKind.try_emplace(partKind, std::array{m_ofUnknown, m_ofUnknown}).first;
    known->second[soils ? 1 : 0] = chainAt(rates);
}

} // namespace padside
