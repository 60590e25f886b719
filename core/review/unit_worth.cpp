// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_worth.h"

#include "core/review/known_unit.h"
#include "core/worth/energy_use.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace padside {

namespace {

constexpr double mostMoney = 1e9;

constexpr std::array figureFields{
    UnitFigureField{"price-new", PADSIDE_SAY("Price of a new unit, fitted"), UnitFigureField::Unit::money,
                    &UnitFigures::priceNew, 0, mostMoney},
    UnitFigureField{"seer-old", PADSIDE_SAY("SEER of this unit, as on its label"), UnitFigureField::Unit::seer,
                    &UnitFigures::seerOld, 1, 60, "seer"},
    UnitFigureField{"seer-new", PADSIDE_SAY("SEER of a new unit"), UnitFigureField::Unit::seer, &UnitFigures::seerNew,
                    1, 60},
    UnitFigureField{"rated-cooling", PADSIDE_SAY("Rated cooling"), UnitFigureField::Unit::power,
                    &UnitFigures::capacityW, 100, 1e7, "rated-cooling"},
    UnitFigureField{"full-load-hours", PADSIDE_SAY("Hours of cooling at full load, a year"),
                    UnitFigureField::Unit::hours, &UnitFigures::fullLoadHours, 1, 8784}};

NeededFigure neededOfUnit(std::string_view code)
{
    const auto field = std::ranges::find(figureFields, code, &UnitFigureField::code);
    return {NeededFigure::Place::unit, {}, std::string(code), Sentence{field->label, {}}};
}

/// Puts together what carrying on is held against replacing from.
class Comparison
{
public:
    Comparison(const PartCostBasis& basis, const UnitFigures& figures, UnitWorth& into)
        : m_basis(basis)
        , m_figures(figures)
        , m_into(into)
        , m_years(wholeYears(basis.costs))
    {
    }

    void addPart(const DecayingPart& part, const PartWorth& worth, const OutlookModel& model)
    {
        if (!worth.costOfFailure) {
            m_into.uncosted.push_back(part.part->id);
            return;
        }
        // A part that ends the unit costs no more than the unit.
        const double cost = worth.endsUnit && m_figures.priceNew ? std::min(*worth.costOfFailure, *m_figures.priceNew)
                                                                 : *worth.costOfFailure;
        const std::vector<double> now = expectedRenewals(part, model, m_basis.today, m_years);
        const std::vector<double> fresh = expectedRenewalsOfNew(part, model, m_years);
        m_into.repairs.resize(now.size());
        for (std::size_t year = 0; year < now.size(); ++year) {
            m_into.repairs[year] += cost * now[year];
            m_repairsNew += cost * fresh[year] / m_years;
        }
        const double count = std::accumulate(now.begin(), now.end(), 0.0);
        m_into.shares.push_back({part.part->id, count, cost * count});
    }

    void answer()
    {
        std::ranges::stable_sort(m_into.shares, std::greater{}, &RepairShare::cost);
        if (!m_figures.priceNew)
            m_into.needed.push_back(neededOfUnit("price-new"));
        if (m_into.shares.empty())
            m_into.notes.push_back(
                {PADSIDE_SAY("No repair can be reckoned yet: give the costs of at least one part."), {}});
        if (!m_into.needed.empty() || m_into.shares.empty())
            return;
        CarryOnCase given;
        given.years = m_basis.costs.yearsCompared;
        given.rate = m_basis.costs.interest;
        given.repairs = m_into.repairs;
        given.repairsNew = m_repairsNew;
        given.priceNew = *m_figures.priceNew;
        given.lifeNew = m_basis.costs.newUnitLifeYears;
        given.lossOldAYear = m_basis.costs.yearlyLossOld;
        given.lossNewAYear = m_basis.costs.yearlyLossNew;
        if (m_basis.costs.upkeepAVisit)
            given.upkeepOld = given.upkeepNew = *m_basis.costs.upkeepAVisit * m_basis.costs.visitsAYear;
        takeEnergy(given);
        if (const auto answer = carryOnOrReplace(given)) {
            m_into.given = given;
            m_into.answer = *answer;
        } else {
            m_into.notes.push_back(answer.error().what);
        }
    }

private:
    /// Counted only where all of it is known: half of it would favour one side.
    void takeEnergy(CarryOnCase& given)
    {
        const auto miss = [&](const std::optional<double>& figure, NeededFigure what) {
            if (!figure)
                m_into.leftOut.push_back(std::move(what));
            return !figure;
        };
        const auto price = std::ranges::find(moneyFields(), "energy_price_per_kwh", &MoneyField::code);
        bool missing = miss(m_basis.costs.energyPrice,
                            {NeededFigure::Place::money, {}, std::string(price->code), {price->label, {}}});
        missing |= miss(m_figures.capacityW, neededOfUnit("rated-cooling"));
        missing |= miss(m_figures.fullLoadHours, neededOfUnit("full-load-hours"));
        missing |= miss(m_figures.seerOld, neededOfUnit("seer-old"));
        missing |= miss(m_figures.seerNew, neededOfUnit("seer-new"));
        if (missing) {
            m_into.notes.push_back(
                {PADSIDE_SAY("Electricity is left out on both sides: not everything it takes is given."), {}});
            return;
        }
        given.energyPrice = *m_basis.costs.energyPrice;
        given.capacityW = *m_figures.capacityW;
        given.fullLoadHours = *m_figures.fullLoadHours;
        given.seerOld = *m_figures.seerOld * leftToday();
        given.seerNew = *m_figures.seerNew;
        m_into.energyCounted = true;
        m_into.notes.push_back(
            {PADSIDE_SAY("Electricity for cooling only; both SEER must be of the same scale (SEER or SEER2)."), {}});
    }

