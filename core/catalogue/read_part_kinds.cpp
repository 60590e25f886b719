// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/sections.h"

#include <cstdint>
#include <utility>

namespace padside {

namespace {

/// The five sentences are keyed by numeral, so that a merge patch can change one of them.
std::array<std::string, 5> readGradeSentences(JsonObject fields)
{
    std::array<std::string, 5> sentences;
    std::int64_t count = 0;
    for (int grade = 1; grade <= 5; ++grade)
        count += fields.has(std::to_string(grade)) ? 1 : 0;
    if (count != 5) {
        fields.trouble().report(fields.path(), PADSIDE_SAY("{0}: five sentences are needed, there are {1}."), {count});
        return sentences;
    }
    for (int grade = 1; grade <= 5; ++grade)
        sentences.at(static_cast<std::size_t>(grade - 1)) = fields.text(std::to_string(grade));
    fields.nothingElse();
    return sentences;
}

ZoneKind readZone(const std::string& code, JsonObject fields)
{
    ZoneKind zone;
    zone.code = code;
    zone.name = fields.text("name");
    zone.soiling = fields.flagOr("soiling", false);
    if (fields.has("tolerated_as"))
        zone.toleratedAs = fields.choice<Consequence>("tolerated_as");
    if (fields.has("grades"))
        zone.gradeSentences = readGradeSentences(fields.object("grades"));
    fields.nothingElse();
    return zone;
}

Task readTask(const std::string& code, JsonObject fields)
{
    Task task;
    task.code = code;
    task.season = fields.choice<VisitReason>("season");
    if (task.season == VisitReason::callOut)
        fields.trouble().report(fields.pathOf("season"), PADSIDE_SAY("{0}: a task belongs to spring or to fall."));
    task.sentence = fields.text("sentence");
    task.required = fields.flagOr("required", true);
    if (fields.has("needs"))
        task.needs = fields.choices<Condition>("needs");
    if (fields.has("bring"))
        task.bring = fields.texts("bring");
    fields.nothingElse();
    return task;
}

SourcedNumber readLife(JsonObject fields)
{
    SourcedNumber life{fields.number("years"), fields.text("source")};
    if (life.value <= 0)
        fields.trouble().report(fields.pathOf("years"), PADSIDE_SAY("{0}: a number above zero is needed here."));
    fields.nothingElse();
    return life;
}

PartKind readPartKind(const std::string& code, JsonObject fields)
{
    PartKind kind;
    kind.code = code;
    kind.name = fields.text("name");
    kind.unitKinds = fields.texts("unit_kinds");
    for (auto& [zoneCode, zone] : fields.object("zones").members())
        kind.zones.push_back(readZone(zoneCode, zone));
    if (kind.zones.empty())
        fields.trouble().report(fields.pathOf("zones"), PADSIDE_SAY("{0}: at least one is needed."));
    kind.gradeSentences = readGradeSentences(fields.object("grades"));
    for (auto& [taskCode, task] : fields.object("tasks").members())
        kind.tasks.push_back(readTask(taskCode, task));
    kind.failureModes = fields.texts("failure_modes");
    kind.preserves = fields.text("preserves");
    if (fields.has("bring"))
        kind.bring = fields.texts("bring");
    for (const Consequence consequence : fields.choices<Consequence>("consequences"))
        kind.consequences.insert(consequence);
    kind.spare = fields.choice<Spare>("spare");
    kind.outlivesUnit = fields.flag("outlives_unit");
    if (fields.has("median_life"))
        kind.medianLifeYears = readLife(fields.object("median_life"));
    if (fields.has("cautions"))
        kind.cautions = fields.texts("cautions");
    fields.nothingElse();
    return kind;
}

} // namespace

std::vector<PartKind> readPartKinds(JsonObject section)
{
    std::vector<PartKind> all;
    for (auto& [code, fields] : section.members())
        all.push_back(readPartKind(code, fields));
    return all;
}

} // namespace padside
