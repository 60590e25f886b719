// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/counted_tags.h"

#include <algorithm>
#include <charconv>

namespace padside {

namespace {

constexpr std::string_view digits = "0123456789";
constexpr std::size_t mostDigits = 9; // counts up without running over

} // namespace

Result<std::vector<std::string>> countedTags(const std::string& first, int count)
{
    if (first.find_first_not_of(" \t") == std::string::npos)
        return problem(ProblemKind::badInput, PADSIDE_SAY("Give the first tag."));
    if (count == 1)
        return std::vector{first};
    const auto last = first.find_last_of(digits);
    if (last == std::string::npos)
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("“{0}” has no number to count up from: write one, like {0}-1."), {first});
    const auto before = first.find_last_not_of(digits, last);
    auto begin = before == std::string::npos ? 0 : before + 1;
    begin = std::max(begin, last + 1 > mostDigits ? last + 1 - mostDigits : 0);
    const std::size_t width = last + 1 - begin;
    int number = 0;
    std::from_chars(first.data() + begin, first.data() + last + 1, number);
    std::vector<std::string> tags;
    for (int i = 0; i < count; ++i) {
        std::string text = std::to_string(number + i);
        if (text.size() < width)
            text.insert(0, width - text.size(), '0');
        tags.push_back(first.substr(0, begin) + text + first.substr(last + 1));
    }
    return tags;
}

} // namespace padside
