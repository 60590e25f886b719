// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/suspicion.h"

#include "core/verdict/suspicion_patterns.h"

#include <algorithm>

namespace padside {

namespace {

constexpr double leastWeight = 1.5; // less than one and a half readings' worth is no pattern
constexpr int fewestReadings = 2;

/// A valve holds superheat while it can: it tells less there.
constexpr double superheatShareWithValve = 0.5;

const Verdict* usable(std::span<const Verdict> verdicts, std::string_view code)
{
    for (const Verdict& verdict : verdicts) {
        if (verdict.code == code && verdict.side != Side::unknown
            && (verdict.judgement == Judgement::within || verdict.judgement == Judgement::watch
                || verdict.judgement == Judgement::outside))
            return &verdict;
    }
    return nullptr;
}

bool hasValve(const Unit& unit)
{
    return unit.metering == Metering::thermostaticValve || unit.metering == Metering::electronicValve;
}

struct Weighed
{
    Suspicion suspicion;
    int readingsFor = 0;
};

Weighed weigh(const SuspicionPattern& pattern, std::span<const Verdict> verdicts, const Unit& unit)
{
    Weighed result;
    result.suspicion.code = pattern.code;
    result.suspicion.name = pattern.name;
    result.suspicion.decides = Sentence{pattern.decides, {}};
    std::vector<std::pair<double, Sentence>> speaksFor;
    for (const Expectation& expected : pattern.expectations) {
        const Verdict* verdict = usable(verdicts, expected.verdict);
        if (verdict == nullptr)
            continue;
        const double weight = expected.verdict == "superheat" && hasValve(unit)
            ? expected.weight * superheatShareWithValve
            : expected.weight;
        if (verdict->side == expected.side) {
            speaksFor.emplace_back(weight, verdict->sentence);
            result.suspicion.weight += weight;
            result.readingsFor += verdict->side == Side::inside ? 0 : 1; // being right proves no fault
        } else if (!(verdict->side == Side::inside && expected.orInside)) {
            result.suspicion.speaksAgainst.push_back(verdict->sentence);
            result.suspicion.weight -= verdict->side == Side::inside ? weight / 2 : weight;
        }
    }
    std::ranges::stable_sort(speaksFor, std::greater{}, &std::pair<double, Sentence>::first);
    for (auto& [weight, sentence] : speaksFor)
        result.suspicion.speaksFor.push_back(std::move(sentence));
    return result;
}

} // namespace

std::vector<Suspicion> suspicionsFrom(std::span<const Verdict> verdicts, const Unit& unit)
{
    std::vector<Suspicion> suspicions;
    for (const SuspicionPattern& pattern : suspicionPatterns()) {
        Weighed weighed = weigh(pattern, verdicts, unit);
        // One reading far off and the others right (a matted coil) is a pattern too.
        const bool enough = weighed.readingsFor >= fewestReadings
            || (weighed.readingsFor == 1 && weighed.suspicion.speaksFor.size() >= fewestReadings);
        if (enough && weighed.suspicion.weight >= leastWeight)
            suspicions.push_back(std::move(weighed.suspicion));
    }
    std::ranges::stable_sort(suspicions, std::greater{}, &Suspicion::weight);
    return suspicions;
}

} // namespace padside
