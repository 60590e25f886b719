// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <random>
#include <string>

namespace padside::test {

#ifdef PADSIDE_FEWER_INPUTS
constexpr int shareOfInputs = PADSIDE_FEWER_INPUTS;
#else
constexpr int shareOfInputs = 1;
#endif

/// Makes good text bad, the same way each time for the same beginning.
class Mutation
{
public:
    explicit Mutation(unsigned begin)
        : m_random(begin)
    {
    }

    /// One to `most` changes: bytes turned, cut out, doubled, swapped; numbers that are none put in; the end cut off.
    [[nodiscard]] std::string of(std::string text, int most);
    /// Bytes without any sense.
    [[nodiscard]] std::string noise(std::size_t mostBytes);
    [[nodiscard]] std::size_t below(std::size_t count); ///< 0 to count - 1; 0 for 0

private:
    void change(std::string& text);

    std::mt19937 m_random;
};

} // namespace padside::test
