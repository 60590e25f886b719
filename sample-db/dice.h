// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_noise.h"

#include <cstddef>
#include <cstdint>
#include <span>

namespace padside {

/// Random numbers that are the same everywhere (the standard library's distributions are not).
class Dice
{
public:
    explicit Dice(std::uint64_t seed)
        : m_seed(seed)
    {
    }

    /// In [0, 1).
    [[nodiscard]] double unit() { return fraction(m_seed + 0x632be59bd9b4e019U * ++m_throws); }
    [[nodiscard]] double between(double low, double high) { return low + (high - low) * unit(); }
    [[nodiscard]] bool chance(double probability) { return unit() < probability; }
    /// 0 .. count-1.
    [[nodiscard]] std::size_t below(std::size_t count)
    {
        return static_cast<std::size_t>(unit() * static_cast<double>(count));
    }
    /// Roughly normal: mean 0, standard deviation 1, never beyond 3.5.
    [[nodiscard]] double bell() { return (unit() + unit() + unit() + unit() - 2) * 1.732; }

    template <typename T> [[nodiscard]] const T& of(std::span<const T> choices)
    {
        return choices[below(choices.size())];
    }

private:
    std::uint64_t m_seed;
    std::uint64_t m_throws = 0;
};

} // namespace padside
