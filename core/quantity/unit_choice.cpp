// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/unit_choice.h"

namespace padside {

namespace {

const MeasuringUnit* ownUnit(QuantityKind kind, const UnitChoice& choice)
{
    const auto own = choice.own.find(kind);
    const MeasuringUnit* unit = own == choice.own.end() ? nullptr : unitByCode(own->second);
    return unit != nullptr && unit->kind == kind ? unit : nullptr;
}

} // namespace

const MeasuringUnit& shownUnit(QuantityKind kind, const UnitChoice& choice)
{
    const MeasuringUnit* own = ownUnit(kind, choice);
    return own != nullptr ? *own : shownUnit(kind, choice.system);
}

const MeasuringUnit& fittingUnit(QuantityKind kind, const UnitChoice& choice, double si)
{
    const MeasuringUnit* own = ownUnit(kind, choice);
    return own != nullptr ? *own : fittingUnit(kind, choice.system, si);
}

const MeasuringUnit& unitFor(QuantityKind kind, const UnitChoice& choice, std::string_view metricCode,
                             std::string_view customaryCode)
{
    const MeasuringUnit* its = unitByCode(choice.system == UnitSystem::metric ? metricCode : customaryCode);
    const bool usual = its == nullptr || its->code == shownUnit(kind, choice.system).code;
    return usual ? shownUnit(kind, choice) : *its;
}

} // namespace padside
