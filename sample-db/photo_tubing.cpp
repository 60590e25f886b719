// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

namespace padside {

void paintTubing(Scene& scene, std::uint64_t variant)
{
    paintBackdrop(scene, Backdrop::wall, static_cast<float>(fraction(variant)));
    // A steel bracket that rusts, in focus; copper in front of it.
    paintShadow(scene, 110, 170, 900, 290, 30, 0.5F);
    paintBox(scene, 90, 120, 890, 240, 8, material::galvanised);
    scene.fill(90, 120, 890, 240, [](float, float y, Texel& texel) { texel.prone += 0.10F * ramp(180, 240, y); });
    for (const float x : {135.0F, 845.0F})
        paintScrew(scene, x, 180, 17, material::bareMetal);

    const auto joint = [&](float x, float y, float radius) {
        paintCylinder(scene, x, radius + 7, y - 34, y + 34, material::copper);
        scene.fill(x - radius - 8, y - 46, x + radius + 8, y - 30, [&](float px, float py, Texel& texel) {
            const float across = (px - x) / (radius + 8);
            texel.albedo = mix(material::braze.albedo, {0.30F, 0.22F, 0.20F}, 0.4F * photoNoise().other.at(px, py * 2));
            texel.metal = 0.7F;
            texel.gloss = 0.6F;
            texel.rusts = 0;
            texel.far = 0;
            texel.height = photoNoise().grains.at(px * 0.8F, py * 0.8F) * 3;
            texel.normal = unitVector({across, -0.5F, std::sqrt(std::max(0.02F, 1 - across * across))});
        });
    };
    // The thick suction line, partly in foam; the thin liquid line beside it.
    paintShadow(scene, 330, 0, 440, 720, 24, 0.4F);
    paintTube(scene, {{340, -60}, {340, 300}, {345, 480}, {400, 640}, {520, 790}}, 42, material::copper);
    joint(340, 330, 42);
    paintTube(scene, {{340, -60}, {340, 40}, {340, 96}}, 74, material::rubber);
    paintShadow(scene, 600, 0, 660, 720, 18, 0.4F);
    paintTube(scene, {{610, -60}, {610, 200}, {612, 480}, {650, 620}, {760, 790}}, 20, material::copper);
    joint(610, 396, 20);
    // A service valve with its cap.
    paintBox(scene, 552, 470, 672, 560, 12, material::braze);
    paintBox(scene, 668, 488, 742, 542, 10, material::braze);
    paintBox(scene, 738, 480, 790, 550, 14, material::bareMetal);
    paintTube(scene, {{220, 560}, {300, 600}, {420, 585}, {560, 640}, {700, 700}}, 7, material::rubber);
    // Joints and bends turn green or brown first.
    for (Texel& texel : scene.texels()) {
        if (texel.metal > 0.85F && texel.far < 0.5F) {
            const float stain = photoNoise().other.at(texel.u * 0.9F + 30, texel.v * 0.7F);
            texel.albedo = mix(texel.albedo, {0.34F, 0.19F, 0.13F}, 0.55F * ramp(0.35F, 0.75F, stain));
            texel.gloss *= 1 - 0.4F * ramp(0.35F, 0.75F, stain);
        }
    }
}

} // namespace padside
