// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "app/progress_line.h"
#include "core/exchange/text_file.h"
#include "core/exchange/unit_plan.h"
#include "core/store/file_claim.h"
#include "core/store/site_book.h"
#include "core/store/store.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <memory>
#include <ostream>
#include <random>

namespace padside {

namespace {

struct ImportWords
{
    std::string file;
    std::string units;
    std::string site;
    bool dryRun = false;
};

template <typename T> T valueOrThrow(Result<T> result)
{
    if (!result)
        throw StoreError(result.error());
    return std::move(*result);
}

CsvSalvage listIn(const std::string& path)
{
    const std::string text = valueOrThrow(readTextFile(path));
    Result<CsvSalvage> list = salvageCsv(text, std::filesystem::path(path).filename().string());
    if (!list) // the file is there, but it is no list: that is the data saying no
        throw StoreError(Problem{ProblemKind::refused, list.error().what});
    return std::move(*list);
}

void sayPlan(const UnitPlan& plan, std::ostream& out, std::ostream& err)
{
    for (const PlannedUnit& row : plan.rows) {
        for (const Sentence& problem : row.problems)
            err << say(problem) << '\n';
        if (row.good())
            out << row.unit.tag << " at " << row.site << (row.newSite ? " (a new site)" : "") << '\n';
    }
}

int importUnits(const ImportWords& words, const CommandSurroundings& surroundings)
{
    const CsvSalvage list = listIn(words.units);
    const QString file = QString::fromStdString(words.file);
    std::optional<FileClaim> claim;
    if (!words.dryRun)
        claim = FileClaim::makeOrThrow(file); // a window that has it open would show an old list
    const auto store = Store::open(file, words.dryRun ? Store::Access::readOnly : Store::Access::readWrite);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const UnitPlanBasis basis{catalogue, store->sites().sites(), store->sites().tags(), words.site,
                              localDate(surroundings.now())};
    const UnitPlan plan = planUnits(list, recognisedColumns(list.table.columns), basis, [](double) { return true; });
    sayPlan(plan, surroundings.out, surroundings.err);
    if (!words.dryRun && plan.goodCount() > 0) {
        const std::int64_t moment = surroundings.now().utc.time_since_epoch().count() * 1000;
        IdMaker ids([moment] { return moment; }, std::random_device{}());
        const NewRecords made = newRecords(plan, basis, ids);
        ProgressLine progress(surroundings, "Adding units to " + words.file);
        if (!store->sites().addAll(made.sites, made.units, progress.teller()))
            return exitDataSayNo;
    }
    surroundings.out << plan.goodCount() << (words.dryRun ? " units would be added, " : " units added, ")
                     << plan.badCount() << " rows refused.\n";
    return plan.badCount() == 0 ? exitDone : exitDataSayNo;
}

} // namespace

void addImportCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<ImportWords>();
    CLI::App* command = app.add_subcommand("import", "Add the units of a list (CSV) to a record file");
    command->add_option("file", words->file, "the record file")->required()->type_name("FILE");
    command
        ->add_option("--units", words->units,
                     "the list; its first line names the columns: site, tag, kind, maker, model, serial, place, "
                     "refrigerant, metering, installed, note")
        ->required()
        ->type_name("CSV");
    command->add_option("--site", words->site, "the site of rows that name none")->type_name("NAME");
    command->add_flag("--dry-run", words->dryRun, "only say what would be done");
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return importUnits(*words, surroundings); };
    });
}

} // namespace padside
