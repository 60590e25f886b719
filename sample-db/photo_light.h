// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_scene.h"

#include <QImage>

#include <cstdint>

namespace padside {

/// The day's light and the camera in a hand.
struct Light
{
    float sun = 1; ///< 0 overcast .. 1 clear
    float exposure = 1;
    float warmth = 0; ///< -1 cool .. 1 warm
    std::uint64_t grain = 0;
};

/// Lights the scene and takes the picture: 1280 x 960, with soft corners, blur where it is out of focus, and grain.
[[nodiscard]] QImage takePicture(Scene& scene, const Light& light);

} // namespace padside
