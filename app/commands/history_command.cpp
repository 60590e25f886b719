// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "ui/models/worth_figures.h"
#include "ui/paper/owner_history.h"
#include "ui/paper/visit_summary.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <map>
#include <memory>
#include <ostream>

namespace padside {

namespace {

struct HistoryWords
{
    std::string file;
    std::string unit;
    std::string on;
    std::string out;
    std::string contractor;
    PaperSize size = PaperSize::a4;
};

int writeHistory(const HistoryWords& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const auto model = std::make_shared<const OutlookModel>(catalogue);
    const Date day = dayFor(words.on, surroundings.now());
    const UnitRecord record = store->records().unitRecord(unitsFor(*store, words.unit).front().id);
    const auto photoOf = [&store, &record](PhotoId id) {
        const auto photo = std::ranges::find(record.photos, id, &Photo::id);
        return photo == record.photos.end() ? QImage() : readPhotoForPaper(store->photos().path(*photo));
    };
    const OwnerHistoryInput input{record,
                                  review(record, catalogue, *model, day),
                                  unitForecast(record, catalogue, *model, day),
                                  unitWorth(record, catalogue, costsIn(*store), *model, day),
                                  catalogue,
                                  plainEnglish(),
                                  QString::fromStdString(words.contractor),
                                  words.size,
                                  day,
                                  model};
    if (const auto written = writePdf(layOwnerHistory(input), photoOf, QString::fromStdString(words.out)); !written)
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
    command->add_option("file", words->file, "the record file")->required()->type_name("FILE");
    command->add_option("--unit", words->unit, "the unit's tag")->required()->type_name("TAG");
    command->add_option("--on", words->on, "as of this day (default: today)")->type_name("DATE");
    command->add_option("--out", words->out, "the PDF to write")->required()->type_name("PDF");
    command->add_option("--contractor", words->contractor, "the name at the head of the page")->type_name("NAME");
    command->add_option("--paper", words->size, "paper size")
        ->transform(CLI::CheckedTransformer(
            std::map<std::string, PaperSize>{{"a4", PaperSize::a4}, {"letter", PaperSize::letter}}))
        ->type_name("a4|letter")
        ->default_str("a4");
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return writeHistory(*words, surroundings); };
    });
}

} // namespace padside
