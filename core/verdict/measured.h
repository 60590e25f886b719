// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// A reading as far as it has come: entered, or still being typed.
struct Taken
{
    std::string kind; ///< code of a reading kind
    std::optional<PartId> partId;
    double si = 0;
    std::optional<ZoneId> zoneId;

    friend bool operator==(const Taken&, const Taken&) = default;
};

/// The readings of one visit with all that is needed to say what they mean. It refers to data that must outlive it.
/// What can't be worked out, for want of a reading or because a formula has no answer there, is empty.
class Measured
{
public:
    /// `before` holds the last earlier reading of each kind and part.
    Measured(std::vector<Taken> taken, std::vector<Taken> before, const Unit& unit, double altitudeM,
             const Conditions& conditions, const Catalogue& catalogue);

    [[nodiscard]] const std::vector<Taken>& taken() const { return m_taken; }
    [[nodiscard]] const Unit& unit() const { return m_unit; }
    [[nodiscard]] const Catalogue& catalogue() const { return m_catalogue; }
    [[nodiscard]] const Conditions& conditions() const { return m_conditions; }

    [[nodiscard]] const Taken* find(std::string_view kind) const; ///< the first of this kind, or nullptr
    [[nodiscard]] std::optional<double> value(std::string_view kind) const; ///< SI
    [[nodiscard]] std::optional<double> before(const Taken& reading) const; ///< SI; the same thing the last time
    [[nodiscard]] std::optional<double> plate(std::string_view item) const; ///< SI; from the nameplate
    [[nodiscard]] double limit(std::string_view code) const; ///< SI; a reading limit of the catalogue
    [[nodiscard]] std::string sourceOf(std::string_view limitCode) const;

    [[nodiscard]] bool mayBeCooling() const; ///< running in cooling, or not noted
    [[nodiscard]] const Refrigerant* refrigerant() const { return m_refrigerant; }
    [[nodiscard]] std::optional<double> stationPressurePa() const { return m_stationPressurePa; }
    [[nodiscard]] std::optional<double> outdoorK() const; ///< measured, else as noted with the visit
    [[nodiscard]] std::optional<double> dewPointK() const; ///< of the air outdoors
    [[nodiscard]] std::optional<double> boilingK() const
    {
        return m_boilingK;
    } ///< dew temperature at the suction pressure
    [[nodiscard]] std::optional<double> boilingK(double suctionGaugePa) const;
    [[nodiscard]] std::optional<double> condensingK() const
    {
        return m_condensingK;
    } ///< bubble temperature at the liquid pressure
    [[nodiscard]] std::optional<double> superheatK() const;
    [[nodiscard]] std::optional<double> subcoolingK() const;

private:
    std::vector<Taken> m_taken;
    std::vector<Taken> m_before;
    const Unit& m_unit;
    const Conditions& m_conditions;
    const Catalogue& m_catalogue;
    const Refrigerant* m_refrigerant;
    std::optional<double> m_stationPressurePa;
    std::optional<double> m_boilingK; ///< several judges ask for them
    std::optional<double> m_condensingK;
};

/// What was taken as left, with the air as it was found where it was not taken again: work on a unit does not change
/// the air around it.
[[nodiscard]] std::vector<Taken> withAirAsFound(std::vector<Taken> asLeft, const std::vector<Taken>& asFound);

/// The readings of one visit and phase, with the last earlier ones.
[[nodiscard]] Measured measuredAt(const UnitRecord& record, const Visit& visit, Phase phase,
                                  const Catalogue& catalogue);

} // namespace padside
