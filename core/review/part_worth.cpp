// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/part_worth.h"

#include "core/outlook/forecast.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

namespace padside {

namespace {

const ZoneBelief& worstZone(const DecayingPart& part, Date inAYear)
{
    return **std::ranges::max_element(part.zones, {},
                                      [&](const ZoneBelief* zone) { return chanceSpentBy(*zone, inAYear); });
}

/// What slows this zone's decay: a coat where it dies of corrosion, else what it was treated with before.
std::optional<TreatmentKind> treatmentOf(const ZoneBelief& zone, const PartCostBasis& basis)
{
    if (zone.trail.corrodes && basis.catalogue.outlook().protections.contains(TreatmentKind::brushAndCoat))
        return TreatmentKind::brushAndCoat;
    std::optional<TreatmentKind> last;
    for (const Treatment& treatment : standing(basis.record.treatments)) {
        const bool here = treatment.partId == zone.trail.partId
            && treatment.zoneId.value_or(zone.trail.zoneId) == zone.trail.zoneId;
        if (here && treatment.on <= basis.today && basis.catalogue.outlook().protections.contains(treatment.kind))
            last = treatment.kind;
    }
    return last;
}

PartDecay decayOf(const ZoneBelief& zone, const std::optional<TreatmentKind>& treatment, const PartCostBasis& basis)
{
    PartDecay decay;
    decay.rates = zone.rates;
    for (double& rate : decay.rates)
        rate *= zone.belief.meanPace() * bareSpeed(zone);
    if (treatment) {
        const Protection& protection = basis.catalogue.outlook().protections.at(*treatment);
        decay.treats = true;
        decay.treatmentEffect = protection.effect;
        decay.treatmentYears = protection.years;
        if (zone.trail.coat)
            decay.treatedYears = std::max(0.0, yearsBetween(basis.today, zone.trail.coat->until));
    }
    return decay;
}

/// Collects the costs of one part and what is missing among them.
class CostsOfPart
{
public:
    CostsOfPart(const DecayingPart& part, const PartCostBasis& basis, PartWorth& into)
        : m_part(part)
        , m_basis(basis)
        , m_given(basis.costs.of(part.kind->code))
        , m_into(into)
    {
    }

    PartCosts all()
    {
        const Supply supply = m_basis.catalogue.supplyOf(m_part.kind->code);
        // A person who knows what a new one costs can get one, whatever is usual for its kind.
        const bool known = m_given.part && m_given.labour;
        m_noSpare = !supply.made || (m_part.kind->spare == Spare::none && !known);
        m_costs.leadDays = supply.leadDays;
        takeReplacement();
        if (m_into.treatment)
            takeOptional("treatment", m_costs.treatment, m_into.needed);
        if (has(Consequence::lossOfCharge))
            takeCharge();
        if (has(Consequence::compressorAtRisk))
            takeDamage();
        takeOptional("outage_a_day", m_costs.outageADay, m_into.leftOut);
        if (isWaitedFor())
            takeOptional("spare_a_year", m_costs.spareAYear, m_into.leftOut);
        return m_costs;
    }

    [[nodiscard]] bool replacementKnown() const { return m_replacementKnown; }
    [[nodiscard]] bool noSpare() const { return m_noSpare; }
    [[nodiscard]] bool unitInstead() const { return m_unitInstead; } ///< replacing means the whole unit
    [[nodiscard]] bool treatmentKnown() const { return m_given.treatment.has_value(); }
    [[nodiscard]] bool spareKnown() const { return m_given.spareAYear && isWaitedFor(); }

private:
    /// Only then it is worth having one at hand.
    [[nodiscard]] bool isWaitedFor() const { return !m_noSpare && m_costs.leadDays > 1; }
    [[nodiscard]] bool has(Consequence one) const { return m_part.kind->consequences.contains(one); }

    [[nodiscard]] NeededFigure neededOfKind(std::string_view field) const
    {
        const auto named = std::ranges::find(costFields(), field, &CostField::code);
        return {NeededFigure::Place::partKind, m_part.kind->code, std::string(field),
                Sentence{PADSIDE_SAY("{0}: {1}"), {Word{m_part.kind->name}, Word{named->label}}}};
    }

    void takeReplacement()
    {
        if (m_given.part && m_given.labour && !m_noSpare) {
            m_costs.part = *m_given.part;
            m_costs.labour = *m_given.labour;
            m_replacementKnown = true;
            return;
        }
        if (!m_noSpare && !m_given.part)
            m_into.needed.push_back(neededOfKind("part"));
        if (!m_noSpare && !m_given.labour)
            m_into.needed.push_back(neededOfKind("labour"));
        if (m_noSpare || (m_into.endsUnit && !m_given.part))
            takeNewUnit();
    }

    /// Once it is gone the unit is worth no more: a new unit stands in for it.
    void takeNewUnit()
    {
        if (m_basis.priceNew) {
            m_costs.part = *m_basis.priceNew;
            m_replacementKnown = true;
            m_unitInstead = true;
            m_into.notes.push_back(
                {PADSIDE_SAY("Once it is spent, the unit is taken to be given up: the price of a new unit stands "
                             "in for that of the part."),
                 {}});
        } else if (m_noSpare) {
            m_into.needed.push_back(
                {NeededFigure::Place::unit, {}, "price-new", {PADSIDE_SAY("Price of a new unit, fitted"), {}}});
        }
    }

