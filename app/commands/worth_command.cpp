// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/quantity/amounts.h"
#include "core/quantity/chance_words.h"
#include "core/quantity/measure.h"
#include "core/quantity/plain_english.h"
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

/// What is asked about worth.
struct WorthWords : AskedOfFile
{
    std::string currency;
};

/// What is said about a unit, and how.
struct WorthAnswer
{
    const UnitWorth& worth;
    const UnitRecord& record;
    const Catalogue& catalogue;
    const Speaker& speaker;
};

Json neededJson(const std::vector<NeededFigure>& figures)
{
    Json all = Json::array();
    for (const NeededFigure& figure : figures)
        all.push_back({{"of", figure.key}, {"field", figure.field}, {"what", say(figure.what)}});
    return all;
}

Json saidJson(const std::vector<Sentence>& sentences, const Speaker& speaker)
{
    Json all = Json::array();
    for (const Sentence& sentence : sentences)
        all.push_back(say(sentence, speaker));
    return all;
}

Json choiceJson(const PartChoice& choice, const Speaker& speaker)
{
    return {{"choice", codeOf(choice.choice)},
            {"present_cost", orNull(choice.presentCost)},
            {"years_until_spent", choice.yearsUntilSpent},
            {"years_gained", choice.yearsGained},
            {"reason", say(choice.reason, speaker)}};
}

Json partJson(const PartWorth& part, const WorthAnswer& answer)
{
    Json choices = Json::array();
    for (const PartChoice& choice : part.choices)
        choices.push_back(choiceJson(choice, answer.speaker));
    Json treatment = nullptr;
    if (part.treatment)
        treatment = codeOf(*part.treatment);
    return {{"part", partName(answer.record, answer.catalogue, part.partId, part.zoneId)},
            {"worst_zone", zoneName(answer.record, part.zoneId)},
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
            {"notes", saidJson(part.notes, answer.speaker)}};
}

Json carryOnJson(const UnitWorth& worth, const Speaker& speaker)
{
    if (!worth.answer)
        return nullptr;
    Json turning = Json::array();
    for (const TurningPoint& point : worth.answer->turning)
        turning.push_back({{"assumption", point.assumption}, {"today", point.today}, {"turns_at", point.turnsAt}});
    return {{"carry_on", worth.answer->carryOn},
            {"carry_on_a_year", worth.answer->carryOnAYear},
            {"replace_a_year", worth.answer->replaceAYear},
            {"says", say(worth.answer->said, speaker)},
            {"energy_counted", worth.energyCounted},
            {"repairs_new_a_year", worth.given->repairsNew},
            {"turning", turning}};
}

Json unitJson(const WorthAnswer& answer)
{
    const UnitWorth& worth = answer.worth;
    Json parts = Json::array();
    for (const PartWorth& part : worth.parts)
        parts.push_back(partJson(part, answer));
    Json uncosted = Json::array();
    for (const PartId part : worth.uncosted)
        uncosted.push_back(partName(answer.record, answer.catalogue, part, std::nullopt));
    return {{"unit", answer.record.unit.tag},
            {"on", isoText(worth.today)},
            {"carry_on_or_replace", carryOnJson(worth, answer.speaker)},
            {"repairs", worth.repairs},
            {"needed", neededJson(worth.needed)},
            {"left_out", neededJson(worth.leftOut)},
            {"uncosted", uncosted},
            {"notes", saidJson(worth.notes, answer.speaker)},
            {"parts", parts}};
}

/// The choices as rows, then what they come to for the unit.
void writeChoices(const WorthAnswer& said, std::ostream& out)
{
    Answer answer{{{"part", "PART"},
                   {"within_a_year", "1 YEAR"},
                   {"choice", "CHOICE"},
                   {"cost", "COST"},
                   {"gained", "YEARS GAINED"},
                   {"reason", "WHY"}},
                  {},
                  {},
                  "Nothing is fitted that has an outlook on " + isoText(said.worth.today) + "."};
    for (const PartWorth& part : said.worth.parts) {
        bool first = true;
        for (const PartChoice& choice : part.choices) {
            answer.rows.push_back(
                {{"part", first ? partName(said.record, said.catalogue, part.partId, part.zoneId) : ""},
                 {"within_a_year", first ? say(chanceWords(part.chanceInAYear)) : ""},
                 {"choice", wordOf(choice.choice)},
                 {"cost", choice.presentCost ? said.speaker.money({*choice.presentCost, 0}) : "?"},
                 {"gained", showNumber(choice.yearsGained, 1)},
                 {"reason", say(choice.reason, said.speaker)}});
            first = false;
        }
    }
    write(answer, AnswerForm::table, out);
}

/// The choices as rows, then what they come to for the unit.
void writeTable(const WorthAnswer& said, std::ostream& out)
{
    writeChoices(said, out);
    const UnitWorth& worth = said.worth;
    const auto list = [&](const char* heading, const std::vector<NeededFigure>& figures) {
        if (figures.empty())
            return;
        out << '\n' << heading << '\n';
        for (const NeededFigure& figure : figures)
            out << "  " << say(figure.what) << '\n';
    };
    if (worth.answer) {
        out << '\n' << say(worth.answer->said, said.speaker) << '\n';
        if (!worth.answer->turning.empty())
            out << "It would turn with any one of these:\n";
        for (const TurningPoint& point : worth.answer->turning)
            out << "  " << say(turningSentence(point), said.speaker) << '\n';
    }
    list("Needed to hold carrying on against replacing:", worth.needed);
    list("Not given, and left out:", worth.leftOut);
    if (worth.answer && !worth.uncosted.empty()) {
        out << "\nFailures not counted, for want of their costs:\n";
        for (const PartId part : worth.uncosted)
            out << "  " << partName(said.record, said.catalogue, part, std::nullopt) << '\n';
    }
    for (const Sentence& note : worth.notes)
        out << say(note, said.speaker) << '\n';
}

int printWorth(const WorthWords& words, const CommandSurroundings& surroundings)
{
    const PlainEnglish speaker = englishWith(words.currency);
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const UnitRecord record = store->records().unitRecord(unitsFor(*store, words.unit).front().id);
    const UnitWorth worth
        = unitWorth(record, catalogue, costsIn(*store), OutlookModel(catalogue), dayFor(words.on, surroundings.now()));
    const WorthAnswer answer{worth, record, catalogue, speaker};
    if (words.form == AnswerForm::json)
        surroundings.out << unitJson(answer).dump(2) << '\n';
    else
        writeTable(answer, surroundings.out);
    return exitDone;
}

} // namespace

void addWorthCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<WorthWords>();
    CLI::App* command
        = app.add_subcommand("worth", "What can be done about each part, what it costs, and carry on or replace");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json});
    command->get_option("--unit")->required();
    addCurrencyOption(*command, words->currency);
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printWorth(*words, surroundings); };
    });
}

} // namespace padside
