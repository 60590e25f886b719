// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/quantity/chance_words.h"
#include "core/quantity/measure.h"
#include "core/review/unit_worth.h"
#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "ui/models/worth_figures.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <nlohmann/json.hpp>
#include <ostream>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;

Json neededJson(const std::vector<NeededFigure>& figures)
{
    Json all = Json::array();
    for (const NeededFigure& figure : figures)
        all.push_back({{"of", figure.key}, {"field", figure.field}, {"what", say(figure.what)}});
    return all;
}

Json saidJson(const std::vector<Sentence>& sentences)
{
    Json all = Json::array();
    for (const Sentence& sentence : sentences)
        all.push_back(say(sentence));
    return all;
}

Json choiceJson(const PartChoice& choice)
{
    return {{"choice", codeOf(choice.choice)},
            {"present_cost", orNull(choice.presentCost)},
            {"years_until_spent", choice.yearsUntilSpent},
            {"years_gained", choice.yearsGained},
            {"reason", say(choice.reason)}};
}

Json partJson(const PartWorth& part, const UnitRecord& record, const Catalogue& catalogue)
{
    Json choices = Json::array();
    for (const PartChoice& choice : part.choices)
        choices.push_back(choiceJson(choice));
    Json treatment = nullptr;
    if (part.treatment)
        treatment = codeOf(*part.treatment);
    return {{"part", partName(record, catalogue, part.partId, part.zoneId)},
            {"worst_zone", zoneName(record, part.zoneId)},
            {"belief", part.belief},
            {"chance_1_year", part.chanceInAYear},
            {"chance_years_compared", part.chanceInYearsCompared},
            {"stops_unit", part.stopsUnit},
            {"ends_unit", part.endsUnit},
            {"treatment", treatment},
            {"cost_of_failure", orNull(part.costOfFailure)},
            {"choices", choices},
            {"needed", neededJson(part.needed)},
            {"left_out", neededJson(part.leftOut)},
            {"notes", saidJson(part.notes)}};
}

Json carryOnJson(const UnitWorth& worth)
{
    if (!worth.answer)
        return nullptr;
    Json turning = Json::array();
    for (const TurningPoint& point : worth.answer->turning)
        turning.push_back({{"assumption", point.assumption}, {"today", point.today}, {"turns_at", point.turnsAt}});
    return {{"carry_on", worth.answer->carryOn},
            {"carry_on_a_year", worth.answer->carryOnAYear},
            {"replace_a_year", worth.answer->replaceAYear},
            {"says", say(worth.answer->said)},
            {"energy_counted", worth.energyCounted},
            {"repairs_new_a_year", worth.given->repairsNew},
            {"turning", turning}};
}

Json unitJson(const UnitWorth& worth, const UnitRecord& record, const Catalogue& catalogue)
{
    Json parts = Json::array();
    for (const PartWorth& part : worth.parts)
        parts.push_back(partJson(part, record, catalogue));
    Json uncosted = Json::array();
    for (const PartId part : worth.uncosted)
        uncosted.push_back(partName(record, catalogue, part, std::nullopt));
    return {
        {"unit", record.unit.tag},  {"on", isoText(worth.today)},         {"carry_on_or_replace", carryOnJson(worth)},
        {"repairs", worth.repairs}, {"needed", neededJson(worth.needed)}, {"left_out", neededJson(worth.leftOut)},
        {"uncosted", uncosted},     {"notes", saidJson(worth.notes)},     {"parts", parts}};
}

/// The choices as rows, then what they come to for the unit.
void writeTable(const UnitWorth& worth, const UnitRecord& record, const Catalogue& catalogue, std::ostream& out)
{
    Answer answer{{{"part", "PART"},
                   {"within_a_year", "1 YEAR"},
                   {"choice", "CHOICE"},
                   {"cost", "COST"},
                   {"gained", "YEARS GAINED"},
                   {"reason", "WHY"}},
                  {},
                  {},
                  "Nothing is fitted that has an outlook on " + isoText(worth.today) + "."};
    for (const PartWorth& part : worth.parts) {
        bool first = true;
        for (const PartChoice& choice : part.choices) {
            answer.rows.push_back({{"part", first ? partName(record, catalogue, part.partId, part.zoneId) : ""},
                                   {"within_a_year", first ? say(chanceWords(part.chanceInAYear)) : ""},
                                   {"choice", wordOf(choice.choice)},
                                   {"cost", choice.presentCost ? showNumber(*choice.presentCost, 0) : "?"},
                                   {"gained", showNumber(choice.yearsGained, 1)},
                                   {"reason", say(choice.reason)}});
            first = false;
        }
    }
    write(answer, AnswerForm::table, out);
    const auto list = [&](const char* heading, const std::vector<NeededFigure>& figures) {
        if (figures.empty())
            return;
        out << '\n' << heading << '\n';
        for (const NeededFigure& figure : figures)
            out << "  " << say(figure.what) << '\n';
    };
    if (worth.answer) {
        out << '\n' << say(worth.answer->said) << '\n';
        for (const TurningPoint& point : worth.answer->turning) {
            out << "  It would turn if the " << point.assumption << " were " << showNumber(point.turnsAt, 2)
                << " instead of " << showNumber(point.today, 2) << ".\n";
        }
    }
    list("Needed to hold carrying on against replacing:", worth.needed);
    list("Not given, and left out:", worth.leftOut);
    if (worth.answer && !worth.uncosted.empty()) {
        out << "\nFailures not counted, for want of their costs:\n";
        for (const PartId part : worth.uncosted)
            out << "  " << partName(record, catalogue, part, std::nullopt) << '\n';
    }
    for (const Sentence& note : worth.notes)
        out << say(note) << '\n';
}

int printWorth(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const UnitRecord record = store->records().unitRecord(unitsFor(*store, words.unit).front().id);
    const UnitWorth worth
        = unitWorth(record, catalogue, costsIn(*store), OutlookModel(catalogue), dayFor(words.on, surroundings.now()));
    if (words.form == AnswerForm::json)
        surroundings.out << unitJson(worth, record, catalogue).dump(2) << '\n';
    else
        writeTable(worth, record, catalogue, surroundings.out);
    return exitDone;
}

} // namespace

void addWorthCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command
        = app.add_subcommand("worth", "What can be done about each part, what it costs, and carry on or replace");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json});
    command->get_option("--unit")->required();
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printWorth(*words, surroundings); };
    });
}

} // namespace padside
