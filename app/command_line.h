// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/date.h"
#include "core/quantity/problem.h"

#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What the command line answers the shell.
enum ExitCode : int {
    exitDone = 0,
    exitDataSayNo = 1, ///< asked and answered: no (a file with complaints, a tag that is not there)
    exitWrongUse = 2, ///< what was typed can't be meant
    exitFileTrouble = 3, ///< can't read or write
};

/// Where a command writes and what time it is; passed in so that tests can hold them.
struct CommandSurroundings
{
    std::ostream& out;
    std::ostream& err;
    std::function<Instant()> now;
    std::function<void()> prepare = [] {}; ///< called once before a command is carried out; not for --help
    bool errIsTerminal = false; ///< a person is watching: long commands show how far they are
};

/// The file to open in the window when no command was given; empty: the one used last.
struct WindowRequest
{
    std::string file;
};

/// Either an exit code (a command was carried out) or the wish for a window.
struct CommandOutcome
{
    int exitCode = exitDone;
    std::optional<WindowRequest> window;
};

/// Carries out one command line (without the program's name). Never throws: every failure is one sentence on `err`.
/// No display is needed, and --help and --version need nothing at all.
[[nodiscard]] CommandOutcome runCommandLine(const std::vector<std::string>& arguments,
                                            const CommandSurroundings& surroundings);

/// The exit code for a problem of this kind.
[[nodiscard]] ExitCode exitCodeOf(ProblemKind kind);

} // namespace padside
