// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/topics.h"
#include "core/worth/compound_interest.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

struct AnnuityWords
{
    std::string rate;
    std::string years;
};

} // namespace

void addWorthTopics(CLI::App& calc, Command& chosen)
{
    const auto words = std::make_shared<AnnuityWords>();
    CLI::App* topic = addTopic(
        calc, chosen, "annuity", "Compound-interest factors of a yearly payment (and of a single one)", [words] {
            const double rate = typedSi("--rate", words->rate, QuantityKind::ratio);
            const InterestFactors factors = orThrow(interestFactors(rate, typedNumber("--years", words->years)));
            return nlohmann::ordered_json{{"capital_recovery", factors.capitalRecovery},
                                          {"present_worth", factors.seriesPresentWorth},
                                          {"compound_amount", factors.seriesCompoundAmount},
                                          {"single_present_worth", factors.singlePresentWorth},
                                          {"single_compound_amount", factors.singleCompoundAmount}};
        });
    topic->add_option("--rate", words->rate, "interest of a year, like 8%")->required()->type_name("RATE");
    topic->add_option("--years", words->years, "how many years it is paid, like 10")->required()->type_name("YEARS");
}

} // namespace padside
