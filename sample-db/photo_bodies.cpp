// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_bodies.h"

#include "sample-db/photo_noise.h"

namespace padside {

namespace {

void wear(Texel& texel, const Material& material)
{
    texel.albedo = material.albedo;
    texel.gloss = material.gloss;
    texel.metal = material.metal;
    texel.rusts = material.rusts;
    texel.prone = 0;
    texel.shade = 1;
    texel.far = 0;
    texel.height = 0;
}

} // namespace

void paintBackdrop(Scene& scene, Backdrop backdrop, float shift)
{
    const PhotoNoise& noise = photoNoise();
    scene.fillAll([&](float x, float y, Texel& texel) {
        const float patch = noise.clouds.at(x * 0.4F + shift * 90, y * 0.4F + shift * 31);
        const float blob = noise.other.at(x * 0.9F + shift * 57, y * 0.9F);
        texel.far = 1;
        texel.gloss = 0.05F;
        texel.u = x;
        texel.v = y;
        switch (backdrop) {
        case Backdrop::hedge:
            texel.albedo
                = mix({0.10F, 0.16F, 0.08F}, {0.36F, 0.44F, 0.20F}, ramp(0.35F, 0.75F, 0.5F * patch + 0.5F * blob));
            break;
        case Backdrop::wall:
            texel.albedo = mix({0.46F, 0.43F, 0.39F}, {0.60F, 0.57F, 0.52F}, patch);
            texel.shade = 0.75F + 0.25F * blob;
            break;
        case Backdrop::insideCabinet:
            texel.albedo = mix({0.16F, 0.17F, 0.18F}, {0.30F, 0.31F, 0.31F}, patch);
            texel.shade = 0.40F + 0.35F * ramp(700, 0, y);
            break;
        }
    });
}

void paintCylinder(Scene& scene, float centre, float radius, float top, float bottom, const Material& material)
{
    scene.fill(centre - radius, top, centre + radius, bottom, [&](float x, float y, Texel& texel) {
        const float side = (x - centre) / radius;
        wear(texel, material);
        texel.normal = {side, 0, std::sqrt(std::max(0.0F, 1 - side * side))};
        texel.u = std::asin(std::clamp(side, -1.0F, 1.0F)) * radius;
        texel.v = y;
    });
}

void paintDome(Scene& scene, float centre, float radius, float edge, float depth, bool up, const Material& material)
{
    const float top = up ? edge - depth : edge;
    scene.fill(centre - radius, top, centre + radius, top + depth, [&](float x, float y, Texel& texel) {
        const float side = (x - centre) / radius;
        const float rise = (y - edge) / depth;
        const float rest = 1 - side * side - rise * rise;
        if (rest < 0)
            return;
        wear(texel, material);
        texel.normal = unitVector({side / radius, rise / depth, std::sqrt(rest) / radius});
        texel.u = std::asin(std::clamp(side, -1.0F, 1.0F)) * radius;
        texel.v = y;
    });
}

namespace {

/// Catmull-Rom through the points, as short straight pieces.
std::vector<std::pair<float, float>> smoothed(const std::vector<std::pair<float, float>>& through)
{
    std::vector<std::pair<float, float>> line;
    constexpr int pieces = 8;
    for (std::size_t i = 0; i + 1 < through.size(); ++i) {
        const auto& a = through[i == 0 ? 0 : i - 1];
        const auto& b = through[i];
        const auto& c = through[i + 1];
        const auto& d = through[std::min(i + 2, through.size() - 1)];
        for (int piece = 0; piece < pieces; ++piece) {
            const float t = static_cast<float>(piece) / pieces;
            const auto blend = [t](float p, float q, float r, float s) {
                return 0.5F
                    * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - s) * t * t + (3 * q - p - 3 * r + s) * t * t * t);
            };
            line.emplace_back(blend(a.first, b.first, c.first, d.first), blend(a.second, b.second, c.second, d.second));
        }
    }
    line.push_back(through.back());
    return line;
}

} // namespace

