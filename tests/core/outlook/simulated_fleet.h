// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/outlook_model.h"
#include "core/record/unit_record.h"

#include <memory>
#include <random>
#include <vector>

namespace padside::test {

/// What becomes of one zone that was not found spent by today.
struct ZoneFate
{
    ZoneId zoneId;
    double spentOn = 0; ///< days since 1970, with the time of day
};

/// A made-up unit: what a person wrote down of it until today, and what they can't know.
struct SimulatedUnit
{
    UnitRecord record;
    Date today{};
    std::vector<ZoneFate> fates; ///< of the zones that nobody found spent
};

/// Units of the small catalogue that behave as the model of the outlook says: each zone a chain that only goes up, at
/// its own pace out of the log-normal distribution itself (not its nodes), on its own exposure clock. They are visited
/// about every half-year, some weeks sooner or later; zones are misgraded now and then, one in seven is not seen, some
/// are found wet, some are brushed and coated, dirt is washed off. One zone in five has a beginning nobody knows.
class FleetSimulation
{
public:
    /// `truth` has the rates the zones decay at.
    FleetSimulation(const Catalogue& catalogue, const OutlookModel& truth, unsigned seed);

    [[nodiscard]] SimulatedUnit next();

private:
    struct Life;

    [[nodiscard]] Part addPart(const std::string& kind, const std::vector<std::string>& zones);
    [[nodiscard]] Life begin(const Part& part, const Zone& zone, Date firstVisit);
    void attend(SimulatedUnit& unit, const Visit& visit, Life& life);
    void write(SimulatedUnit& unit, const Visit& visit, const Life& life, std::variant<Grade, NotSeenReason> sight);
    void treat(SimulatedUnit& unit, const Visit& visit, Life& life, TreatmentKind kind);
    [[nodiscard]] bool happens(double chance);

    const Catalogue& m_catalogue;
    const OutlookModel& m_truth;
    std::mt19937_64 m_random;
    IdMaker m_ids;
};

} // namespace padside::test
