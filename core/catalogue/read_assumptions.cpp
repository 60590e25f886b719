// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/sections.h"

#include <cmath>
#include <utility>

namespace padside {

namespace {

Assumption readAssumption(const std::string& code, JsonObject& fields)
{
    Assumption assumption;
    assumption.code = code;
    assumption.name = fields.text("name");
    assumption.topic = fields.choice<AssumptionTopic>("topic");
    assumption.unit = fields.choice<AssumptionUnit>("unit");
    assumption.lowest = fields.number("lowest");
    assumption.highest = fields.number("highest");
    assumption.value = readBetween(fields, "value", assumption.lowest, assumption.highest);
    const bool whole = assumption.unit == AssumptionUnit::days || assumption.unit == AssumptionUnit::months;
    if (whole && assumption.value != std::floor(assumption.value))
        fields.trouble().report(fields.pathOf("value"), PADSIDE_SAY("{0}: a whole number is needed here."));
    assumption.sentence = fields.text("sentence");
    assumption.source = fields.text("source");
    fields.nothingElse();
    return assumption;
}

} // namespace

std::vector<Assumption> readAssumptions(JsonObject section)
{
    std::vector<Assumption> all;
    for (auto& [code, fields] : section.members())
        all.push_back(readAssumption(code, fields));
    return all;
}

} // namespace padside
