// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <vector>

namespace padside {

/// Random numbers from a key, without state: the same key gives the same number on every machine.
[[nodiscard]] constexpr std::uint64_t mixed(std::uint64_t key)
{
    key += 0x9e3779b97f4a7c15U; // splitmix64 (public domain)
    key = (key ^ (key >> 30)) * 0xbf58476d1ce4e5b9U;
    key = (key ^ (key >> 27)) * 0x94d049bb133111ebU;
    return key ^ (key >> 31);
}

/// In [0, 1).
[[nodiscard]] constexpr double fraction(std::uint64_t key)
{
    return static_cast<double>(mixed(key) >> 11) * 0x1p-53;
}

/// A square of noise that repeats seamlessly: smooth value noise in several octaves, 0..1. Made once and sampled often,
/// since computing octaves for each pixel would take most of the time of a picture.
class NoiseTile
{
public:
    NoiseTile(std::uint64_t seed, int firstCells, int octaves);

    /// The noise at a place; one tile is `size` long in x and y.
    [[nodiscard]] float at(float x, float y) const;

    static constexpr int size = 512;

private:
    std::vector<float> m_values;
};

/// The tiles all pictures share.
struct PhotoNoise
{
    NoiseTile clouds{11, 4, 6}; ///< broad patches with fine edges
    NoiseTile grains{12, 64, 3}; ///< pits and grit
    NoiseTile other{13, 5, 5}; ///< a second, unrelated one for colours and streaks
};

[[nodiscard]] const PhotoNoise& photoNoise();

} // namespace padside
