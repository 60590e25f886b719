// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/command_line.h"

#include <functional>

namespace CLI { // NOLINT(readability-identifier-naming): the library's own name
class App;
}

namespace padside {

/// What a command does once its words are understood.
using Command = std::function<int(const CommandSurroundings&)>;

/// Each adds its subcommand to `app`; when it is chosen on the command line, it puts what is to be done into `chosen`.
void addDemoCommand(CLI::App& app, Command& chosen);
void addSummaryCommand(CLI::App& app, Command& chosen);
void addFlagsCommand(CLI::App& app, Command& chosen);
void addOutlookCommand(CLI::App& app, Command& chosen);
void addTrackCommand(CLI::App& app, Command& chosen);
void addChecksCommand(CLI::App& app, Command& chosen);
void addLedgerCommand(CLI::App& app, Command& chosen);
void addVerifyCommand(CLI::App& app, Command& chosen);
void addBackupCommand(CLI::App& app, Command& chosen);
void addImportCommand(CLI::App& app, Command& chosen);
void addHistoryCommand(CLI::App& app, Command& chosen);
void addWorthCommand(CLI::App& app, Command& chosen);
void addCalcCommand(CLI::App& app, Command& chosen);

} // namespace padside
