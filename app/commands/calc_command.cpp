// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc_topics.h"
#include "app/commands/commands.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <ostream>

namespace padside {

namespace {

/// A topic that reads one file and answers one JSON object.
void addFileTopic(CLI::App& calc, const std::string& name, const std::string& about, Command& chosen,
                  nlohmann::ordered_json (*answerOf)(const std::string& file))
{
    const auto file = std::make_shared<std::string>();
    CLI::App* topic = calc.add_subcommand(name, about);
    topic->add_option("file", *file, "comma-separated values with a line of column names")
        ->required()
        ->type_name("FILE.csv");
    topic->callback([file, answerOf, &chosen] {
        chosen = [file, answerOf](const CommandSurroundings& surroundings) {
            surroundings.out << answerOf(*file).dump(2) << '\n';
            return exitDone;
        };
    });
}

} // namespace

void addCalcCommand(CLI::App& app, Command& chosen)
{
    CLI::App* calc = app.add_subcommand("calc", "One formula, for checking a number by hand; answers JSON");
    calc->require_subcommand(1);
    addFileTopic(*calc, "trend", "Mann-Kendall test and Theil-Sen slope of a series (columns t_days, y)", chosen,
                 &trendAnswer);
    addFileTopic(*calc, "trips", "Fewest visits that meet windows of whole days (columns id, unit, lo, hi)", chosen,
                 &tripsAnswer);
}

} // namespace padside
