// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/outlook_model.h"

#include "core/outlook/first_passage.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

/// The median life of a part: it is whole as long as all its zones are, so each is spent by then with 1 -
/// 0.5^(1/zones).
double partLife(const Rates& rates, std::size_t zones, const std::shared_ptr<const Pace>& pace)
{
    const double chance = -std::expm1(-std::log(2.0) / static_cast<double>(zones));
    const auto years = exposureToSpent(Belief(pace, Grade::sound), rates, chance);
    assert(years && "no rate is zero");
    return *years;
}

/// What a kind has of its own, without what was learned if that is to be left out.
OutlookOfKind ownFigures(const OutlookFigures& figures, const std::string& partKind, LearntFigures learnt)
{
    const auto own = figures.kinds.find(partKind);
    OutlookOfKind special = own != figures.kinds.end() ? own->second : OutlookOfKind{};
    if (learnt == LearntFigures::used)
        return special;
    if (special.learntOn) {
        special.gradeShares.reset();
        special.medianLifeYears.reset();
    }
    if (special.soilingLearntOn) {
        special.soilingGradeShares.reset();
        special.soilingLifeYears.reset();
    }
    return special;
}

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
    const double years = partLife(rates, zones, pace);
    for (double& rate : rates)
        rate *= years / medianLifeYears;
    return rates;
}

LifeFigures lifeOfRates(const Rates& rates, std::size_t zones, const std::shared_ptr<const Pace>& pace)
{
    assert(zones > 0);
    LifeFigures life;
    double sum = 0;
    for (const double rate : rates)
        sum += 1 / rate;
    for (std::size_t grade = 0; grade < rates.size(); ++grade)
        life.gradeShares[grade] = 1 / rates[grade] / sum;
    life.medianLifeYears = partLife(rates, zones, pace);
    return life;
}

std::size_t zonesOfLife(const PartKind& kind, bool soils)
{
    if (soils)
        return 1;
    const auto decaying = static_cast<std::size_t>(std::ranges::count(kind.zones, false, &ZoneKind::soiling));
    return std::max<std::size_t>(1, decaying);
}

OutlookModel::OutlookModel(const Catalogue& catalogue, LearntFigures learnt)
{
    const OutlookFigures& figures = catalogue.outlook();
    auto pace = logNormalPace(figures.paceSigma);
    assert(pace && "the catalogue holds only spreads that can be");
    m_pace = std::make_shared<const Pace>(*std::move(pace));
    LifeScale scale(m_pace);
    m_ofUnknown = chainAt(scale.rates(figures.unitLifeYears, figures.gradeShares, 1));
    for (const PartKind& part : catalogue.partKinds()) {
        const OutlookOfKind special = ownFigures(figures, part.code, learnt);
        const auto& shares = special.gradeShares ? *special.gradeShares : figures.gradeShares;
        const double usualLife = part.medianLifeYears ? part.medianLifeYears->value : figures.unitLifeYears;
        const double life = std::clamp(special.medianLifeYears.value_or(usualLife), 0.1, 200.0);
        m_ofKind[part.code] = {chainAt(scale.rates(life, shares, zonesOfLife(part, false))),
                               chainAt(scale.rates(special.soilingLifeYears.value_or(figures.soilingLifeYears),
                                                   special.soilingGradeShares.value_or(figures.gradeShares), 1))};
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
