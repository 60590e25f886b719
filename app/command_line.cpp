// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/command_line.h"

#include "app/commands/commands.h"
#include "app/version.h"
#include "core/store/store_error.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <exception>
#include <memory>
#include <ostream>

namespace padside {

namespace {

constexpr const char* aboutPadside = "Padside keeps the record of ageing outdoor air-conditioning and heat-pump units "
                                     "and says what got worse, what to look "
                                     "at next and when.\nWithout a command it opens the window.";

constexpr const char* exitCodes
    = "Exit codes: 0 done, 1 the data say no, 2 wrong use, 3 can't read or write.\n"
      "Forecasts and limits are advice: local codes, the maker's instructions and a licensed technician come first.";

int carriedOut(const Command& command, const CommandSurroundings& surroundings)
{
    try {
        surroundings.prepare();
        return command(surroundings);
    } catch (const StoreError& error) {
        surroundings.err << "padside: " << say(error.problem().what) << '\n';
        return exitCodeOf(error.problem().kind);
    } catch (const std::exception& error) {
        surroundings.err << "padside: something went wrong inside the program (" << error.what()
                         << "). Nothing was written after that point.\n";
        return exitFileTrouble;
    }
}

} // namespace

ExitCode exitCodeOf(ProblemKind kind)
{
    switch (kind) {
    case ProblemKind::badInput:
        return exitWrongUse;
    case ProblemKind::cannotRead:
    case ProblemKind::cannotWrite:
        return exitFileTrouble;
    case ProblemKind::refused:
        return exitDataSayNo;
    }
    return exitFileTrouble;
}

CommandOutcome runCommandLine(const std::vector<std::string>& arguments, const CommandSurroundings& surroundings)
{
    // CLI11 takes an empty word for the name of a group of options that has none, and then never ends.
    if (std::ranges::count(arguments, std::string()) > 0) {
        surroundings.err << "padside: one of the words is empty. Leave it out, or write what belongs there.\n";
        return {exitWrongUse, std::nullopt};
    }
    CLI::App app(aboutPadside, "padside");
    app.footer(exitCodes);
    app.set_version_flag("--version", std::string("padside ") + programVersion);
    app.require_subcommand(0, 1);
    WindowRequest window;
    app.add_option("file", window.file, "the record file to open in the window")->type_name("FILE");

    Command chosen;
    addDemoCommand(app, chosen);
    addSummaryCommand(app, chosen);
    addFlagsCommand(app, chosen);
    addOutlookCommand(app, chosen);
    addTrackCommand(app, chosen);
    addChecksCommand(app, chosen);
    addLedgerCommand(app, chosen);
    addVerifyCommand(app, chosen);
    addBackupCommand(app, chosen);
    addImportCommand(app, chosen);
    addHistoryCommand(app, chosen);
    addWorthCommand(app, chosen);
    addCalcCommand(app, chosen);

    try {
        app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend())); // CLI11 takes them last first
    } catch (const CLI::Success& wish) { // --help, --version
        app.exit(wish, surroundings.out, surroundings.err);
        return {exitDone, std::nullopt};
    } catch (const CLI::ParseError& error) {
        app.exit(error, surroundings.out, surroundings.err);
        return {exitWrongUse, std::nullopt};
    }
    if (!chosen)
        return {exitDone, window};
    return {carriedOut(chosen, surroundings), std::nullopt};
}

} // namespace padside
