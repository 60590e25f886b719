// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/sentence.h"

#include "core/quantity/chance_words.h"
#include "core/quantity/plain_english.h"

#include <charconv>

namespace padside {

namespace {

struct Say
{
    const Speaker& speaker;
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(const Word& word) const { return speaker.translate(word.english); }
    std::string operator()(const Bracketed& word) const
    {
        return word.english.empty() ? std::string() : " (" + speaker.translate(word.english) + ")";
    }
    std::string operator()(std::int64_t number) const { return std::to_string(number); }
    std::string operator()(const Number& number) const { return speaker.number(number.value, number.decimals); }
    std::string operator()(const Amount& amount) const { return speaker.amount(amount); }
    std::string operator()(const Chance& chance) const { return say(chanceWords(chance), speaker); }
    std::string operator()(const Money& money) const { return speaker.money(money); }
    std::string operator()(Date date) const { return speaker.date(date); }
};

} // namespace

const Speaker& plainEnglish()
{
    static const PlainEnglish speaker;
    return speaker;
}

std::string say(const Sentence& sentence, const Speaker& speaker)
{
    const std::string pattern = speaker.translate(sentence.pattern);
    std::string said;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const std::size_t close = pattern[i] == '{' ? pattern.find('}', i) : std::string::npos;
        std::size_t place = 0;
        const char* first = pattern.data() + i + 1;
        const char* last = pattern.data() + (close == std::string::npos ? i : close);
        const auto read = std::from_chars(first, last, place);
        const bool isPlace = close != std::string::npos && read.ec == std::errc() && read.ptr == last
            && place < sentence.arguments.size();
        if (!isPlace) {
            said += pattern[i];
            continue;
        }
        said += std::visit(Say{speaker}, sentence.arguments[place]);
        i = close;
    }
    return said;
}

} // namespace padside
