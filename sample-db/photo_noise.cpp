// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"

#include <algorithm>

namespace padside {

namespace {

/// std::floor is a call on plain x86-64 and this runs some ten million times a picture.
int wholeBelow(float x)
{
    const auto whole = static_cast<int>(x);
    return static_cast<float>(whole) > x ? whole - 1 : whole;
}

float smooth(float t)
{
    return t * t * (3 - 2 * t);
}

/// Lattice noise of `cells` x `cells`, periodic, at (x, y) in 0..1.
float lattice(std::uint64_t seed, int cells, float x, float y)
{
    const float fx = x * static_cast<float>(cells);
    const float fy = y * static_cast<float>(cells);
    const auto ix = static_cast<int>(fx);
    const auto iy = static_cast<int>(fy);
    const auto corner = [&](int dx, int dy) {
        const auto cx = static_cast<std::uint64_t>((ix + dx) % cells);
        const auto cy = static_cast<std::uint64_t>((iy + dy) % cells);
        return static_cast<float>(fraction(seed * 1000003U + cy * 4099U + cx));
    };
    const float tx = smooth(fx - static_cast<float>(ix));
    const float ty = smooth(fy - static_cast<float>(iy));
    const float top = corner(0, 0) + (corner(1, 0) - corner(0, 0)) * tx;
    const float bottom = corner(0, 1) + (corner(1, 1) - corner(0, 1)) * tx;
    return top + (bottom - top) * ty;
}

} // namespace

NoiseTile::NoiseTile(std::uint64_t seed, int firstCells, int octaves)
    : m_values(static_cast<std::size_t>(size) * size)
{
    float lowest = 1e9F;
    float highest = -1e9F;
    for (int row = 0; row < size; ++row) {
        for (int column = 0; column < size; ++column) {
            float sum = 0;
            float weight = 1;
            int cells = firstCells;
            for (int octave = 0; octave < octaves; ++octave) {
                sum += weight
                    * lattice(seed + static_cast<std::uint64_t>(octave) * 77U, cells, static_cast<float>(column) / size,
                              static_cast<float>(row) / size);
                weight *= 0.55F;
                cells = std::min(cells * 2, size);
            }
            m_values[static_cast<std::size_t>(row) * size + static_cast<std::size_t>(column)] = sum;
            lowest = std::min(lowest, sum);
            highest = std::max(highest, sum);
        }
    }
    for (float& value : m_values)
        value = (value - lowest) / (highest - lowest);
}

float NoiseTile::at(float x, float y) const
{
    const int floorX = wholeBelow(x);
    const int floorY = wholeBelow(y);
    const float tx = x - static_cast<float>(floorX);
    const float ty = y - static_cast<float>(floorY);
    constexpr unsigned mask = size - 1;
    const auto x0 = static_cast<unsigned>(floorX) & mask;
    const auto y0 = static_cast<unsigned>(floorY) & mask;
    const auto x1 = (x0 + 1) & mask;
    const float* upper = &m_values[static_cast<std::size_t>(y0) * size];
    const float* lower = &m_values[static_cast<std::size_t>((y0 + 1) & mask) * size];
    const float top = upper[x0] + (upper[x1] - upper[x0]) * tx;
    const float bottom = lower[x0] + (lower[x1] - lower[x0]) * tx;
    return top + (bottom - top) * ty;
}

const PhotoNoise& photoNoise()
{
    static const PhotoNoise noise;
    return noise;
}

} // namespace padside
