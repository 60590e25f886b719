// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/range.h"

namespace padside {

namespace {

/// "{0} {1}, asked for …": the name, the value, then the bounds that there are.
Sentence withinSentence(const Word& name, const Amount& value, const Verdict& verdict)
{
    if (verdict.lowest && verdict.highest)
        return {PADSIDE_SAY("{0} {1}; asked for {2} to {3}."), {name, value, *verdict.lowest, *verdict.highest}};
    if (verdict.lowest)
        return {PADSIDE_SAY("{0} {1}; asked for {2} or more."), {name, value, *verdict.lowest}};
    if (verdict.highest)
        return {PADSIDE_SAY("{0} {1}; asked for {2} or less."), {name, value, *verdict.highest}};
    return {PADSIDE_SAY("{0} {1}."), {name, value}};
}

} // namespace

Verdict heldAgainst(double value, QuantityKind kind, const Range& range, const Told& told)
{
    const auto amount = [kind](const std::optional<double>& si) {
        return si ? std::optional(Amount{*si, kind}) : std::nullopt;
    };
    Verdict verdict;
    verdict.code = told.code;
    verdict.from = told.from;
    verdict.partId = told.partId;
    verdict.source = told.source;
    verdict.value = Amount{value, kind};
    verdict.lowest = amount(range.lowest);
    verdict.highest = amount(range.highest);
    const Word name{told.name};
    if (range.lowest && value < *range.lowest) {
        verdict.side = Side::below;
        verdict.judgement = range.farLowest && value >= *range.farLowest ? Judgement::watch : Judgement::outside;
        verdict.sentence
            = {PADSIDE_SAY("{0} {1}, below {2}: {3}"), {name, *verdict.value, *verdict.lowest, Word{told.below}}};
    } else if (range.highest && value > *range.highest) {
        verdict.side = Side::above;
        verdict.judgement = range.farHighest && value <= *range.farHighest ? Judgement::watch : Judgement::outside;
        verdict.sentence
            = {PADSIDE_SAY("{0} {1}, above {2}: {3}"), {name, *verdict.value, *verdict.highest, Word{told.above}}};
    } else {
        verdict.side = Side::inside;
        verdict.judgement = Judgement::within;
        verdict.sentence = withinSentence(name, *verdict.value, verdict);
    }
    return verdict;
}

Verdict noAnswer(const Told& told, Sentence why)
{
    Verdict verdict;
    verdict.code = told.code;
    verdict.from = told.from;
    verdict.partId = told.partId;
    verdict.judgement = Judgement::unjudged;
    verdict.sentence = std::move(why);
    return verdict;
}

Verdict question(std::string code, std::vector<std::string> from, Sentence sentence)
{
    Verdict verdict;
    verdict.code = std::move(code);
    verdict.from = std::move(from);
    verdict.judgement = Judgement::doubtful;
    verdict.sentence = std::move(sentence);
    return verdict;
}

} // namespace padside
