// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "app/commands/paper_words.h"
#include "core/store/record_reader.h"
#include "ui/models/worth_figures.h"
#include "ui/paper/owner_history.h"
#include "ui/paper/visit_summary.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

namespace padside {

namespace {

struct HistoryWords : PaperWords
{
    std::string on;
    std::string currency;
};

int writeHistory(const HistoryWords& words, const CommandSurroundings& surroundings)
{
    const PlainEnglish speaker = englishWith(words.currency);
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const auto model = std::make_shared<const OutlookModel>(catalogue);
    const Date day = dayFor(words.on, surroundings.now());
    const UnitRecord record = store->records().unitRecord(unitsFor(*store, words.unit).front().id);
    const KnownUnit known = knownUnit(record, catalogue, *model, day);
    const OwnerHistoryInput input{record,
                                  review(known, catalogue),
                                  unitForecast(known, catalogue),
                                  unitWorth(known, catalogue, costsIn(*store), *model),
                                  catalogue,
                                  speaker,
                                  QString::fromStdString(words.contractor),
                                  words.size,
                                  day,
                                  model};
    if (const auto written
        = writePdf(layOwnerHistory(input), photosFor(*store, record), QString::fromStdString(words.out));
        !written)
        throw StoreError(written.error());
    surroundings.out << "Wrote " << words.out << ": history of " << record.unit.tag << " up to " << isoText(day)
                     << ".\n";
    return exitDone;
}

} // namespace

void addHistoryCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<HistoryWords>();
    CLI::App* command = app.add_subcommand("history", "Write a unit's history for its owner as PDF");
    addPaperWords(*command, *words);
    command->add_option("--on", words->on, "as of this day (default: today)")->type_name("DATE");
    addCurrencyOption(*command, words->currency);
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return writeHistory(*words, surroundings); };
    });
}

} // namespace padside
