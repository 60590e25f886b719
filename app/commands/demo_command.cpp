// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "app/progress_line.h"
#include "core/store/file_claim.h"
#include "core/store/store.h"
#include "sample-db/sample.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

namespace padside {

namespace {

struct DemoWords
{
    std::string file;
    SampleOptions options;
    bool withoutPhotographs = false;
};

int makeDemo(DemoWords words, const CommandSurroundings& surroundings)
{
    words.options.photographs = !words.withoutPhotographs;
    const QString file = QString::fromStdString(words.file);
    const FileClaim claim = FileClaim::makeOrThrow(file); // no window opens it half made
    const auto store = Store::create(file);
    {
        ProgressLine progress(surroundings, "Making " + words.file);
        buildSample(*store, catalogueFor(*store, surroundings), words.options, progress.teller());
    }
    surroundings.out << "Made " << words.file << ": " << words.options.units << " units, " << words.options.years
                     << " years, all invented.\n";
    return exitDone;
}

} // namespace

void addDemoCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<DemoWords>();
    CLI::App* command = app.add_subcommand("demo", "Make a sample file: an invented harbour town and its contractor");
    command->add_option("--out", words->file, "the new file; must not exist")->required()->type_name("FILE");
    command->add_option("--units", words->options.units, "how many units")
        ->check(CLI::Range(1, 20000))
        ->capture_default_str();
    command->add_option("--years", words->options.years, "years of visits")
        ->check(CLI::Range(1, 60))
        ->capture_default_str();
    command->add_option("--seed", words->options.seed, "the same seed makes the same file")->capture_default_str();
    command->add_flag("--no-photos", words->withoutPhotographs, "leave the drawn photographs out");
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return makeDemo(*words, surroundings); };
    });
}

} // namespace padside
