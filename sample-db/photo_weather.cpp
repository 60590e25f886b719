// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_weather.h"

#include "sample-db/photo_noise.h"

#include <array>

namespace padside {

namespace {

/// The noise of one zone's skin, moved so that each zone has its own blotches.
struct Skin
{
    explicit Skin(std::uint64_t key)
        : shiftU(static_cast<float>(fraction(key) * NoiseTile::size))
        , shiftV(static_cast<float>(fraction(key + 1) * NoiseTile::size))
    {
    }

    float shiftU;
    float shiftV;

    /// High where rust starts first.
    [[nodiscard]] float rustField(const Texel& texel) const
    {
        const PhotoNoise& noise = photoNoise();
        const float u = texel.u + shiftU;
        const float v = texel.v + shiftV;
        return 0.50F * noise.clouds.at(u * 0.9F, v * 0.9F) + 0.30F * noise.other.at(u * 2.6F, v * 2.6F)
            + 0.20F * noise.grains.at(u * 1.2F, v * 1.2F) + texel.prone;
    }
};

/// The level of `field` above which a share of the surface lies. Counting makes the share exact whatever the noise.
float levelForShare(const std::vector<float>& field, const std::vector<Texel>& texels, double share)
{
    constexpr int bins = 4096;
    std::array<std::int64_t, bins> counts{};
    std::int64_t all = 0;
    for (std::size_t i = 0; i < field.size(); ++i) {
        if (texels[i].rusts <= 0)
            continue;
        const int bin = std::clamp(static_cast<int>(field[i] / 2.0F * bins), 0, bins - 1);
        ++counts[static_cast<std::size_t>(bin)];
        ++all;
    }
    auto wanted = static_cast<std::int64_t>(share * static_cast<double>(all));
    for (int bin = bins - 1; bin >= 0; --bin) {
        wanted -= counts[static_cast<std::size_t>(bin)];
        if (wanted <= 0)
            return (static_cast<float>(bin) + 0.5F) * 2.0F / bins;
    }
    return 0;
}

void rustOver(Texel& texel, float depth, const Skin& skin, bool verdigris)
{
    const PhotoNoise& noise = photoNoise();
    const float u = texel.u + skin.shiftU;
    const float v = texel.v + skin.shiftV;
    const float grit = noise.grains.at(u * 1.9F, v * 1.9F);
    const float tone = noise.other.at(u * 1.3F + 200, v * 1.3F);
    Vec3 colour;
    if (verdigris) {
        colour = mix({0.22F, 0.42F, 0.36F}, {0.50F, 0.66F, 0.55F}, tone);
    } else {
        colour = mix({0.50F, 0.235F, 0.085F}, {0.29F, 0.125F, 0.065F}, ramp(0.25F, 0.70F, tone));
        colour = mix(colour, {0.13F, 0.065F, 0.05F}, ramp(0.05F, 0.20F, depth) * ramp(0.25F, 0.7F, 1 - grit) * 0.8F);
        colour = mix(colour, {0.66F, 0.38F, 0.15F}, ramp(0.60F, 0.9F, grit) * 0.45F);
    }
    const float cover = ramp(0, 0.022F, depth);
    texel.albedo = mix(texel.albedo, colour, cover);
    texel.gloss *= 1 - 0.9F * cover;
    texel.metal *= 1 - cover;
    // Paint lifts at the rim; deeper in, scale flakes off in plates and leaves pits.
    const float rim = ramp(0, 0.010F, depth) * ramp(0.030F, 0.012F, depth);
    const float plate = ramp(0.48F, 0.52F, noise.other.at(u * 4.1F, v * 4.1F + 90));
    const float deep = ramp(0.04F, 0.14F, depth);
    texel.height
        += 1.6F * rim + cover * 1.8F * (grit - 0.5F) + deep * (1.4F * plate - 2.2F * ramp(0.66F, 0.8F, 1 - grit));
    texel.shade *= 1 - 0.35F * deep * ramp(0.66F, 0.8F, 1 - grit);
}

/// Round a blotch the paint is already undermined: it browns before it breaks.
void undermine(Texel& texel, float toRust)
{
    const float near = ramp(0.045F, 0.0F, toRust);
    texel.albedo
        = mix(texel.albedo, texel.albedo * Vec3{0.95F, 0.62F, 0.40F} + Vec3{0.05F, 0.02F, 0.0F}, 0.65F * near * near);
    texel.gloss *= 1 - 0.5F * near;
    texel.height += 0.9F * near * near;
}

/// Rust water runs down from each blotch and fades.
void runDown(Scene& scene, const std::vector<float>& depths, const Skin& skin, float strength)
{
    const PhotoNoise& noise = photoNoise();
    for (int column = 0; column < Scene::width; ++column) {
        float carried = 0;
        for (int row = 0; row < Scene::height; ++row) {
            Texel& texel = scene.at(column, row);
            const float depth = depths[static_cast<std::size_t>(row) * Scene::width + static_cast<std::size_t>(column)];
            if (texel.rusts <= 0) {
                carried *= texel.far > 0.5F ? 0.0F : 0.9F;
                continue;
            }
            const float streak = ramp(0.42F, 0.70F, noise.other.at((texel.u + skin.shiftU) * 5.5F, texel.v * 0.12F));
            carried = std::max(carried * 0.9875F, ramp(0.01F, 0.10F, depth) * streak);
            if (depth <= 0 && carried > 0.02F) {
                const float tint = strength * carried * 0.75F;
                texel.albedo
                    = mix(texel.albedo, mix(texel.albedo, {1, 0.62F, 0.34F}, 0.5F) * Vec3{0.85F, 0.6F, 0.42F}, tint);
            }
        }
    }
}

/// A coat brushed on by hand: streaks along the stroke, a ragged edge where the brush left the metal.
void brushOver(Scene& scene, const std::vector<float>& field, double coat, const Skin& skin)
{
    const PhotoNoise& noise = photoNoise();
    const auto holds = static_cast<float>(coat);
    for (std::size_t i = 0; i < field.size(); ++i) {
        Texel& texel = scene.texels()[i];
        if (texel.rusts <= 0)
            continue;
        const float u = texel.u + skin.shiftU;
        const float bristle = noise.grains.at(u * 0.16F, texel.v * 2.4F);
        const float reach = noise.clouds.at(u * 0.35F + 77, texel.v * 0.25F + 31);
        const float edge = ramp(0.56F, 0.60F, 0.45F * reach + 0.14F * (bristle - 0.5F) + 0.75F * field[i]);
        // An old coat gives way where the rust below is deepest.
        const float broken = ramp(0.0F, 0.05F, field[i] - (0.40F + 0.62F * holds));
        const float cover = edge * (1 - broken) * std::min(1.0F, 0.25F + 2 * holds);
        const Vec3 colour = Vec3{0.29F, 0.325F, 0.345F} * (0.88F + 0.24F * bristle);
        texel.albedo = mix(texel.albedo, colour, cover);
        texel.gloss += (0.30F + 0.25F * holds - texel.gloss) * cover;
        texel.height = texel.height * (1 - 0.55F * cover) + cover * 1.1F * (bristle - 0.5F);
    }
}

void soil(Scene& scene, double dirt, const Skin& skin)
{
    const PhotoNoise& noise = photoNoise();
    const auto amount = static_cast<float>(dirt);
    for (Texel& texel : scene.texels()) {
        if (texel.far > 0.5F || texel.metal > 0.85F) // smooth tube sheds it
            continue;
        const float u = texel.u + skin.shiftU;
        const float fluff
            = 0.6F * noise.clouds.at(u, texel.v * 0.8F) + 0.4F * noise.grains.at(u * 1.7F, texel.v * 0.9F);
        const float cover
            = ramp(0.92F - 0.62F * amount, 1.08F - 0.50F * amount, fluff + 0.10F) * (0.55F + 0.40F * amount);
        const float thread = noise.grains.at(u * 3.1F + 40, texel.v * 1.2F);
        texel.albedo = mix(texel.albedo, mix({0.27F, 0.235F, 0.19F}, {0.50F, 0.46F, 0.39F}, thread), cover);
        texel.gloss *= 1 - 0.9F * cover;
        texel.metal *= 1 - cover;
        texel.height += cover * 2.2F * (thread - 0.5F);
        texel.normal = unitVector(mix(texel.normal, {0, 0, 1}, 0.7F * cover));
    }
}

/// Water: darker, glossy, with drops that stand on the paint.
void moisten(Scene& scene, double wet, const Skin& skin)
{
    const auto amount = static_cast<float>(wet);
    for (Texel& texel : scene.texels()) {
        if (texel.far > 0.5F)
            continue;
        const float film = photoNoise().clouds.at(texel.u * 0.6F + skin.shiftV, texel.v * 0.3F);
        const float cover = amount * ramp(0.25F, 0.55F, film + 0.35F * amount);
        texel.albedo = texel.albedo * (1 - 0.42F * cover);
        texel.gloss = std::max(texel.gloss, 0.85F * cover);
        texel.height *= 1 - 0.75F * cover; // water fills the roughness; else every grain would glitter

        constexpr float cell = 15;
        const float cellX = std::floor(texel.u / cell);
        const float cellY = std::floor(texel.v / cell);
        const auto key = skin.shiftU + cellX * 131.0F + cellY * 7919.0F;
        const auto chance = mixed(static_cast<std::uint64_t>(static_cast<std::int64_t>(key * 16)));
        if (fraction(chance) > 0.34 * wet * (film > 0.45F ? 1.0 : 0.4))
            continue;
        const auto size = static_cast<float>(fraction(chance + 1));
        const float dropRadius = 1.3F + 3.4F * size * size;
        const float dx = texel.u / cell - cellX - 0.5F + 0.55F * (static_cast<float>(fraction(chance + 2)) - 0.5F);
        const float dy = texel.v / cell - cellY - 0.5F + 0.55F * (static_cast<float>(fraction(chance + 3)) - 0.5F);
        const float away = std::sqrt(dx * dx + dy * dy * 0.7F) * cell / dropRadius;
        if (away < 1) {
            texel.normal = unitVector(texel.normal + Vec3{dx, dy, 0} * (cell / dropRadius * 0.9F));
            texel.gloss = 1.15F;
            texel.height = 0;
            texel.albedo = texel.albedo * (0.80F + 0.35F * dy);
        }
    }
}

} // namespace

double rustShare(double decay)
{
    constexpr std::array<double, 6> shares{0.0002, 0.0003, 0.006, 0.06, 0.24, 0.55};
    const double place = std::clamp(decay, 0.0, 5.0);
    const auto lower = static_cast<std::size_t>(std::min(place, 4.999));
    const double t = place - static_cast<double>(lower);
    return shares[lower] * std::pow(shares[lower + 1] / shares[lower], t);
}

void weather(Scene& scene, const Weathering& weathering)
{
    const Skin skin(weathering.skin);
    std::vector<Texel>& texels = scene.texels();
    if (weathering.verdigris) { // here it is the copper that counts
        for (Texel& texel : texels)
            texel.rusts = texel.metal > 0.85F && texel.far < 0.3F ? 1.0F : 0.0F;
    }
    std::vector<float> field(texels.size(), 0.0F);
    for (std::size_t i = 0; i < texels.size(); ++i) {
        if (texels[i].rusts > 0)
            field[i] = skin.rustField(texels[i]);
    }
    const float level = levelForShare(field, texels, rustShare(weathering.decay));
    std::vector<float> depths(texels.size(), 0.0F);
    for (std::size_t i = 0; i < texels.size(); ++i) {
        if (texels[i].rusts <= 0)
            continue;
        if (field[i] <= level) {
            if (field[i] > level - 0.045F && !weathering.verdigris && weathering.decay > 1.3)
                undermine(texels[i], level - field[i]);
            continue;
        }
        depths[i] = field[i] - level;
        rustOver(texels[i], depths[i], skin, weathering.verdigris);
    }
    if (!weathering.verdigris)
        runDown(scene, depths, skin, static_cast<float>(ramp(1.4F, 3.2F, static_cast<float>(weathering.decay))));
    if (weathering.coat > 0)
        brushOver(scene, field, weathering.coat, skin);
    if (weathering.dirt > 0.02)
        soil(scene, weathering.dirt, skin);
    if (weathering.wet > 0)
        moisten(scene, weathering.wet, skin);
}

} // namespace padside
