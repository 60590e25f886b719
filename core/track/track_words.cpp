// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_words.h"

#include "core/catalogue/subject.h"

#include <cmath>

namespace padside {

Word horizonWord(std::size_t horizon)
{
    constexpr std::array words{PADSIDE_SAY("half a year"), PADSIDE_SAY("one year"), PADSIDE_SAY("two years"),
                               PADSIDE_SAY("five years")};
    return {words[horizon]};
}

Sentence missSentence(const Miss& miss, const HeldForecast& held, const UnitRecord& record, const Catalogue& catalogue)
{
    const Part* part = findPart(record, miss.partId);
    std::vector<Argument> subject = part != nullptr ? subjectOf(record, catalogue, *part, findZone(record, miss.zoneId))
                                                    : std::vector<Argument>{};
    std::vector<Argument> rest{Chance{miss.chance}, horizonWord(miss.horizon), miss.on, miss.toldOn,
                               std::int64_t{std::lround(yearsBetween(miss.on, miss.toldOn) * 12)}};
    if (miss.spent) {
        return about(std::move(subject),
                     PADSIDE_SAY("{0}{1}, {2}: {3} within {4} was said on {5}; found spent on {6}, after {7} months."),
                     std::move(rest));
    }
    rest.emplace_back(std::int64_t{held.lastGrade ? numeral(*held.lastGrade) : 0});
    rest.emplace_back(Word{held.lastGrade ? std::string(wordOf(*held.lastGrade)) : std::string()});
    return about(std::move(subject),
                 PADSIDE_SAY("{0}{1}, {2}: {3} within {4} was said on {5}; still {8} {9} on {6}, after {7} months."),
                 std::move(rest));
}

} // namespace padside
