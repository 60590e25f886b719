// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/quantity/chance_words.h"
#include "core/review/unit_forecast.h"
#include "core/store/record_reader.h"
#include "core/store/store.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

nlohmann::ordered_json dayOrNull(const std::optional<Date>& day)
{
    return day ? nlohmann::ordered_json(isoText(*day)) : nlohmann::ordered_json(nullptr);
}

nlohmann::ordered_json rowOf(const LeadingOutlook& zone, const UnitRecord& record, const Catalogue& catalogue)
{
    const auto chance = [&](Horizon horizon) { return zone.spent[static_cast<std::size_t>(horizon)].chance; };
    return {{"unit", record.unit.tag},
            {"part", partName(record, catalogue, zone.partId, zone.zoneId)},
            {"zone", zoneName(record, zone.zoneId)},
            {"within_a_year", say(chanceWords(chance(Horizon::oneYear)))},
            {"within_five_years", say(chanceWords(chance(Horizon::fiveYears)))},
            {"sentence", say(zone.when)},
            {"because", say(zone.because.front())},
            {"led_by", std::string(codeOf(zone.by))},
            {"chance_today", zone.chanceToday},
            {"chance_6_months", chance(Horizon::nextVisit)},
            {"chance_1_year", chance(Horizon::oneYear)},
            {"chance_2_years", chance(Horizon::twoYears)},
            {"chance_5_years", chance(Horizon::fiveYears)},
            {"early", dayOrNull(zone.dates.early)},
            {"middle", dayOrNull(zone.dates.middle)},
            {"late", dayOrNull(zone.dates.late)}};
}

int printOutlook(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const OutlookModel model(catalogue);
    const Date day = dayFor(words.on, surroundings.now());
    Answer answer{{{"unit", "UNIT"},
                   {"part", "PART"},
                   {"zone", "ZONE"},
                   {"within_a_year", "1 YEAR"},
                   {"within_five_years", "5 YEARS"},
                   {"sentence", "SPENT"}},
                  {"unit", "part", "zone", "chance_today", "chance_6_months", "chance_1_year", "chance_2_years",
                   "chance_5_years", "early", "middle", "late", "led_by", "sentence", "because"},
                  {},
                  "Nothing is fitted that has an outlook on " + isoText(day) + "."};
    for (const Unit& unit : unitsFor(*store, words.unit)) {
        const UnitRecord record = store->records().unitRecord(unit.id);
        const UnitForecast forecast = unitForecast(record, catalogue, model, day);
        for (const LeadingOutlook& zone : forecast.leading)
            answer.rows.push_back(rowOf(zone, record, catalogue));
    }
    write(answer, words.form, surroundings.out);
    return exitDone;
}

} // namespace

void addOutlookCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command
        = app.add_subcommand("outlook", "What is likely to be spent and when, a range of dates for each zone");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv});
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printOutlook(*words, surroundings); };
    });
}

} // namespace padside
