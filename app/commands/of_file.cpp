// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/of_file.h"

#include "core/quantity/currency.h"
#include "core/store/own_catalogue.h"
#include "core/store/site_book.h"
#include "resources/resources.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <ostream>

namespace padside {

Catalogue catalogueFor(Store& store, const std::function<void(const Sentence&)>& complain)
{
    const auto shipped = shippedCatalogue();
    auto catalogue = Catalogue::load(shipped, store.ownCatalogue().changes());
    if (!catalogue) {
        complain(catalogue.error().what);
        complain(
            {PADSIDE_SAY("Your own changes to the catalogue are left out until they fit again; they are still kept."),
             {}});
        catalogue = Catalogue::load(shipped);
    }
    if (!catalogue)
        throw StoreError(catalogue.error());
    return *std::move(catalogue);
}

Catalogue catalogueFor(Store& store, const CommandSurroundings& surroundings)
{
    return catalogueFor(store, [&](const Sentence& why) { surroundings.err << "padside: " << say(why) << '\n'; });
}

std::vector<Unit> unitsFor(Store& store, const std::string& tag)
{
    std::vector<Unit> units = store.sites().units();
    if (tag.empty()) {
        std::erase_if(units, [](const Unit& unit) { return unit.retiredOn.has_value(); });
        return units;
    }
    const auto found = std::ranges::find(units, tag, &Unit::tag);
    if (found != units.end())
        return {*found};
    std::string some;
    for (std::size_t i = 0; i < std::min<std::size_t>(units.size(), 8); ++i)
        some += (some.empty() ? "" : ", ") + units[i].tag;
    if (units.size() > 8)
        some += ", …";
    if (some.empty())
        throw StoreError(
            Problem{ProblemKind::refused, {PADSIDE_SAY("There is no unit “{0}”: the file has no units yet."), {tag}}});
    throw StoreError(Problem{ProblemKind::refused,
                             {PADSIDE_SAY("There is no unit “{0}” in this file. Its units are {1}."), {tag, some}}});
}

Date dayFor(const std::string& text, const Instant& now)
{
    if (text.empty())
        return localDate(now);
    const auto date = parseDate(text);
    if (!date)
        throw StoreError(
            Problem{ProblemKind::badInput,
                    {PADSIDE_SAY("“{0}” is not a date. Write it as year-month-day, like 2026-05-04."), {text}}});
    return *date;
}

std::string partName(const UnitRecord& record, const Catalogue& catalogue, std::optional<PartId> part,
                     std::optional<ZoneId> zone)
{
    const Part* found = part ? findPart(record, *part) : zone ? partOfZone(record, *zone) : nullptr;
    if (!found)
        return "";
    const PartKind* kind = catalogue.partKind(found->kind);
    std::string name = kind ? kind->name : found->kind;
    if (!found->position.empty())
        name += " (" + found->position + ")";
    return name;
}

std::string zoneName(const UnitRecord& record, std::optional<ZoneId> zone)
{
    const Zone* found = zone ? findZone(record, *zone) : nullptr;
    return found ? found->name : "";
}

std::string placeName(const UnitRecord& record, const Catalogue& catalogue, std::optional<PartId> part,
                      std::optional<ZoneId> zone)
{
    const std::string partText = partName(record, catalogue, part, zone);
    const std::string zoneText = zoneName(record, zone);
    return zoneText.empty() ? partText : partText + ", " + zoneText;
}

void addAskedOfFile(CLI::App& command, AskedOfFile& asked, const std::vector<AnswerForm>& forms)
{
    command.add_option("file", asked.file, "the record file")->required()->type_name("FILE");
    command.add_option("--unit", asked.unit, "only the unit with this tag")->type_name("TAG");
    command.add_option("--on", asked.on, "as of this day (default: today)")->type_name("DATE");
    addFormOption(command, asked.form, forms);
}

void addCurrencyOption(CLI::App& command, std::string& currency)
{
    command.add_option("--currency", currency, "the name of your currency, written before amounts of money")
        ->type_name("NAME");
}

PlainEnglish englishWith(const std::string& currency)
{
    auto name = parseCurrency(currency);
    if (!name)
        throw StoreError(name.error());
    return PlainEnglish(*std::move(name));
}

} // namespace padside
