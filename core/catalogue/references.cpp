// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/sections.h"

#include <algorithm>
#include <map>

namespace padside {

namespace {

void checkUnitKinds(const Catalogue& catalogue, Trouble& trouble)
{
    for (const UnitKind& unit : catalogue.unitKinds()) {
        for (const UnitKind::Fitted& fitted : unit.parts) {
            const std::string path = "unit_kinds/" + unit.code + "/parts/" + fitted.partKind;
            const PartKind* part = catalogue.partKind(fitted.partKind);
            if (part == nullptr)
                trouble.report(path, PADSIDE_SAY("{0}: there is no part kind with this code."));
            else if (std::ranges::count(part->unitKinds, unit.code) == 0)
                trouble.report(path, PADSIDE_SAY("{0}: this part kind does not name \"{1}\" in its unit_kinds."),
                               {unit.code});
        }
    }
}

void checkPartKinds(const Catalogue& catalogue, Trouble& trouble)
{
    std::map<std::string, std::string> tasks;
    for (const PartKind& part : catalogue.partKinds()) {
        const std::string path = "part_kinds/" + part.code;
        for (const std::string& unit : part.unitKinds) {
            if (catalogue.unitKind(unit) == nullptr)
                trouble.report(path + "/unit_kinds", PADSIDE_SAY("{0}: there is no unit kind \"{1}\"."), {unit});
        }
        for (const std::string& caution : part.cautions) {
            if (catalogue.caution(caution) == nullptr)
                trouble.report(path + "/cautions", PADSIDE_SAY("{0}: there is no caution \"{1}\"."), {caution});
        }
        for (const Task& task : part.tasks) {
            const auto [first, isNew] = tasks.emplace(task.code, path);
            if (!isNew) {
                trouble.report(path + "/tasks/" + task.code,
                               PADSIDE_SAY("{0}: this task code is used already, in {1}. Give one of them another."),
                               {first->second});
            }
        }
    }
}

void checkOutlookAndSupply(const Catalogue& catalogue, Trouble& trouble)
{
    for (const auto& [part, zones] : catalogue.outlook().corrodingZones) {
        const std::string path = "outlook/corroding_zones/" + part;
        if (catalogue.partKind(part) == nullptr)
            trouble.report(path, PADSIDE_SAY("{0}: there is no part kind with this code."));
        for (const std::string& zone : zones) {
            if (catalogue.zoneKind(part, zone) == nullptr)
                trouble.report(path + "/zones", PADSIDE_SAY("{0}: this part kind has no zone \"{1}\"."), {zone});
        }
    }
    for (const auto& [part, supply] : catalogue.supply()) {
        if (catalogue.partKind(part) == nullptr)
            trouble.report("supply/" + part, PADSIDE_SAY("{0}: there is no part kind with this code."));
    }
    for (const auto& [part, own] : catalogue.outlook().kinds) {
        if (catalogue.partKind(part) == nullptr)
            trouble.report("outlook/part_kinds/" + part, PADSIDE_SAY("{0}: there is no part kind with this code."));
    }
}

} // namespace

void checkReferences(const Catalogue& catalogue, Trouble& trouble)
{
    checkUnitKinds(catalogue, trouble);
    checkPartKinds(catalogue, trouble);
    checkOutlookAndSupply(catalogue, trouble);
    for (const ReadingKind& reading : catalogue.readingKinds()) {
        if (!reading.partKind.empty() && catalogue.partKind(reading.partKind) == nullptr) {
            trouble.report("reading_kinds/" + reading.code + "/part_kind",
                           PADSIDE_SAY("{0}: there is no part kind \"{1}\"."), {reading.partKind});
        }
        for (const std::string& part : reading.zonesOf) {
            if (catalogue.partKind(part) == nullptr) {
                trouble.report("reading_kinds/" + reading.code + "/zones_of",
                               PADSIDE_SAY("{0}: there is no part kind \"{1}\"."), {part});
            }
        }
    }
}

void checkNothingNeededIsMissing(const nlohmann::ordered_json& ours, const nlohmann::ordered_json& merged,
                                 Trouble& trouble)
{
    for (const char* section : {"assumptions", "reading_limits"}) {
        if (!ours.contains(section) || !merged.contains(section))
            continue; // said where the section is read
        for (const auto& [code, entry] : ours.at(section).items()) {
            if (!merged.at(section).contains(code)) {
                trouble.report(std::string(section) + "/" + code,
                               PADSIDE_SAY("{0}: this figure is needed. Change its value instead of taking it away."));
            }
        }
    }
}

} // namespace padside