    void takeOptional(std::string_view field, double& cost, std::vector<NeededFigure>& missing)
    {
        const auto named = std::ranges::find(costFields(), field, &CostField::code);
        if (const auto& given = m_given.*named->value)
            cost = *given;
        else
            missing.push_back(neededOfKind(field));
    }

    void takeCharge()
    {
        const Refrigerant* refrigerant = m_basis.catalogue.refrigerant(m_basis.record.unit.refrigerant);
        const auto& nameplate = m_basis.record.unit.nameplate;
        const auto charge = std::ranges::find(nameplate, "charge", &NameplateValue::item);
        if (refrigerant == nullptr || charge == nameplate.end()) {
            m_into.notes.push_back(
                {PADSIDE_SAY("Lost refrigerant is not counted: the unit's refrigerant and factory charge are "
                             "not both known."),
                 {}});
            return;
        }
        for (const auto& [code, price] : m_basis.costs.refrigerantPerKg) {
            if (m_basis.catalogue.refrigerant(code) == refrigerant) {
                m_costs.charge = price * charge->value.si;
                return;
            }
        }
        m_into.leftOut.push_back({NeededFigure::Place::refrigerant,
                                  priceCode(refrigerant->code),
                                  "per_kg",
                                  {PADSIDE_SAY("Price of {0} per kg"), {refrigerant->code}}});
    }

    void takeDamage()
    {
        takeOptional("damage", m_costs.damage, m_into.leftOut);
        takeOptional("damage_chance_percent", m_costs.damageChance, m_into.leftOut);
    }

    const DecayingPart& m_part;
    const PartCostBasis& m_basis;
    CostsOfKind m_given;
    PartWorth& m_into;
    PartCosts m_costs;
    bool m_replacementKnown = false;
    bool m_noSpare = false;
    bool m_unitInstead = false;
};

double failureOf(const PartCosts& costs)
{
    return costs.part + costs.labour + costs.charge + costs.damage * costs.damageChance
        + costs.outageADay * std::max(1.0, costs.leadDays);
}

Sentence reasonWithoutMoney(const ChoiceWorth& worth)
{
    if (worth.choice == Choice::leave)
        return {PADSIDE_SAY("About {0} years are to be expected of it within the years compared."),
                {Number{worth.yearsUntilSpent, 1}}};
    return {PADSIDE_SAY("{0} years are gained before it is spent."), {Number{worth.yearsGained, 1}}};
}

} // namespace

int wholeYears(const CostFigures& costs)
{
    return static_cast<int>(std::lround(costs.yearsCompared));
}

PartWorth partWorth(const DecayingPart& part, const PartCostBasis& basis)
{
    const Date inAYear = addMonths(basis.today, monthsAYear);
    const int years = wholeYears(basis.costs);
    const ZoneBelief& worst = worstZone(part, inAYear);
    PartWorth worth;
    worth.partId = part.part->id;
    worth.zoneId = worst.trail.zoneId;
    worth.belief = worst.belief.grades();
    worth.chanceInAYear = chanceSpentBy(part, inAYear);
    worth.chanceInYearsCompared = chanceSpentBy(part, addMonths(basis.today, years * monthsAYear));
    worth.stopsUnit = stopsUnit(*part.kind);
    worth.endsUnit = part.kind->consequences.contains(Consequence::endsUnit);
    worth.treatment = treatmentOf(worst, basis);

    CostsOfPart figures(part, basis, worth);
    const PartCosts costs = figures.all();
    worth.endsUnit = worth.endsUnit || figures.noSpare();
    const PartDecay decay = decayOf(worst, worth.treatment, basis);
    const MoneyHorizon horizon{basis.costs.yearsCompared, basis.costs.interest};
    const auto withoutMoney = partChoices(worth.belief, decay, costs, horizon);
    if (!withoutMoney)
        return worth;
    PartDecay affordable = decay;
    affordable.treats = decay.treats && figures.treatmentKnown();
    const auto priced = partChoices(worth.belief, affordable, costs, horizon);
    if (figures.replacementKnown())
        worth.costOfFailure = failureOf(costs);
    for (const ChoiceWorth& one : *withoutMoney) {
        if (one.choice == Choice::replaceNow && figures.noSpare())
            continue;
        if (one.choice == Choice::spareAtHand && !figures.spareKnown())
            continue;
        if (one.choice == Choice::replaceWhenSpent && !figures.replacementKnown())
            continue;
        PartChoice choice{one.choice, std::nullopt, one.yearsUntilSpent, one.yearsGained, reasonWithoutMoney(one)};
        const auto money = std::ranges::find(*priced, one.choice, &ChoiceWorth::choice);
        const bool unpriced = one.choice == Choice::replaceNow && figures.unitInstead();
        if (figures.replacementKnown() && money != priced->end() && !unpriced) {
            choice.presentCost = money->presentCost;
            choice.reason = money->reason;
        }
        worth.choices.push_back(std::move(choice));
    }
    std::ranges::stable_sort(worth.choices, [](const PartChoice& a, const PartChoice& b) {
        if (a.presentCost && b.presentCost)
            return *a.presentCost < *b.presentCost;
        if (a.presentCost.has_value() != b.presentCost.has_value())
            return a.presentCost.has_value();
        return a.yearsGained > b.yearsGained;
    });
    return worth;
}

} // namespace padside
