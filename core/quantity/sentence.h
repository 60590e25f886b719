// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/quantity_kind.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

/// Marks an English pattern or word for the translators' tool; it changes nothing in the program.
#define PADSIDE_SAY(text) text

namespace padside {

/// A word or phrase inside a sentence that is itself translated ("crown", "spring").
struct Word
{
    std::string english;
    friend bool operator==(const Word&, const Word&) = default;
};

/// A word in brackets behind what it belongs to (" (fan)"), translated; nothing at all if it is empty.
struct Bracketed
{
    std::string english;
    friend bool operator==(const Bracketed&, const Bracketed&) = default;
};

/// A plain number with a fixed count of decimals.
struct Number
{
    double value = 0;
    int decimals = 0;
    friend bool operator==(const Number&, const Number&) = default;
};

/// A measured amount in SI; shown in the reader's own unit.
struct Amount
{
    double si = 0;
    QuantityKind kind = QuantityKind::ratio;
    friend bool operator==(const Amount&, const Amount&) = default;
};

/// A chance (0..1), said as chanceWords() says it.
struct Chance
{
    double share = 0;
    bool fine = false; ///< with a decimal from 10 % on too: beside another that would look the same
    friend bool operator==(const Chance&, const Chance&) = default;
};

/// An amount of the person's own money, with a fixed count of decimals; the name of their currency stands with it where
/// the reader has given one. See roundMoney().
struct Money
{
    double amount = 0;
    int decimals = 0;
    friend bool operator==(const Money&, const Money&) = default;
};

/// What may stand in a sentence.
using Argument = std::variant<std::string, Word, Bracketed, std::int64_t, Number, Amount, Chance, Money, Date>;

/// A sentence as data: an English pattern with places {0}, {1}, … and what stands there. Core makes sentences, the
/// reader's side says them, so that one rule serves every language and every choice of units.
struct Sentence
{
    std::string pattern;
    std::vector<Argument> arguments;

    friend bool operator==(const Sentence&, const Sentence&) = default;
};

/// How a sentence is said: one function for each kind of thing that depends on the reader.
class Speaker
{
public:
    virtual ~Speaker() = default;
    [[nodiscard]] virtual std::string translate(const std::string& english) const = 0;
    [[nodiscard]] virtual std::string number(double value, int decimals) const = 0;
    [[nodiscard]] virtual std::string amount(const Amount& amount) const = 0;
    [[nodiscard]] virtual std::string money(const Money& money) const = 0;
    [[nodiscard]] virtual std::string date(Date date) const = 0;
};

/// English, decimal point, ISO dates, metric units, no currency: what the command line prints unless it is told more.
[[nodiscard]] const Speaker& plainEnglish();

/// The sentence said by `speaker`. A place without an argument stays as it is written.
[[nodiscard]] std::string say(const Sentence& sentence, const Speaker& speaker = plainEnglish());

} // namespace padside
