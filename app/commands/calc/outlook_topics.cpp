// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/topics.h"
#include "core/exchange/belief_file.h"
#include "core/exchange/panel_file.h"
#include "core/exchange/text_file.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

nlohmann::ordered_json yearsOrNull(const std::optional<double>& years)
{
    return years ? nlohmann::ordered_json(*years) : nlohmann::ordered_json(nullptr);
}

/// belief, pace_mean, log_likelihood, chance_spent (one for each horizon) and exposure_to_spent, which is null where it
/// never gets so likely.
nlohmann::ordered_json beliefAnswer(const std::string& file)
{
    const BeliefQuestion question = orThrow(readBeliefFile(orThrow(readTextFile(file)), file));
    const BeliefAnswer answer = orThrow(answerBelief(question));
    return {{"belief", answer.belief.grades()},
            {"pace_mean", answer.belief.meanPace()},
            {"log_likelihood", answer.belief.logLikelihood()},
            {"chance_spent", answer.chanceSpent},
            {"exposure_to_spent",
             {{"p10", yearsOrNull(answer.toSpent.early)},
              {"p50", yearsOrNull(answer.toSpent.middle)},
              {"p90", yearsOrNull(answer.toSpent.late)}}}};
}

/// Why a rate is null, or 0 without an error.
std::string noteOn(std::size_t rate, RateKnowledge knowledge)
{
    const std::string grade = std::to_string(rate + 1);
    if (knowledge == RateKnowledge::neverLeft)
        return "Nothing was seen to leave grade " + grade + ": the likeliest rate is 0.";
    if (knowledge == RateKnowledge::neverEntered)
        return "Nothing says how long grade " + grade + " lasts.";
    return "Grade " + grade + " was passed through without being seen: no rate is too fast.";
}

/// q, standard_error and minus2loglik; null where the grades seen say nothing, and then a note says why.
nlohmann::ordered_json ratesAnswer(const std::string& file)
{
    const auto steps = orThrow(readPanelFile(orThrow(readTextFile(file)), file));
    const PanelFit fit = orThrow(fitPanel(steps));
    auto rates = nlohmann::ordered_json::array();
    auto errors = nlohmann::ordered_json::array();
    auto notes = nlohmann::ordered_json::array();
    for (std::size_t k = 0; k < fit.rates.size(); ++k) {
        const FittedRate& rate = fit.rates[k];
        const bool fitted = rate.knowledge == RateKnowledge::fitted;
        const bool known = fitted || rate.knowledge == RateKnowledge::neverLeft;
        rates.push_back(known ? nlohmann::ordered_json(rate.perYear) : nullptr);
        errors.push_back(fitted && rate.standardError > 0 ? nlohmann::ordered_json(rate.standardError) : nullptr);
        if (!fitted)
            notes.push_back(noteOn(k, rate.knowledge));
    }
    nlohmann::ordered_json answer{{"q", rates},
                                  {"standard_error", errors},
                                  {"minus2loglik", fit.minusTwoLogLikelihood},
                                  {"steps", fit.steps},
                                  {"rounds", fit.rounds}};
    if (!notes.empty())
        answer["notes"] = notes;
    return answer;
}

} // namespace

void addOutlookTopics(CLI::App& calc, Command& chosen)
{
    const auto question = std::make_shared<std::string>();
    CLI::App* belief = addTopic(calc, chosen, "belief", "Belief in the five grades after what was seen, and what comes",
                                [question] { return beliefAnswer(*question); });
    belief->add_option("file", *question, "rates, start, observations and horizons, as JSON")
        ->required()
        ->type_name("FILE.json");
    const auto panel = std::make_shared<std::string>();
    CLI::App* rates = addTopic(calc, chosen, "rates",
                               "Rates from grade to grade, learned from units seen now and then (columns unit, years, "
                               "grade)",
                               [panel] { return ratesAnswer(*panel); });
    rates->add_option("file", *panel, "comma-separated values with a line of column names")
        ->required()
        ->type_name("FILE.csv");
}

} // namespace padside
