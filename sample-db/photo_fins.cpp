// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

namespace padside {

void paintFins(Scene& scene, std::uint64_t variant, float age)
{
    const PhotoNoise& noise = photoNoise();
    const float shift = 400 * static_cast<float>(fraction(variant));
    scene.fillAll([&](float x, float y, Texel& texel) {
        // Hail and trimmers bend fins in patches; elsewhere they stand straight.
        const float patch = ramp(0.80F - 0.35F * age, 0.92F - 0.30F * age, noise.clouds.at(x * 0.8F + shift, y * 0.8F));
        const float wave = (noise.other.at(x * 1.1F + shift, y * 1.6F) - 0.5F) * 26 * patch;
        const float place = (x + wave) / 8.6F;
        const float phase = place - std::floor(place);
        const float edge = ramp(0.0F, 0.14F, phase) * ramp(0.62F, 0.40F, phase);
        const auto fold
            = static_cast<float>(fraction(static_cast<std::uint64_t>(static_cast<std::int64_t>(place) + 5000)));
        texel.albedo = mix(Vec3{0.13F, 0.13F, 0.135F}, Vec3{0.50F, 0.51F, 0.52F} * (0.88F + 0.12F * fold), edge);
        texel.normal = unitVector(
            {(phase - 0.3F) * 1.5F + 0.5F * patch, patch * (noise.grains.at(x * 0.5F, y * 0.5F) - 0.5F), 1});
        texel.metal = 0.5F;
        texel.gloss = 0.4F + 0.2F * edge;
        texel.shade = 0.7F + 0.3F * edge;
        texel.u = x;
        texel.v = y;
        texel.rusts = 0;
        // Tubes shimmer through in rows.
        const float row = std::fmod(y + 900, 92.0F) - 46;
        if (std::abs(row) < 13)
            texel.albedo = mix(texel.albedo, {0.46F, 0.27F, 0.17F}, 0.45F * (1 - edge));
        // White bloom of corroded aluminium along the lower rows.
        const float bloom = ramp(0.62F, 0.8F, noise.clouds.at(x * 2 + 80 + shift, y * 2)) * age * ramp(150, 700, y);
        texel.albedo = mix(texel.albedo, {0.80F, 0.80F, 0.78F}, 0.5F * bloom);
    });
    // The end plate and its hairpins at the right.
    paintShadow(scene, 770, -100, 790, 900, 20, 0.6F);
    paintBox(scene, 800, -60, 1200, 1000, 8, material::galvanised);
    for (int bend = 0; bend < 5; ++bend) {
        const float y = 40 + 184 * static_cast<float>(bend);
        paintShadow(scene, 850, y + 10, 925, y + 130, 14, 0.5F);
        paintTube(scene, {{820, y}, {880, y + 4}, {915, y + 46}, {880, y + 90}, {820, y + 94}}, 17, material::copper);
    }
}

} // namespace padside
