// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"
#include "tests/fuzz/mutation.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using CommandWords = std::vector<std::string>;

constexpr int commandLines
    = 1'500 / shareOfInputs; // each sets up the whole command line: milliseconds, not microseconds

/// One good command line for each formula; none reads or writes a file.
const std::array<CommandWords, 9>& goodFormulas()
{
    static const std::array<CommandWords, 9> formulas{
        CommandWords{"air", "--dry-bulb", "30C", "--rh", "50%", "--altitude", "200m"},
        {"saturation", "--refrigerant", "R-410A", "--gauge", "118psi"},
        {"superheat", "--refrigerant", "R-22", "--gauge", "68psi", "--line", "52F"},
        {"subcooling", "--refrigerant", "R-22", "--gauge", "210psi", "--line", "95F"},
        {"target-superheat", "--wet-bulb", "67F", "--outdoor", "95F"},
        {"corrosivity", "--temperature", "10C", "--rh", "75%", "--so2", "10", "--chloride", "5"},
        {"loss", "--metal", "steel", "--rate", "50um", "--years", "30", "--upper"},
        {"rust-grade", "--percent", "0.7"},
        {"required-wall", "--pressure", "2.21MPa", "--outside-diameter", "127mm", "--stress", "118MPa", "--efficiency",
         "0.85"}};
    return formulas;
}

CommandWords changed(Mutation& mutation, CommandWords words)
{
    for (auto left = 1 + mutation.below(3); left > 0 && !words.empty(); --left) {
        const std::size_t place = mutation.below(words.size());
        switch (mutation.below(5)) {
        case 0:
            words.erase(words.begin() + static_cast<std::ptrdiff_t>(place));
            break;
        case 1:
            std::swap(words[place], words[mutation.below(words.size())]);
            break;
        default:
            words[place] = mutation.of(words[place], 2);
        }
    }
    return words;
}

/// The first key that holds null, which is how JSON writes a number that is none; only a chart that ends before the
/// values asked for says so too.
std::string keyOfNull(const nlohmann::json& value, const std::string& key)
{
    if (value.is_null() && !key.starts_with("chart_"))
        return key;
    if (!value.is_structured())
        return {};
    for (const auto& [inner, item] : value.items()) {
        if (std::string found = keyOfNull(item, inner); !found.empty())
            return found;
    }
    return {};
}

std::string faultOfAnswer(const std::string& out)
{
    if (out.find("Usage:") != std::string::npos)
        return {}; // a "--help" came about
    const auto answer = nlohmann::json::parse(out, nullptr, false);
    if (!answer.is_object() || answer.empty())
        return "no JSON object: " + out;
    const std::string key = keyOfNull(answer, "the answer");
    return key.empty() ? key : key + " is no number";
}

std::string faultOfCommand(const CommandWords& words)
{
    const Said said = run(words);
    if (said.exitCode == exitDone)
        return faultOfAnswer(said.out);
    if (!said.out.empty())
        return "refused, but answered: " + said.out;
    if (said.exitCode < exitDone || said.exitCode > exitFileTrouble || said.err.size() < 10)
        return "refused without a sentence: " + said.err;
    if (said.err.find("inside the program") != std::string::npos)
        return said.err;
    return {};
}

} // namespace

TEST(MalformedInput, AnyFormulaGivesAnAnswerOrSaysWhyNot)
{
    Mutation mutation(4'052'026);
    for (CommandWords words : goodFormulas()) {
        words.insert(words.begin(), "calc");
        ASSERT_EQ(run(words).exitCode, exitDone) << words[1];
        ASSERT_EQ(faultOfCommand(words), "");
    }
    for (int i = 0; i < commandLines; ++i) {
        CommandWords words = changed(mutation, goodFormulas().at(mutation.below(goodFormulas().size())));
        words.insert(words.begin(), "calc");
        std::string line;
        for (const std::string& word : words)
            line += word + " | ";
        ASSERT_EQ(faultOfCommand(words), "") << "input " << i << ": " << line;
    }
}

} // namespace padside::test
