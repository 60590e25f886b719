// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_scene.h"

#include <utility>
#include <vector>

namespace padside {

/// How a body looks where nothing has happened to it yet.
struct Material
{
    Vec3 albedo;
    float gloss = 0.3F;
    float metal = 0;
    float rusts = 0;
};

namespace material {
constexpr Material paintedSteel{{0.42F, 0.45F, 0.46F}, 0.35F, 0, 1};
constexpr Material blackPaint{{0.10F, 0.105F, 0.11F}, 0.62F, 0, 1};
constexpr Material galvanised{{0.52F, 0.54F, 0.54F}, 0.45F, 0.5F, 1};
constexpr Material copper{{0.72F, 0.42F, 0.27F}, 0.75F, 0.9F, 0};
constexpr Material braze{{0.50F, 0.44F, 0.29F}, 0.5F, 0.8F, 0};
constexpr Material bareMetal{{0.47F, 0.47F, 0.46F}, 0.5F, 0.8F, 0};
constexpr Material rubber{{0.07F, 0.07F, 0.07F}, 0.12F, 0, 0};
} // namespace material

/// Something out of focus behind: hedge, wall, or the dark inside of a cabinet.
enum class Backdrop { hedge, wall, insideCabinet };
void paintBackdrop(Scene& scene, Backdrop backdrop, float shift);

/// A standing cylinder.
void paintCylinder(Scene& scene, float centre, float radius, float top, float bottom, const Material& material);

/// Half an ellipsoid on a cylinder's end: rising from `edge` (up) or hanging from it.
void paintDome(Scene& scene, float centre, float radius, float edge, float depth, bool up, const Material& material);

/// A round tube or wire through the points (smoothed).
void paintTube(Scene& scene, const std::vector<std::pair<float, float>>& through, float radius,
               const Material& material, float far = 0);

/// A box seen from the front with slightly rounded edges.
void paintBox(Scene& scene, float left, float top, float right, float bottom, float rounding, const Material& material);

/// A screw head with a slot.
void paintScrew(Scene& scene, float x, float y, float radius, const Material& material);

/// Darkens what lies near a line or below an edge, as a shadow would.
void paintShadow(Scene& scene, float left, float top, float right, float bottom, float soft, float strength);

} // namespace padside
