// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/store/record_reader.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

/// "stands", or that it is acknowledged and why.
std::string stateOf(const Flag& flag)
{
    if (!flag.acknowledged)
        return "stands";
    const FlagAcknowledged& said = *flag.acknowledged;
    return "acknowledged on " + isoText(said.on) + (said.by.empty() ? "" : " by " + said.by) + ": " + said.reason;
}

nlohmann::ordered_json rowOf(const Flag& flag, const UnitRecord& record, const Catalogue& catalogue)
{
    auto evidence = nlohmann::ordered_json::array();
    for (const FindingId& finding : flag.evidence)
        evidence.push_back(finding.text());
    for (const ChargeId& charge : flag.charges)
        evidence.push_back(charge.text());
    for (const ReadingId& reading : flag.readings)
        evidence.push_back(reading.text());
    nlohmann::ordered_json acknowledged = nullptr;
    if (flag.acknowledged) {
        acknowledged = {{"on", isoText(flag.acknowledged->on)},
                        {"by", flag.acknowledged->by},
                        {"reason", flag.acknowledged->reason}};
    }
    return {{"unit", record.unit.tag},
            {"site", record.site.name},
            {"rule", flag.rule},
            {"severity", std::string(codeOf(flag.severity))},
            {"state", stateOf(flag)},
            {"part", partName(record, catalogue, flag.partId, flag.zoneId)},
            {"zone", zoneName(record, flag.zoneId)},
            {"sentence", say(flag.sentence)},
            {"clears", say(flag.clears)},
            {"evidence", evidence},
            {"extent", flag.extent ? nlohmann::ordered_json(*flag.extent) : nlohmann::ordered_json(nullptr)},
            {"acknowledged", acknowledged}};
}

int printFlags(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const OutlookModel model(catalogue);
    const Date day = dayFor(words.on, surroundings.now());
    Answer answer{{{"unit", "UNIT"}, {"severity", "HOW SOON"}, {"sentence", "WHY"}, {"state", "STATE"}},
                  {"unit", "site", "rule", "severity", "part", "zone", "sentence", "clears", "evidence", "state",
                   "extent", "acknowledged"},
                  {},
                  "No flags on " + isoText(day) + "."};
    for (const Unit& unit : unitsFor(*store, words.unit)) {
        const UnitRecord record = store->records().unitRecord(unit.id);
        for (const Flag& flag : review(record, catalogue, model, day).flags)
            answer.rows.push_back(rowOf(flag, record, catalogue));
    }
    write(answer, words.form, surroundings.out);
    return exitDone;
}

} // namespace

void addFlagsCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command = app.add_subcommand("flags", "Reasons to worry, each with why and what would clear it");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv});
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printFlags(*words, surroundings); };
    });
}

} // namespace padside
