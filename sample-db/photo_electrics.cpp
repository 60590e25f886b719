// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_noise.h"
#include "sample-db/photo_subjects.h"

#include <array>

namespace padside {

namespace {

constexpr Material phenolic{{0.10F, 0.095F, 0.09F}, 0.4F, 0, 0};
constexpr Material paleCase{{0.52F, 0.50F, 0.44F}, 0.35F, 0, 0};
constexpr Material backPlate{{0.44F, 0.45F, 0.45F}, 0.4F, 0.4F, 1};
constexpr Material can{{0.50F, 0.51F, 0.52F}, 0.65F, 0.6F, 1};

Material wire(float r, float g, float b)
{
    return {{r, g, b}, 0.45F, 0, 0};
}

void paintBackPlate(Scene& scene, std::uint64_t variant, const Material& plate)
{
    paintBackdrop(scene, Backdrop::insideCabinet, static_cast<float>(fraction(variant)));
    paintBox(scene, -60, -60, 1020, 780, 8, plate);
    for (const float x : {60.0F, 900.0F}) {
        paintScrew(scene, x, 60, 15, material::bareMetal);
        paintScrew(scene, x, 660, 15, material::bareMetal);
    }
}

/// Arcing leaves soot round the points and browns the case.
void scorch(Scene& scene, float x0, float y0, float reach, float strength)
{
    scene.fill(x0 - reach, y0 - reach, x0 + reach, y0 + reach, [&](float x, float y, Texel& texel) {
        const float dx = (x - x0) / reach;
        const float dy = (y - y0) / reach;
        const float away = std::sqrt(dx * dx + dy * dy) + 0.5F * (photoNoise().clouds.at(x * 1.5F, y * 1.5F) - 0.5F);
        const float soot = strength * ramp(0.85F, 0.15F, away);
        texel.albedo = mix(texel.albedo, {0.045F, 0.035F, 0.03F}, soot);
        texel.gloss *= 1 - soot;
        texel.metal *= 1 - soot;
    });
}

} // namespace

void paintContactor(Scene& scene, std::uint64_t variant, float age)
{
    paintBackPlate(scene, variant, backPlate);
    paintShadow(scene, 270, 180, 740, 640, 40, 0.55F);
    paintBox(scene, 250, 130, 710, 600, 18, paleCase);
    paintBox(scene, 300, 250, 660, 480, 14, phenolic);
    constexpr std::array<float, 2> poles{370, 590};
    for (const float x : poles) {
        for (const float y : {180.0F, 550.0F}) {
            paintBox(scene, x - 52, y - 36, x + 52, y + 36, 8, material::bareMetal);
            paintScrew(scene, x, y, 24, material::braze);
        }
        // The bridge between the points.
        paintBox(scene, x - 30, 290, x + 30, 440, 8, material::braze);
        paintScrew(scene, x, 312, 17, material::bareMetal);
        paintScrew(scene, x, 418, 17, material::bareMetal);
        scorch(scene, x, 312, 60 + 70 * age, 0.95F * age);
        scorch(scene, x, 418, 60 + 50 * age, 0.80F * age);
    }
    paintBox(scene, 452, 290, 508, 440, 10, paleCase);
    paintTube(scene, {{370, 168}, {350, 60}, {280, -30}, {200, -80}}, 15, wire(0.07F, 0.07F, 0.08F));
    paintTube(scene, {{590, 168}, {620, 70}, {700, 0}, {760, -80}}, 15, wire(0.55F, 0.07F, 0.05F));
    paintTube(scene, {{370, 562}, {330, 660}, {250, 720}, {190, 800}}, 15, wire(0.60F, 0.52F, 0.10F));
    paintTube(scene, {{590, 562}, {640, 640}, {760, 690}, {900, 760}}, 15, wire(0.10F, 0.16F, 0.42F));
    paintTube(scene, {{250, 420}, {170, 440}, {90, 380}, {-60, 400}}, 8, wire(0.20F, 0.36F, 0.16F));
}

void paintCapacitor(Scene& scene, std::uint64_t variant, float age)
{
    Material plate = backPlate;
    plate.rusts = 0; // here it is the can that counts
    paintBackPlate(scene, variant, plate);
    constexpr float centre = 480;
    constexpr float radius = 172;
    const float top = 230;
    paintShadow(scene, centre - 120, 200, centre + 240, 760, 50, 0.55F);
    paintCylinder(scene, centre, radius, top, 800, can);
    scene.fill(centre - radius, top, centre + radius, 800,
               [&](float, float y, Texel& texel) { texel.prone = 0.12F * ramp(top + 40, top, y); });
    // A good can is flat on top; one about to fail bulges.
    paintDome(scene, centre, radius, top + 4, 26 + 78 * age, true, can);
    paintCylinder(scene, centre, radius + 6, top - 8, top + 12, can);
    scene.fill(centre - radius - 6, top - 8, centre + radius + 6, top + 12,
               [](float, float, Texel& texel) { texel.prone = 0.18F; });
    const float lift = 26 + 78 * age;
    for (const float offset : {-92.0F, 0.0F, 92.0F}) {
        const float foot = top + 4 - lift * std::sqrt(1 - offset * offset / (radius * radius));
        paintBox(scene, centre + offset - 30, foot - 18, centre + offset + 30, foot + 14, 8, phenolic);
        paintBox(scene, centre + offset - 15, foot - 66, centre + offset - 4, foot - 14, 2, material::braze);
        paintBox(scene, centre + offset + 4, foot - 66, centre + offset + 15, foot - 14, 2, material::braze);
        const float out = offset * 2.2F;
        const Material cover = offset < -1 ? wire(0.10F, 0.16F, 0.42F)
            : offset > 1                   ? wire(0.55F, 0.07F, 0.05F)
                                           : wire(0.60F, 0.52F, 0.10F);
        paintTube(scene,
                  {{centre + offset - 9, foot - 40},
                   {centre + offset * 1.1F, foot - 110},
                   {centre + out, 20},
                   {centre + out * 1.5F, -80}},
                  12, cover);
    }
    // The rating plate: print, no maker.
    scene.fill(centre - 110, 350, centre + 92, 560, [&](float x, float y, Texel& texel) {
        const float line = std::fmod(y - 350, 30.0F);
        const bool print = line > 9 && line < 20 && x > centre - 96
            && x < centre + 78 - 90 * static_cast<float>(fraction(static_cast<std::uint64_t>(y - 350) / 30 + 9))
            && photoNoise().grains.at(x * 0.9F, std::floor(y / 30) * 40) > 0.42F;
        texel.albedo = print ? Vec3{0.14F, 0.14F, 0.18F} : Vec3{0.55F, 0.55F, 0.50F};
        texel.metal = 0;
        texel.gloss = 0.25F;
        texel.rusts = 0;
    });
    paintCylinder(scene, centre, radius + 5, 640, 676, material::galvanised);
    paintShadow(scene, centre - radius, 678, centre + radius, 690, 8, 0.4F);
}

} // namespace padside
