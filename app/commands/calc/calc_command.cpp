// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/topics.h"
#include "core/quantity/measure.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace padside {

namespace {

/// The value, or its problem with the option's name before it.
template <typename T> T ofOption(const std::string& option, Result<T> value)
{
    if (value)
        return *std::move(value);
    throw StoreError(Problem{value.error().kind, Sentence{"{0}: {1}", {option, say(value.error().what)}}});
}

} // namespace

CLI::App* addTopic(CLI::App& calc, Command& chosen, const std::string& name, const std::string& about,
                   CalcAnswer answer)
{
    CLI::App* topic = calc.add_subcommand(name, about);
    topic->callback([answer = std::move(answer), &chosen] {
        chosen = [answer](const CommandSurroundings& surroundings) {
            surroundings.out << answer().dump(2) << '\n';
            return exitDone;
        };
    });
    return topic;
}

double typedSi(const std::string& option, const std::string& text, QuantityKind kind)
{
    return ofOption(option, parseMeasure(text, kind)).si;
}

double typedNumber(const std::string& option, const std::string& text)
{
    return ofOption(option, parseNumber(text));
}

double inCelsius(double temperatureK)
{
    return fromSi(temperatureK, *unitByCode("degC"));
}

void addCalcCommand(CLI::App& app, Command& chosen)
{
    CLI::App* calc = app.add_subcommand("calc", "One formula, for checking a number by hand; answers JSON");
    calc->require_subcommand(1);
    addAirTopics(*calc, chosen);
    addCorrosionTopics(*calc, chosen);
    addRefrigerantTopics(*calc, chosen);
    addWorthTopics(*calc, chosen);
    addSeriesTopics(*calc, chosen);
    addOutlookTopics(*calc, chosen);
}

} // namespace padside
