// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_scene.h"

#include <cstdint>

namespace padside {

/// What has happened to the surface.
struct Weathering
{
    std::uint64_t skin = 0; ///< which blotches: the same for all pictures of one zone
    double decay = 1; ///< 1 (sound) .. 5 (spent), in between too; sets the share that is rusted
    double coat = 0; ///< 0 no coating, 1 fresh; in between it has thinned and rust comes through
    double wet = 0; ///< 0 dry, 1 dripping
    double dirt = 0; ///< 0 clean .. 1 matted
    bool verdigris = false; ///< copper: green instead of rust
};

/// The share of the surface that is rusted, 0..1, at this decay. At the whole numbers it lies inside the bands of ASTM
/// D610 that the grades stand for (1: up to 0.03 %, 2: to 1 %, 3: to 10 %, 4: to 33 %, 5: above).
[[nodiscard]] double rustShare(double decay);

/// Rust, runs of rust below it, coating, dirt and water, in this order.
void weather(Scene& scene, const Weathering& weathering);

} // namespace padside
