// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "app/progress_line.h"
#include "core/store/backup.h"
#include "core/store/store.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

namespace padside {

namespace {

struct BackupWords
{
    std::string file;
    std::string target;
};

int backUp(const BackupWords& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    {
        ProgressLine progress(surroundings, "Backing up to " + words.target);
        backup(*store, QString::fromStdString(words.target), progress.teller());
    }
    surroundings.out << "Backed up to " << words.target << ", photographs beside it.\n";
    return exitDone;
}

} // namespace

void addBackupCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<BackupWords>();
    CLI::App* command
        = app.add_subcommand("backup", "Copy a record file and its photographs, checked, while it may be in use");
    command->add_option("file", words->file, "the record file")->required()->type_name("FILE");
    command->add_option("--to", words->target, "the new file; must not exist")->required()->type_name("FILE2");
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return backUp(*words, surroundings); };
    });
}

} // namespace padside
