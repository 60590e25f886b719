// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_bodies.h"

#include <cstdint>
#include <string>

namespace padside {

/// What is in front of the camera.
enum class PhotoSubject {
    vesselCrown, ///< suction accumulator from above, tubes going in
    vesselShell,
    vesselBottom, ///< hanging dome over the base pan
    vesselJoints, ///< brazed joints at the crown
    tubing, ///< copper with brazed joints, service valves
    cabinet, ///< louvres, seam, screws
    fins, ///< coil face
    basePan, ///< pan, drain holes, leaves
    contactor,
    capacitor,
};

/// Puts the subject into the scene as it left the factory, except for `age` (0 new .. 1 old: bent fins, bulged can,
/// leaves). `variant` tells one unit's arrangement from another's.
void paintSubject(Scene& scene, PhotoSubject subject, std::uint64_t variant, float age);

/// Where the camera stands for it.
[[nodiscard]] Framing framingOf(PhotoSubject subject);

// One per file, called by paintSubject.
void paintVessel(Scene& scene, std::uint64_t variant);
void paintTubing(Scene& scene, std::uint64_t variant);
void paintCabinet(Scene& scene, std::uint64_t variant);
void paintFins(Scene& scene, std::uint64_t variant, float age);
void paintBasePan(Scene& scene, std::uint64_t variant, float age);
void paintContactor(Scene& scene, std::uint64_t variant, float age);
void paintCapacitor(Scene& scene, std::uint64_t variant, float age);

} // namespace padside
