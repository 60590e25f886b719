// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/chance_words.h"

#include <cmath>

namespace padside {

namespace {

constexpr double sure = 1e-9; ///< closer to 0 or 1 is only how far sums of many chances are off
constexpr double least = 0.1; ///< per cent, as are those below
constexpr double fineBelow = 9.95; ///< from there on one decimal would show 10.0
constexpr double most = 99;

bool isWhole(double percent)
{
    return std::abs(percent - std::round(percent)) < 100 * sure;
}

} // namespace

Sentence chanceWords(const Chance& told)
{
    const double chance = told.share;
    const double percent = 100 * chance;
    const auto plainly = [](double value, int decimals) {
        return Sentence{PADSIDE_SAY("{0} %"), {Number{value, decimals}}};
    };
    if (chance <= 0)
        return plainly(0, 0);
    if (chance > 1 - sure)
        return plainly(100, 0);
    if (percent < least)
        return {PADSIDE_SAY("under {0} %"), {Number{least, 1}}};
    if (percent > most && !isWhole(percent))
        return {PADSIDE_SAY("over {0} %"), {Number{most, 0}}};
    return plainly(percent, (told.fine || percent < fineBelow) && !isWhole(percent) ? 1 : 0);
}

std::pair<Chance, Chance> chancesBeside(double one, double other)
{
    const bool fine = std::round(100 * one) == std::round(100 * other);
    return {Chance{one, fine}, Chance{other, fine}};
}

} // namespace padside
