// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

namespace padside {

namespace {

constexpr float centre = 480;
constexpr float radius = 190;
constexpr float shellTop = 250;
constexpr float shellBottom = 560;

/// A weld bead round the vessel: a raised, rippled ring that rusts early.
void paintWeld(Scene& scene, float y0)
{
    scene.fill(centre - radius - 3, y0 - 9, centre + radius + 3, y0 + 9, [&](float x, float y, Texel& texel) {
        const float side = (x - centre) / (radius + 3);
        const float bulge = (y - y0) / 9;
        texel.normal = unitVector({side, bulge * 0.8F, std::sqrt(std::max(0.02F, 1 - side * side))});
        texel.albedo = material::blackPaint.albedo * 1.1F;
        texel.gloss = 0.4F;
        texel.rusts = 1;
        texel.far = 0;
        texel.u = std::asin(std::clamp(side, -1.0F, 1.0F)) * radius;
        texel.v = y;
        texel.prone = 0.11F * (1 - bulge * bulge);
        texel.height = 1.3F * std::sin(texel.u * 0.55F) * (1 - bulge * bulge);
    });
}

void paintStrap(Scene& scene, float y0)
{
    paintCylinder(scene, centre, radius + 5, y0 - 15, y0 + 15, material::galvanised);
    paintShadow(scene, centre - radius, y0 + 16, centre + radius, y0 + 24, 6, 0.45F);
    paintBox(scene, centre + 92, y0 - 21, centre + 132, y0 + 21, 6, material::galvanised);
    paintScrew(scene, centre + 112, y0, 11, material::bareMetal);
}

/// The maker's sticker: a pale label with lines of print.
void paintSticker(Scene& scene)
{
    scene.fill(centre - 92, 330, centre + 22, 418, [&](float x, float y, Texel& texel) {
        const bool print = std::fmod(y - 330, 13.0F) > 5 && std::fmod(y - 330, 13.0F) < 8 && x > centre - 84
            && x < centre + 12 - 40 * static_cast<float>(fraction(static_cast<std::uint64_t>(y) / 13));
        texel.albedo = print ? Vec3{0.22F, 0.22F, 0.24F}
                             : Vec3{0.60F, 0.58F, 0.51F} * (0.8F + 0.3F * photoNoise().clouds.at(x * 2, y * 2));
        texel.gloss = 0.3F;
        texel.rusts = 0;
        texel.height = 0;
    });
}

} // namespace

void paintVessel(Scene& scene, std::uint64_t variant)
{
    paintBackdrop(scene, Backdrop::insideCabinet, static_cast<float>(fraction(variant)));
    // Coil fins far behind, out of focus.
    scene.fill(700, -200, 1400, 700, [](float x, float y, Texel& texel) {
        texel.albedo = texel.albedo * 1.5F + Vec3{0.08F, 0.08F, 0.085F} * std::sin(x * 0.16F) + Vec3{0, 0, y * 1e-5F};
    });
    // The pan below.
    scene.fill(-200, 690, 1200, 1000, [](float x, float y, Texel& texel) {
        texel.albedo = Vec3{0.30F, 0.31F, 0.30F} * (0.8F + 0.3F * photoNoise().other.at(x, y * 3));
        texel.normal = unitVector({0, -0.9F, 0.5F});
        texel.far = ramp(1000, 760, y) * 0.5F + 0.25F;
        texel.shade = 0.5F;
    });
    const bool mirrored = mixed(variant) % 2 == 0;
    const float side = mirrored ? -1.0F : 1.0F;
    paintTube(
        scene,
        {{centre + side * 330, 420}, {centre + side * 300, 160}, {centre + side * 250, 60}, {centre + side * 300, -80}},
        22, material::copper, 0.45F);

    // A domed bottom, the shell, the crown, in the order they hide each other.
    paintShadow(scene, centre - 130, 700, centre + 150, 730, 40, 0.6F);
    paintDome(scene, centre, radius, shellBottom, 120, false, material::blackPaint);
    scene.fill(centre - radius, shellBottom, centre + radius, shellBottom + 125, [&](float, float y, Texel& texel) {
        if (texel.rusts > 0)
            texel.prone = 0.17F * ramp(shellBottom, shellBottom + 110, y); // where water hangs
    });
    paintCylinder(scene, centre, radius, shellTop, shellBottom, material::blackPaint);
    scene.fill(centre - radius, shellBottom - 70, centre + radius, shellBottom,
               [&](float, float y, Texel& texel) { texel.prone = 0.05F * ramp(shellBottom - 70, shellBottom, y); });
    paintDome(scene, centre, radius, shellTop, 125, true, material::blackPaint);
    scene.fill(centre - radius, shellTop - 130, centre + radius, shellTop, [&](float, float y, Texel& texel) {
        if (texel.rusts > 0)
            texel.prone = 0.06F * ramp(shellTop - 100, shellTop, y);
    });
    paintWeld(scene, shellBottom);
    paintWeld(scene, shellTop);
    paintSticker(scene);
    paintStrap(scene, 478);
    // Fusible plug at the bottom.
    paintBox(scene, centre + side * 60 - 17, 652, centre + side * 60 + 17, 692, 6, material::bareMetal);
    paintBox(scene, centre + side * 60 - 11, 690, centre + side * 60 + 11, 704, 4, material::braze);

    // Inlet and outlet with their brazed collars.
    for (const float offset : {-84.0F, 84.0F}) {
        const float x = centre + offset;
        const float foot = 150;
        paintTube(scene, {{x, foot - 34}, {x, 60}, {x + offset * 0.25F, -30}, {x + offset * 1.4F, -90}}, 25,
                  material::copper);
        paintShadow(scene, x - 30, foot - 6, x + 42, foot + 8, 8, 0.45F);
        paintBox(scene, x - 33, foot - 24, x + 33, foot + 12, 10, material::blackPaint);
        scene.fill(x - 33, foot - 24, x + 33, foot + 12, [](float, float, Texel& texel) { texel.prone = 0.10F; });
        scene.fill(x - 29, foot - 40, x + 29, foot - 22, [&](float px, float py, Texel& texel) {
            const float across = (px - x) / 29;
            texel.albedo = material::braze.albedo;
            texel.metal = 0.7F;
            texel.gloss = 0.55F;
            texel.rusts = 0;
            texel.far = 0;
            texel.normal = unitVector({across, -0.3F, std::sqrt(std::max(0.02F, 1 - across * across))});
            texel.height = photoNoise().grains.at(px * 0.7F, py * 0.7F) * 3;
        });
    }
}

} // namespace padside
