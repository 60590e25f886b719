// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/commands.h"
#include "core/store/store.h"
#include "core/store/verify.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

namespace padside {

namespace {

int verifyFile(const std::string& file, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(file), Store::Access::readOnly);
    const VerifyReport report = verify(*store);
    for (const Sentence& complaint : report.complaints)
        surroundings.out << say(complaint) << '\n';
    surroundings.out << report.sites << " sites, " << report.units << " units, " << report.visits << " visits, "
                     << report.findings << " findings, " << report.readings << " readings, " << report.photos
                     << " photos: " << (report.clean() ? "all in order." : "not in order, see above.") << '\n';
    return report.clean() ? exitDone : exitDataSayNo;
}

} // namespace

void addVerifyCommand(CLI::App& app, Command& chosen)
{
    const auto file = std::make_shared<std::string>();
    CLI::App* command = app.add_subcommand("verify", "Check a record file and its photographs; changes nothing");
    command->add_option("file", *file, "the record file")->required()->type_name("FILE");
    command->callback([file, &chosen] {
        chosen = [file](const CommandSurroundings& surroundings) { return verifyFile(*file, surroundings); };
    });
}

} // namespace padside
