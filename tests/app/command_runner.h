// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/command_line.h"

#include <sstream>
#include <string>
#include <vector>

namespace padside::test {

/// What a command line answered.
struct Said
{
    int exitCode = 0;
    std::string out;
    std::string err;
    bool wantsWindow = false;
};

/// Runs a command line at noon UTC on `today`.
[[nodiscard]] inline Said run(const std::vector<std::string>& arguments, const std::string& today = "2026-11-25")
{
    std::ostringstream out;
    std::ostringstream err;
    const Instant noon{*parseDate(today) + std::chrono::hours(12), std::chrono::minutes(0)};
    const CommandOutcome outcome = runCommandLine(arguments, {out, err, [noon] { return noon; }});
    return {outcome.exitCode, out.str(), err.str(), outcome.window.has_value()};
}

} // namespace padside::test