void paintTube(Scene& scene, const std::vector<std::pair<float, float>>& through, float radius,
               const Material& material, float far)
{
    const auto line = smoothed(through);
    float left = 1e6F;
    float top = 1e6F;
    float right = -1e6F;
    float bottom = -1e6F;
    for (const auto& [x, y] : line) {
        left = std::min(left, x);
        right = std::max(right, x);
        top = std::min(top, y);
        bottom = std::max(bottom, y);
    }
    scene.fill(left - radius, top - radius, right + radius, bottom + radius, [&](float x, float y, Texel& texel) {
        float nearest = radius * radius;
        float alongNearest = 0;
        float offX = 0;
        float offY = 0;
        bool hit = false;
        for (std::size_t i = 0; i + 1 < line.size(); ++i) {
            const float ax = line[i].first;
            const float ay = line[i].second;
            if (std::abs(x - ax) > 4 * radius + 40 || std::abs(y - ay) > 4 * radius + 40)
                continue;
            const float dx = line[i + 1].first - ax;
            const float dy = line[i + 1].second - ay;
            const float t
                = std::clamp(((x - ax) * dx + (y - ay) * dy) / std::max(dx * dx + dy * dy, 1e-6F), 0.0F, 1.0F);
            const float ox = x - ax - t * dx;
            const float oy = y - ay - t * dy;
            const float distance = ox * ox + oy * oy;
            if (distance < nearest) {
                nearest = distance;
                alongNearest = (static_cast<float>(i) + t) * 24;
                offX = ox / radius;
                offY = oy / radius;
                hit = true;
            }
        }
        if (!hit)
            return;
        wear(texel, material);
        texel.normal = unitVector({offX, offY, std::sqrt(std::max(0.0F, 1 - offX * offX - offY * offY))});
        texel.u = (offX + offY) * radius;
        texel.v = alongNearest;
        texel.far = far;
    });
}

void paintBox(Scene& scene, float left, float top, float right, float bottom, float rounding, const Material& material)
{
    scene.fill(left, top, right, bottom, [&](float x, float y, Texel& texel) {
        const float dx = std::max(0.0F, std::max(left + rounding - x, x - right + rounding)) / rounding;
        const float dy = std::max(0.0F, std::max(top + rounding - y, y - bottom + rounding)) / rounding;
        const float rest = 1 - dx * dx - dy * dy;
        if (rest < 0)
            return;
        wear(texel, material);
        texel.normal
            = unitVector({x < left + rounding ? -dx : dx, y < top + rounding ? -dy : dy, 0.4F + std::sqrt(rest)});
        texel.u = x;
        texel.v = y;
        texel.prone = 0.10F * std::max(dx, dy);
    });
}

void paintScrew(Scene& scene, float x0, float y0, float radius, const Material& material)
{
    scene.fill(x0 - radius, y0 - radius, x0 + radius, y0 + radius, [&](float x, float y, Texel& texel) {
        const float dx = (x - x0) / radius;
        const float dy = (y - y0) / radius;
        const float away = dx * dx + dy * dy;
        if (away > 1)
            return;
        wear(texel, material);
        texel.normal = unitVector({dx * away, dy * away, 1});
        texel.u = x;
        texel.v = y;
        texel.prone = 0.22F;
        if (std::abs(dx * 0.8F + dy * 0.6F) < 0.16F)
            texel.shade = 0.35F;
    });
}

void paintShadow(Scene& scene, float left, float top, float right, float bottom, float soft, float strength)
{
    scene.fill(left - soft, top - soft, right + soft, bottom + soft, [&](float x, float y, Texel& texel) {
        const float across = ramp(left - soft, left + soft, x) * ramp(right + soft, right - soft, x);
        const float down = ramp(top - soft, top + soft, y) * ramp(bottom + soft, bottom - soft, y);
        texel.shade *= 1 - strength * across * down;
    });
}

} // namespace padside
