// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <utility>

namespace padside {

/// A chance (0..1) in words, the same wherever a person is told one: whole per cent, since no forecast is finer; below
/// 10 % with one decimal, because what is tolerated lies there. What is less than "0.1 %" or more than "99 %" is said
/// to be so ("under 0.1 %", "over 99 %"): nothing but what is sure is called 0 or 100 %.
[[nodiscard]] Sentence chanceWords(const Chance& chance);
[[nodiscard]] inline Sentence chanceWords(double chance)
{
    return chanceWords(Chance{chance});
}

/// Two chances told beside each other: with a decimal from 10 % on too where whole per cents would be the same.
[[nodiscard]] std::pair<Chance, Chance> chancesBeside(double one, double other);

} // namespace padside
