// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/catalogue_text.h"
#include "core/catalogue/cost_figures.h"
#include "core/catalogue/sections.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

constexpr double most = 1e9; // of any money; keeps sums finite
constexpr double percent = 0.01;

constexpr std::array fieldsOfKind{
    CostField{"part", PADSIDE_SAY("Cost of a new one"), &CostsOfKind::part},
    CostField{"labour", PADSIDE_SAY("Cost of fitting it"), &CostsOfKind::labour},
    CostField{"treatment", PADSIDE_SAY("Cost of one treatment"), &CostsOfKind::treatment},
    CostField{"damage", PADSIDE_SAY("Damage if nobody notices in time"), &CostsOfKind::damage},
    CostField{"damage_chance_percent", PADSIDE_SAY("Chance in % that nobody notices in time"),
              &CostsOfKind::damageChance, true},
    CostField{"outage_a_day", PADSIDE_SAY("Cost of a day without the unit"), &CostsOfKind::outageADay},
    CostField{"spare_a_year", PADSIDE_SAY("Cost of a spare at hand, a year"), &CostsOfKind::spareAYear}};

constexpr std::array generalFields{
    MoneyField{"energy_price_per_kwh", PADSIDE_SAY("Price of electricity per kWh"), MoneyField::Unit::money, nullptr,
               &CostFigures::energyPrice, 0, most},
    MoneyField{"upkeep_a_visit", PADSIDE_SAY("Cost of a visit"), MoneyField::Unit::money, nullptr,
               &CostFigures::upkeepAVisit, 0, most},
    MoneyField{"visits_a_year", PADSIDE_SAY("Visits a year"), MoneyField::Unit::times, &CostFigures::visitsAYear,
               nullptr, 0, 52},
    MoneyField{"interest_percent", PADSIDE_SAY("Interest of a year"), MoneyField::Unit::percent, &CostFigures::interest,
               nullptr, 0, 100},
    MoneyField{"years_compared", PADSIDE_SAY("Years compared"), MoneyField::Unit::years, &CostFigures::yearsCompared,
               nullptr, 1, 30},
    MoneyField{"new_unit_life_years", PADSIDE_SAY("Life of a new unit"), MoneyField::Unit::years,
               &CostFigures::newUnitLifeYears, nullptr, 1, 50},
    MoneyField{"yearly_loss_old_percent", PADSIDE_SAY("Efficiency this unit loses a year"), MoneyField::Unit::percent,
               &CostFigures::yearlyLossOld, nullptr, 0, 20},
    MoneyField{"yearly_loss_new_percent", PADSIDE_SAY("Efficiency a new unit loses a year"), MoneyField::Unit::percent,
               &CostFigures::yearlyLossNew, nullptr, 0, 20}};

void readMoney(JsonObject section, CostFigures& figures)
{
    for (const MoneyField& field : generalFields) {
        const double scale = field.unit == MoneyField::Unit::percent ? percent : 1;
        if (field.ours != nullptr)
            figures.*field.ours = readBetween(section, field.code, field.lowest, field.highest) * scale;
        else if (section.has(field.code))
            figures.*field.own = readBetween(section, field.code, field.lowest, field.highest) * scale;
    }
    figures.source = section.text("source");
    section.nothingElse();
}

CostsOfKind readCostsOfKind(JsonObject& fields)
{
    CostsOfKind costs;
    for (const CostField& field : fieldsOfKind) {
        if (fields.has(field.code)) {
            const double value = readBetween(fields, field.code, 0, field.percent ? 100 : most);
            costs.*field.value = field.percent ? value * percent : value;
        }
    }
    fields.nothingElse();
    return costs;
}

} // namespace

CostFigures readCosts(JsonObject& root)
{
    CostFigures figures;
    readMoney(root.object("money"), figures);
    JsonObject costs = root.object("costs");
    for (auto& [kind, fields] : costs.members())
        figures.kinds.emplace(kind, readCostsOfKind(fields));
    JsonObject prices = root.object("refrigerant_prices");
    for (auto& [refrigerant, fields] : prices.members()) {
        figures.refrigerantPerKg.emplace(refrigerant, readBetween(fields, "per_kg", 0, most));
        fields.nothingElse();
    }
    return figures;
}

Result<CostFigures> costFigures(std::span<const std::string> shipped, const std::string& ownChanges)
{
    const auto text = mergedCatalogueText(shipped, ownChanges);
    if (!text)
        return tl::unexpected(text.error());
    Trouble trouble;
    JsonObject root(*text, {}, trouble);
    CostFigures figures = readCosts(root);
    if (trouble.first())
        return tl::unexpected(*trouble.first());
    return figures;
}

CostsOfKind CostFigures::of(std::string_view partKind) const
{
    const auto found = kinds.find(partKind);
    return found != kinds.end() ? found->second : CostsOfKind{};
}

std::string priceCode(std::string designation)
{
    std::ranges::transform(designation, designation.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return designation;
}

std::span<const CostField> costFields()
{
    return fieldsOfKind;
}

std::span<const MoneyField> moneyFields()
{
    return generalFields;
}

} // namespace padside
