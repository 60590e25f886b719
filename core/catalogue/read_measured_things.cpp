// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/sections.h"
#include "core/quantity/unit.h"
#include "core/record/quantity_code.h"

#include <utility>

namespace padside {

namespace {

/// A unit code that measures `quantity`; anything else is reported.
std::string readUnit(JsonObject& fields, std::string_view field, QuantityKind quantity)
{
    std::string code = fields.text(field);
    const MeasuringUnit* unit = unitByCode(code);
    if (unit == nullptr || unit->kind != quantity) {
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: \"{1}\" is not a unit of this quantity."),
                                {code});
    }
    return code;
}

/// A bound, written in the metric unit for people to read, kept in SI.
double readBound(JsonObject& fields, std::string_view field, const std::string& metricUnit)
{
    const double written = fields.number(field);
    const MeasuringUnit* unit = unitByCode(metricUnit);
    return unit != nullptr ? toSi(written, *unit) : written;
}

ReadingKind readReadingKind(const std::string& code, JsonObject fields)
{
    ReadingKind kind;
    kind.code = code;
    kind.name = fields.text("name");
    kind.quantity = fields.choice<QuantityKind>("quantity");
    kind.metricUnit = readUnit(fields, "metric_unit", kind.quantity);
    kind.customaryUnit = readUnit(fields, "customary_unit", kind.quantity);
    if (fields.has("part_kind"))
        kind.partKind = fields.text("part_kind");
    if (fields.has("zones_of"))
        kind.zonesOf = fields.texts("zones_of");
    if (fields.has("needs"))
        kind.needs = fields.choices<Condition>("needs");
    kind.lowest = readBound(fields, "lowest", kind.metricUnit);
    kind.highest = readBound(fields, "highest", kind.metricUnit);
    if (!(kind.lowest < kind.highest))
        fields.trouble().report(fields.path(), PADSIDE_SAY("{0}: the lowest value must be below the highest."));
    kind.where = fields.text("where");
    kind.seasons = fields.choices<VisitReason>("seasons");
    fields.nothingElse();
    return kind;
}

} // namespace

std::vector<ReadingKind> readReadingKinds(JsonObject section)
{
    std::vector<ReadingKind> all;
    for (auto& [code, fields] : section.members())
        all.push_back(readReadingKind(code, fields));
    return all;
}

std::vector<NameplateItem> readNameplateItems(JsonObject section)
{
    std::vector<NameplateItem> all;
    for (auto& [code, fields] : section.members()) {
        NameplateItem item;
        item.code = code;
        item.name = fields.text("name");
        item.quantity = fields.choice<QuantityKind>("quantity");
        item.metricUnit = readUnit(fields, "metric_unit", item.quantity);
        item.customaryUnit = readUnit(fields, "customary_unit", item.quantity);
        fields.nothingElse();
        all.push_back(std::move(item));
    }
    return all;
}

std::vector<ReadingLimit> readReadingLimits(JsonObject section)
{
    std::vector<ReadingLimit> all;
    for (auto& [code, fields] : section.members()) {
        ReadingLimit limit;
        limit.code = code;
        limit.unit = fields.text("measured_in");
        const double written = fields.number("value");
        const MeasuringUnit* unit = unitByCode(limit.unit);
        if (unit == nullptr) {
            fields.trouble().report(fields.pathOf("measured_in"), PADSIDE_SAY("{0}: \"{1}\" is not a unit of measure."),
                                    {limit.unit});
        }
        limit.si = unit != nullptr ? toSi(written, *unit) : written;
        limit.sentence = fields.text("sentence");
        limit.source = fields.text("source");
        fields.nothingElse();
        all.push_back(std::move(limit));
    }
    return all;
}

} // namespace padside
