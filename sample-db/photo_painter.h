// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/photo_light.h"
#include "sample-db/photo_subjects.h"
#include "sample-db/photo_weather.h"

#include <QByteArray>
#include <QImage>

namespace padside {

/// One photograph to be made.
struct PhotoOrder
{
    PhotoSubject subject = PhotoSubject::vesselBottom;
    std::uint64_t unitKey = 0; ///< the arrangement of this unit
    Weathering weathering;
    std::uint64_t moment = 0; ///< hand, light and grain of this one picture
};

/// A photograph as files: the JPEG (1280 x 960, quality 85) and a JPEG of 320 pixels' width for lists.
struct MadePhoto
{
    QByteArray jpeg;
    QByteArray thumbnail;
};

/// Draws the picture: same order, same picture. Safe to call from several threads.
[[nodiscard]] QImage drawPhoto(const PhotoOrder& order);
[[nodiscard]] MadePhoto makePhoto(const PhotoOrder& order);

} // namespace padside
