// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace padside {

struct Vec3
{
    float x = 0;
    float y = 0;
    float z = 0;

    friend constexpr Vec3 operator+(Vec3 a, Vec3 b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr Vec3 operator*(Vec3 a, float k) { return {a.x * k, a.y * k, a.z * k}; }
    friend constexpr Vec3 operator*(Vec3 a, Vec3 b) { return {a.x * b.x, a.y * b.y, a.z * b.z}; }
};

[[nodiscard]] constexpr float dot(Vec3 a, Vec3 b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
[[nodiscard]] constexpr Vec3 mix(Vec3 a, Vec3 b, float t)
{
    return a * (1 - t) + b * t;
}
[[nodiscard]] inline Vec3 unitVector(Vec3 a)
{
    return a * (1 / std::sqrt(std::max(dot(a, a), 1e-9F)));
}
/// 0 below `from`, 1 above `to`, smooth between.
[[nodiscard]] inline float ramp(float from, float to, float x)
{
    const float t = std::clamp((x - from) / (to - from), 0.0F, 1.0F);
    return t * t * (3 - 2 * t);
}

/// What one point of a picture shows, before weather and light.
struct Texel
{
    Vec3 albedo{0.5F, 0.5F, 0.5F};
    Vec3 normal{0, 0, 1}; ///< x right, y down, z to the camera
    float gloss = 0.2F;
    float metal = 0; ///< 1: highlights take the colour of the surface
    float u = 0; ///< place on the object's own skin: rust stays put when the camera moves
    float v = 0;
    float rusts = 0; ///< 1 for steel that can rust (or a face that can get dirty), 0 for everything else
    float prone = 0; ///< edges, welds, undersides go first
    float shade = 1; ///< 0..1, light that reaches it
    float far = 0; ///< 0 sharp, 1 well out of focus
    float height = 0; ///< fine relief, in pixels
};

/// Where the camera stands: it looks at (x, y) of the scene, which is 960 x 720.
struct Framing
{
    float x = 480;
    float y = 360;
    float zoom = 1;
    float tilt = 0; ///< radians
};

/// A picture while it is being painted.
class Scene
{
public:
    static constexpr int width = 960;
    static constexpr int height = 720;

    explicit Scene(const Framing& framing);

    [[nodiscard]] Texel& at(int column, int row)
    {
        return m_texels[static_cast<std::size_t>(row) * width + static_cast<std::size_t>(column)];
    }
    [[nodiscard]] std::vector<Texel>& texels() { return m_texels; }
    [[nodiscard]] float zoom() const { return m_framing.zoom; }

    /// Paints everything `paint(x, y, texel)` changes, for x, y (scene units) within a box.
    template <typename Paint> void fill(float left, float top, float right, float bottom, Paint paint)
    {
        const float sine = std::sin(m_framing.tilt) / m_framing.zoom;
        const float cosine = std::cos(m_framing.tilt) / m_framing.zoom;
        for (int row = 0; row < height; ++row) {
            const float dy = static_cast<float>(row) - 0.5F * height;
            for (int column = 0; column < width; ++column) {
                const float dx = static_cast<float>(column) - 0.5F * width;
                const float x = m_framing.x + dx * cosine - dy * sine;
                const float y = m_framing.y + dx * sine + dy * cosine;
                if (x >= left && x < right && y >= top && y < bottom)
                    paint(x, y, at(column, row));
            }
        }
    }

    template <typename Paint> void fillAll(Paint paint) { fill(-1e6F, -1e6F, 1e6F, 1e6F, paint); }

private:
    Framing m_framing;
    std::vector<Texel> m_texels;
};

} // namespace padside
