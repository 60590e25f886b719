// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

#include <array>

namespace padside {

void paintCabinet(Scene& scene, std::uint64_t variant)
{
    constexpr std::array<Vec3, 4> paints{
        {{0.62F, 0.60F, 0.54F}, {0.50F, 0.54F, 0.55F}, {0.68F, 0.68F, 0.66F}, {0.40F, 0.45F, 0.42F}}};
    paintBackdrop(scene, Backdrop::hedge, static_cast<float>(fraction(variant)));
    Material sheet = material::paintedSteel;
    sheet.albedo = paints[mixed(variant) % paints.size()];
    paintBox(scene, 40, 30, 930, 900, 22, sheet);

    // Louvres: each a lip that stands out, with a dark slot under it.
    constexpr float pitch = 56;
    const auto louvres = [&](float left, float right) {
        scene.fill(left, 120, right, 690, [&](float x, float y, Texel& texel) {
            const float end = ramp(left, left + 18, x) * ramp(right, right - 18, x);
            const float phase = std::fmod(y - 120, pitch) / pitch;
            if (phase < 0.62F) {
                const float slope = -0.2F + 1.1F * phase;
                texel.normal = unitVector({(1 - end) * (x - left < 40 ? -0.8F : 0.8F), slope * end, 1});
                texel.prone = 0.16F * ramp(0.42F, 0.6F, phase) + 0.20F * (1 - end);
            } else {
                const float inside = (phase - 0.62F) / 0.38F;
                texel.shade = end > 0.4F ? 0.14F + 0.5F * inside * inside : 0.8F;
                texel.rusts = inside > 0.45F ? 1.0F : 0.0F;
                texel.prone = 0.10F;
            }
        });
    };
    louvres(90, 452);
    louvres(512, 880);
    // The seam between two panels, and its screws.
    scene.fill(478, 30, 486, 900, [](float x, float, Texel& texel) {
        texel.shade = 0.25F + 0.1F * std::abs(x - 482);
        texel.prone = 0.2F;
    });
    scene.fill(456, 30, 508, 900,
               [](float x, float, Texel& texel) { texel.prone += 0.14F * ramp(26, 4, std::abs(x - 482)); });
    for (const float y : {78.0F, 300.0F, 520.0F, 706.0F}) {
        paintShadow(scene, 460, y, 474, y + 12, 5, 0.4F);
        paintScrew(scene, 464, y, 10, material::bareMetal);
        paintScrew(scene, 500, y, 10, material::bareMetal);
    }
    scene.fill(40, 640, 930, 760, [](float, float y, Texel& texel) { texel.prone += 0.10F * ramp(640, 730, y); });
}

} // namespace padside
