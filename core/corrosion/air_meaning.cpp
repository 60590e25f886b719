// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/air_meaning.h"

namespace padside {

namespace {

Word categoryWord(const Corrosivity& corrosivity, Metal metal)
{
    return Word{std::string(wordOf(corrosivity.of(metal).category))};
}

Sentence extrapolated(const std::vector<AirInput>& outside)
{
    std::string pattern = "{0}";
    std::vector<Argument> named;
    for (const AirInput input : outside) {
        if (!named.empty())
            pattern += ", {" + std::to_string(named.size()) + "}";
        named.emplace_back(Word{std::string(wordOf(input))});
    }
    return {pattern, named};
}

} // namespace

std::vector<Sentence> airMeaning(const Corrosivity& corrosivity)
{
    std::vector<Sentence> meaning{
        {PADSIDE_SAY("In this air, by ISO 9223: steel {0}, zinc {1}, copper {2}, aluminium {3}. Bare steel loses about "
                     "{4} µm in its first year."),
         {categoryWord(corrosivity, Metal::steel), categoryWord(corrosivity, Metal::zinc),
          categoryWord(corrosivity, Metal::copper), categoryWord(corrosivity, Metal::aluminium),
          Number{corrosivity.of(Metal::steel).loss, 0}}}};
    if (!corrosivity.isExtrapolated()) {
        meaning.push_back({PADSIDE_SAY("All values lie within the range the standard was fitted to."), {}});
        return meaning;
    }
    meaning.push_back({PADSIDE_SAY("Extrapolated, a rough guide only: outside the range the standard was fitted to lie "
                                   "these values:"),
                       {}});
    meaning.push_back(extrapolated(corrosivity.outside));
    return meaning;
}

} // namespace padside
