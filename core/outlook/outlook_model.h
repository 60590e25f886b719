// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/paced_chain.h"

#include <array>
#include <map>
#include <memory>
#include <string>

namespace padside {

/// Rates for which a part with so many alike and independent zones has this median life (> 0 years of exposure), the
/// time in grades 1 to 4 being shared out so (> 0, adding up to 1) and the pace as of any zone. Ours: the division.
[[nodiscard]] Rates ratesFromLife(double medianLifeYears, const std::array<double, 4>& gradeShares, std::size_t zones,
                                  const std::shared_ptr<const Pace>& pace);

/// A life as practitioners tell it.
struct LifeFigures
{
    double medianLifeYears = 0; ///< of a part with so many alike and independent zones
    std::array<double, 4> gradeShares{}; ///< of the time in grades 1 to 4; adding up to 1
};

/// What ratesFromLife() makes these rates (> 0) of: the way back.
[[nodiscard]] LifeFigures lifeOfRates(const Rates& rates, std::size_t zones, const std::shared_ptr<const Pace>& pace);

/// How many zones of a part of this kind share its life: those that decay, at least one; those that get dirty are told
/// one by one.
[[nodiscard]] std::size_t zonesOfLife(const PartKind& kind, bool soils);

/// Whether figures that were learned from a person's own records count. They are left out where rates are learned anew:
/// the same records would count twice.
enum class LearntFigures { used, leftOut };

/// What beliefs and outlooks of all units rest on: the pace's spread and the rates of each part kind. Made once for a
/// catalogue (a few milliseconds), then asked for every zone.
class OutlookModel
{
public:
    explicit OutlookModel(const Catalogue& catalogue, LearntFigures learnt = LearntFigures::used);

    [[nodiscard]] const std::shared_ptr<const Pace>& pace() const { return m_pace; }
    /// Of the zones of a part kind that decay, or of those that get dirty. A kind that the catalogue does not know has
    /// the rates of a part that lasts as long as the unit.
    [[nodiscard]] const Rates& ratesOf(const std::string& partKind, bool soils) const
    {
        return chainOf(partKind, soils)->rates();
    }
    /// The same with the transitions of those rates; never null. Chains of equal rates are one.
    [[nodiscard]] const std::shared_ptr<const PacedChain>& chainOf(const std::string& partKind, bool soils) const;
    /// Rates learned from a person's own records take the place of the priors.
    void setRates(const std::string& partKind, bool soils, const Rates& rates);

private:
    [[nodiscard]] std::shared_ptr<const PacedChain> chainAt(const Rates& rates);

    std::shared_ptr<const Pace> m_pace;
    std::map<Rates, std::shared_ptr<const PacedChain>> m_chains;
    std::map<std::string, std::array<std::shared_ptr<const PacedChain>, 2>, std::less<>> m_ofKind; ///< [soils]
    std::shared_ptr<const PacedChain> m_ofUnknown;
};

} // namespace padside
