// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/catalogue.h"

#include "core/catalogue/catalogue_text.h"
#include "core/catalogue/sections.h"

#include <algorithm>
#include <cassert>

namespace padside {

namespace {

template <typename Entry> const Entry* entryWith(std::string_view code, const std::vector<Entry>& entries)
{
    const auto found = std::ranges::find(entries, code, &Entry::code);
    return found != entries.end() ? &*found : nullptr;
}

} // namespace

Result<Catalogue> Catalogue::load(std::span<const std::string> shipped, const std::string& ownChanges)
{
    const auto ours = shippedCatalogueText(shipped);
    if (!ours)
        return tl::unexpected(ours.error());
    const auto text = withOwnChanges(*ours, ownChanges);
    if (!text)
        return tl::unexpected(text.error());

    Trouble trouble;
    JsonObject root(*text, {}, trouble);
    Catalogue catalogue;
    catalogue.m_unitKinds = readUnitKinds(root.object("unit_kinds"));
    catalogue.m_partKinds = readPartKinds(root.object("part_kinds"));
    catalogue.m_readingKinds = readReadingKinds(root.object("reading_kinds"));
    catalogue.m_nameplateItems = readNameplateItems(root.object("nameplate_items"));
    catalogue.m_refrigerants = readRefrigerants(root.object("refrigerants"));
    catalogue.m_cautions = readCautions(root.object("cautions"));
    catalogue.m_assumptions = readAssumptions(root.object("assumptions"));
    catalogue.m_readingLimits = readReadingLimits(root.object("reading_limits"));
    catalogue.m_leakLimits = readLeakLimits(root.object("leak_limits"));
    catalogue.m_coatings = readCoatings(root.object("coatings"));
    catalogue.m_outlook = readOutlook(root.object("outlook"));
    if (root.has("supply")) // what is not said has its usual
        catalogue.m_supply = readSupply(root.object("supply"));
    CostFigures costs; // kept apart: see costFigures()
    if (root.has("money"))
        costs = readCosts(root);
    root.nothingElse();
    checkReferences(catalogue, trouble);
    checkCosts(costs, catalogue, trouble);
    checkNothingNeededIsMissing(*ours, *text, trouble);
    if (trouble.first())
        return tl::unexpected(*trouble.first());
    return catalogue;
}

const UnitKind* Catalogue::unitKind(std::string_view code) const
{
    return entryWith(code, m_unitKinds);
}

const PartKind* Catalogue::partKind(std::string_view code) const
{
    return entryWith(code, m_partKinds);
}

const ZoneKind* Catalogue::zoneKind(std::string_view partCode, std::string_view zoneCode) const
{
    const PartKind* part = partKind(partCode);
    return part != nullptr ? entryWith(zoneCode, part->zones) : nullptr;
}

const ReadingKind* Catalogue::readingKind(std::string_view code) const
{
    return entryWith(code, m_readingKinds);
}

const NameplateItem* Catalogue::nameplateItem(std::string_view code) const
{
    return entryWith(code, m_nameplateItems);
}

const Caution* Catalogue::caution(std::string_view code) const
{
    return entryWith(code, m_cautions);
}

const ReadingLimit* Catalogue::readingLimit(std::string_view code) const
{
    return entryWith(code, m_readingLimits);
}

const LeakLimit* Catalogue::leakLimit(std::string_view code) const
{
    return entryWith(code, m_leakLimits);
}

const Coating* Catalogue::coating(std::string_view code) const
{
    return entryWith(code, m_coatings);
}

const Refrigerant* Catalogue::refrigerant(std::string_view typed) const
{
    const auto found = std::ranges::find_if(
        m_refrigerants, [typed](const Refrigerant& one) { return meansRefrigerant(typed, one.code); });
    return found != m_refrigerants.end() ? &*found : nullptr;
}

double Catalogue::assumption(std::string_view code) const
{
    const Assumption* found = entryWith(code, m_assumptions);
    assert(found != nullptr && "an assumption that a rule asks for must be in the catalogue");
    return found->value;
}

Supply Catalogue::supplyOf(std::string_view partCode) const
{
    const auto found = m_supply.find(partCode);
    return found != m_supply.end() ? found->second : Supply{};
}

std::string Catalogue::gradeSentence(std::string_view partCode, std::string_view zoneCode, Grade grade) const
{
    const PartKind* part = partKind(partCode);
    const ZoneKind* zone = zoneKind(partCode, zoneCode);
    if (zone == nullptr)
        return {};
    const auto& sentences = zone->gradeSentences ? *zone->gradeSentences : part->gradeSentences;
    return sentences.at(static_cast<std::size_t>(numeral(grade) - 1));
}

} // namespace padside
