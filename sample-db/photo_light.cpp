// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_light.h"

#include "sample-db/photo_noise.h"

#include <array>

namespace padside {

namespace {

constexpr int pictureWidth = 1280;
constexpr int pictureHeight = 960;

Vec3 lit(const Texel& texel, Vec3 normal, const Light& light)
{
    const Vec3 toSun = unitVector({-0.50F, -0.62F, 0.60F});
    const Vec3 half = unitVector(toSun + Vec3{0, 0, 1});
    const float facing = std::max(0.0F, dot(normal, toSun));
    const float sky = 0.5F - 0.5F * normal.y;
    const Vec3 sunColour{1.04F, 0.99F, 0.90F};
    const Vec3 skyColour{0.82F, 0.90F, 1.0F};
    const Vec3 groundColour{0.42F, 0.38F, 0.33F};
    const float key = 0.55F + 0.40F * light.sun;
    const Vec3 diffuse = sunColour * (key * facing) + mix(groundColour, skyColour, sky) * (0.62F - 0.20F * light.sun);
    const float shine = std::max(0.0F, dot(normal, half));
    const float shine2 = shine * shine;
    const float shine8 = shine2 * shine2 * shine2 * shine2;
    const float shine32 = shine8 * shine8 * shine8 * shine8;
    const float edge = 1 - std::max(0.0F, normal.z);
    const float spark
        = texel.gloss * (0.10F * shine8 + 0.62F * shine32 * texel.gloss) + texel.gloss * 0.20F * edge * edge * edge;
    const Vec3 tint = mix({1, 1, 1}, texel.albedo * 1.35F, texel.metal);
    const float mirror = texel.metal * texel.gloss * 0.35F * ramp(-0.3F, 0.9F, -normal.y + 0.5F * normal.x);
    return (texel.albedo * diffuse * (1 - 0.35F * texel.metal) + tint * (spark + mirror)) * texel.shade;
}

/// A box blur along one direction, in place, of the far points only.
void blurFar(std::vector<Vec3>& colours, const std::vector<Texel>& texels, int count, int lines, int step, int lineStep,
             int reach)
{
    std::vector<Vec3> row(static_cast<std::size_t>(count));
    for (int line = 0; line < lines; ++line) {
        const auto index = [&](int i) {
            return static_cast<std::size_t>(line) * static_cast<std::size_t>(lineStep)
                + static_cast<std::size_t>(i) * static_cast<std::size_t>(step);
        };
        Vec3 sum;
        float weight = 0;
        const auto add = [&](int i, float sign) {
            if (i < 0 || i >= count)
                return;
            const float w = sign * (0.02F + texels[index(i)].far);
            sum = sum + colours[index(i)] * w;
            weight += w;
        };
        for (int i = -reach; i < reach; ++i)
            add(i, 1);
        for (int i = 0; i < count; ++i) {
            add(i + reach, 1);
            const float far = texels[index(i)].far;
            row[static_cast<std::size_t>(i)]
                = far > 0.01F ? mix(colours[index(i)], sum * (1 / weight), std::min(1.0F, far)) : colours[index(i)];
            add(i - reach, -1);
        }
        for (int i = 0; i < count; ++i)
            colours[index(i)] = row[static_cast<std::size_t>(i)];
    }
}

/// 0..1 linear to 0..255 as screens expect, by table: a power for each of four million values would be slow.
std::uint8_t encoded(float value)
{
    static const auto table = [] {
        std::array<std::uint8_t, 1025> made{};
        for (int i = 0; i <= 1024; ++i) {
            const float x = static_cast<float>(i) / 1024;
            const float soft = x * (1.30F - 0.30F * x); // a camera's gentle shoulder
            made[static_cast<std::size_t>(i)]
                = static_cast<std::uint8_t>(std::lround(255 * std::pow(std::min(1.0F, soft), 1 / 1.6F)));
        }
        return made;
    }();
    return table[static_cast<std::size_t>(std::clamp(value, 0.0F, 1.0F) * 1024)];
}

QImage developed(const std::vector<Vec3>& colours, const Light& light)
{
    QImage image(pictureWidth, pictureHeight, QImage::Format_RGB32);
    const Vec3 balance{1 + 0.05F * light.warmth, 1, 1 - 0.06F * light.warmth};
    std::uint32_t dice = static_cast<std::uint32_t>(mixed(light.grain)) | 1U;
    constexpr float scale = static_cast<float>(Scene::width) / pictureWidth;
    for (int row = 0; row < pictureHeight; ++row) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(row));
        const float y = std::min(static_cast<float>(row) * scale, static_cast<float>(Scene::height) - 1.001F);
        const auto y0 = static_cast<int>(y);
        const float ty = y - static_cast<float>(y0);
        const float cornerY = (static_cast<float>(row) / pictureHeight - 0.5F);
        for (int column = 0; column < pictureWidth; ++column) {
            const float x = std::min(static_cast<float>(column) * scale, static_cast<float>(Scene::width) - 1.001F);
            const auto x0 = static_cast<int>(x);
            const float tx = x - static_cast<float>(x0);
            const Vec3* upper = &colours[static_cast<std::size_t>(y0) * Scene::width + static_cast<std::size_t>(x0)];
            const Vec3* lower = upper + Scene::width;
            Vec3 colour = mix(mix(upper[0], upper[1], tx), mix(lower[0], lower[1], tx), ty);
            const float cornerX = (static_cast<float>(column) / pictureWidth - 0.5F);
            const float vignette = 1 - 0.55F * (cornerX * cornerX + cornerY * cornerY);
            dice ^= dice << 13;
            dice ^= dice >> 17;
            dice ^= dice << 5;
            const float noise = (static_cast<float>(dice & 0xffffU) + static_cast<float>(dice >> 16U)) / 65535.0F - 1;
            colour = colour * balance * (light.exposure * vignette) + Vec3{1, 1, 1} * (noise * 0.014F);
            line[column] = qRgb(encoded(colour.x), encoded(colour.y), encoded(colour.z));
        }
    }
    return image;
}

} // namespace

QImage takePicture(Scene& scene, const Light& light)
{
    std::vector<Texel>& texels = scene.texels();
    std::vector<Vec3> colours(texels.size());
    for (int row = 0; row < Scene::height; ++row) {
        for (int column = 0; column < Scene::width; ++column) {
            const Texel& texel = scene.at(column, row);
            const float right = scene.at(std::min(column + 1, Scene::width - 1), row).height;
            const float below = scene.at(column, std::min(row + 1, Scene::height - 1)).height;
            const Vec3 slope{(texel.height - right) * 0.35F, (texel.height - below) * 0.35F, 0};
            const Vec3 normal
                = texel.height == right && texel.height == below ? texel.normal : unitVector(texel.normal + slope);
            colours[static_cast<std::size_t>(row) * Scene::width + static_cast<std::size_t>(column)]
                = lit(texel, normal, light);
        }
    }
    for (int pass = 0; pass < 2; ++pass) {
        blurFar(colours, texels, Scene::width, Scene::height, 1, Scene::width, 14);
        blurFar(colours, texels, Scene::height, Scene::width, Scene::width, 1, 14);
    }
    return developed(colours, light);
}

} // namespace padside
