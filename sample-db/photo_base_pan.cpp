// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

#include <array>

namespace padside {

namespace {

/// Looking down at a slant: rows further up are further away.
float nearness(float y)
{
    return 0.55F + 0.6F * (y / 720);
}

void paintDrainHole(Scene& scene, float x0, float y0)
{
    const float wide = 46 * nearness(y0);
    const float deep = 20 * nearness(y0);
    scene.fill(x0 - 1.6F * wide, y0 - 1.8F * deep, x0 + 1.6F * wide, y0 + 1.8F * deep,
               [&](float x, float y, Texel& texel) {
                   const float dx = (x - x0) / wide;
                   const float dy = (y - y0) / deep;
                   const float away = std::sqrt(dx * dx + dy * dy);
                   if (away < 1) {
                       texel.albedo = {0.05F, 0.05F, 0.05F};
                       texel.gloss = 0.1F;
                       texel.shade = 0.35F;
                       texel.rusts = 0;
                   } else {
                       texel.prone += 0.26F * ramp(1.55F, 1.0F, away);
                       if (away < 1.18F)
                           texel.normal = unitVector({dx * 0.7F, dy * 0.9F - 0.3F, 0.8F});
                   }
               });
}

void paintLeaf(Scene& scene, std::uint64_t key)
{
    const float x0 = 60 + 840 * static_cast<float>(fraction(key));
    const float y0 = 190 + 480 * static_cast<float>(fraction(key + 1));
    const float turn = 6.28F * static_cast<float>(fraction(key + 2));
    const float length = 34 * nearness(y0) + 14;
    constexpr std::array<Vec3, 3> colours{{{0.42F, 0.26F, 0.09F}, {0.50F, 0.40F, 0.13F}, {0.27F, 0.17F, 0.09F}}};
    const Vec3 colour = colours[mixed(key + 3) % colours.size()];
    paintShadow(scene, x0 - length * 0.4F, y0 + 2, x0 + length * 0.6F, y0 + 10, 8, 0.4F);
    scene.fill(x0 - length, y0 - length, x0 + length, y0 + length, [&](float x, float y, Texel& texel) {
        const float dx = (x - x0) * std::cos(turn) + (y - y0) * 1.7F * std::sin(turn);
        const float dy = -(x - x0) * std::sin(turn) + (y - y0) * 1.7F * std::cos(turn);
        const float along = dx / length;
        const float half = 0.30F * (1 - along * along) * length;
        if (std::abs(along) > 1 || std::abs(dy) > half)
            return;
        texel.albedo = std::abs(dy) < 1.6F ? colour * 0.7F : colour * (0.85F + 0.3F * photoNoise().grains.at(x, y));
        texel.normal = unitVector({0.25F * dy / half, -0.5F + 0.4F * dy / half, 0.8F});
        texel.gloss = 0.15F;
        texel.metal = 0;
        texel.rusts = 0;
        texel.shade = 1;
    });
}

} // namespace

void paintBasePan(Scene& scene, std::uint64_t variant, float age)
{
    const PhotoNoise& noise = photoNoise();
    paintBackdrop(scene, Backdrop::insideCabinet, static_cast<float>(fraction(variant)));
    scene.fill(-300, 130, 1300, 1100, [&](float x, float y, Texel& texel) {
        const float depth = 420 / nearness(y);
        const float across = (x - 480) / nearness(y);
        // Pressed ribs run from front to back.
        const float rib = std::sin(across * 0.021F);
        texel.albedo = material::galvanised.albedo * (0.72F + 0.12F * noise.other.at(across, depth * 3));
        texel.normal
            = unitVector({-0.55F * std::cos(across * 0.021F) * ramp(0.1F, 0.8F, std::abs(rib)), -0.75F, 0.66F});
        texel.gloss = 0.35F;
        texel.metal = 0.25F;
        texel.rusts = 1;
        texel.u = across;
        texel.v = depth * 3;
        texel.prone = 0.09F * ramp(0.2F, -0.9F, rib) + 0.10F * ramp(230, 130, y);
        texel.far = 0.7F * ramp(240, 130, y);
        texel.shade = 0.55F + 0.45F * ramp(130, 420, y);
    });
    // The compressor's foot with its rubber, at the back right.
    paintShadow(scene, 690, 250, 960, 330, 40, 0.5F);
    paintCylinder(scene, 800, 120, -120, 235, material::blackPaint);
    paintBox(scene, 650, 220, 950, 262, 10, material::blackPaint);
    paintBox(scene, 680, 258, 740, 306, 12, material::rubber);
    paintScrew(scene, 710, 240, 17, material::bareMetal);
    paintDrainHole(scene, 250, 300);
    paintDrainHole(scene, 470, 560);
    paintDrainHole(scene, 770, 480);
    const auto leaves = static_cast<int>(3 + 14 * age);
    for (int leaf = 0; leaf < leaves; ++leaf)
        paintLeaf(scene, mixed(variant + 40) + static_cast<std::uint64_t>(leaf) * 17);
}

} // namespace padside