    /// Of this unit's efficiency, by its age; all of it where that is not known.
    [[nodiscard]] double leftToday() const
    {
        const auto& installed = m_basis.record.unit.installedOn;
        if (!installed) {
            m_into.notes.push_back({PADSIDE_SAY("Its age is not known: its efficiency is taken as on the label."), {}});
            return 1;
        }
        const double age = std::max(0.0, yearsBetween(*installed, m_basis.today));
        return efficiencyLeft(m_basis.costs.yearlyLossOld, age).value_or(1);
    }

    const PartCostBasis& m_basis;
    const UnitFigures& m_figures;
    UnitWorth& m_into;
    int m_years;
    double m_repairsNew = 0;
};

bool matters(const PartWorth& part, const DecayingPart& of)
{
    return part.stopsUnit || part.endsUnit || of.kind->consequences.contains(Consequence::safety);
}

} // namespace

std::span<const UnitFigureField> unitFigureFields()
{
    return figureFields;
}

UnitFigures unitFigures(const UnitRecord& record)
{
    UnitFigures figures;
    for (const UnitFigureField& field : figureFields) {
        const auto assumed = std::ranges::find(record.assumptions, field.code, &UnitAssumption::code);
        const auto printed = std::ranges::find(record.unit.nameplate, field.nameplateItem, &NameplateValue::item);
        if (assumed != record.assumptions.end())
            figures.*field.value = assumed->value;
        else if (printed != record.unit.nameplate.end())
            figures.*field.value = printed->value.si;
    }
    return figures;
}

UnitWorth unitWorth(const UnitRecord& record, const Catalogue& catalogue, const CostFigures& costs,
                    const OutlookModel& model, Date today)
{
    return unitWorth(knownUnit(record, catalogue, model, today), catalogue, costs, model);
}

UnitWorth unitWorth(const KnownUnit& known, const Catalogue& catalogue, const CostFigures& costs,
                    const OutlookModel& model)
{
    UnitWorth worth;
    const UnitFigures figures = unitFigures(known.record);
    worth.today = known.today;
    if (known.isRetired())
        return worth;
    const std::vector<DecayingPart> parts = decayingParts(known.record, catalogue, known.beliefs);
    const PartCostBasis basis{known.record, catalogue, costs, figures.priceNew, known.today};
    Comparison comparison(basis, figures, worth);
    struct Ranked
    {
        PartWorth worth;
        bool matters;
    };
    std::vector<Ranked> ranked;
    for (const DecayingPart& part : parts) {
        PartWorth one = partWorth(part, basis);
        comparison.addPart(part, one, model);
        const bool first = matters(one, part);
        ranked.push_back({std::move(one), first});
    }
    std::ranges::stable_sort(ranked, [](const Ranked& a, const Ranked& b) {
        return a.matters != b.matters ? a.matters : a.worth.chanceInAYear > b.worth.chanceInAYear;
    });
    for (Ranked& one : ranked)
        worth.parts.push_back(std::move(one.worth));
    comparison.answer();
    return worth;
}

} // namespace padside
