// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

#include <array>

namespace padside {

namespace {

constexpr double freezingK = 273.15;

struct Surface
{
    const char* reading;
    const char* name;
};

constexpr std::array surfaces{Surface{"suction-line-temperature", PADSIDE_SAY("The suction line")},
                              Surface{"shell-temperature", PADSIDE_SAY("The compressor shell")}};

} // namespace

void judgeSweating(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto dewPoint = measured.dewPointK();
    if (!dewPoint)
        return;
    for (const Surface& surface : surfaces) {
        const Taken* taken = measured.find(surface.reading);
        if (taken == nullptr)
            continue;
        const double margin = taken->si - *dewPoint;
        Verdict verdict;
        verdict.code = "sweating";
        verdict.from = {surface.reading};
        verdict.partId = taken->partId;
        verdict.value = Amount{margin, QuantityKind::temperatureDifference};
        verdict.lowest = Amount{0, QuantityKind::temperatureDifference};
        verdict.side = margin < 0 ? Side::below : Side::inside;
        verdict.judgement = margin < 0 ? Judgement::watch : Judgement::within;
        verdict.source = PADSIDE_SAY("dew point: ASHRAE Handbook, Fundamentals, chapter 1");
        const Amount distance{std::abs(margin), QuantityKind::temperatureDifference};
        const Amount dew{*dewPoint, QuantityKind::temperature};
        if (margin >= 0)
            verdict.sentence = {PADSIDE_SAY("{0} is {1} above the dew point of {2}: bare metal stays dry."),
                                {Word{surface.name}, distance, dew}};
        else if (taken->si < freezingK)
            verdict.sentence = {PADSIDE_SAY("{0} is {1} below the dew point of {2} and below freezing: it frosts."),
                                {Word{surface.name}, distance, dew}};
        else
            verdict.sentence = {PADSIDE_SAY("{0} is {1} below the dew point of {2}: bare metal is wet."),
                                {Word{surface.name}, distance, dew}};
        verdicts.push_back(std::move(verdict));
    }
}

} // namespace padside
