// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <QByteArray>
#include <QSize>
#include <QString>

#include <vector>

class QMimeData;

namespace padside {

/// A photograph ready to be kept: the original bytes, untouched, and what was found out about them.
struct TakenPhoto
{
    QByteArray content;
    std::string mediaType; ///< "image/jpeg"
    QString originalName; ///< file name without its folder
    QSize size; ///< pixels, upright
    QByteArray thumbnail; ///< JPEG, at most 320 px on its longer side
};

constexpr qint64 largestPhotoBytes = 100LL * 1024 * 1024;
constexpr int thumbnailEdge = 320;

/// Looks at the bytes of an image that came from anywhere. Refused with one sentence: empty, too large, no image,
/// damaged, or a format that can't be read here (HEIC).
[[nodiscard]] Result<TakenPhoto> readPhoto(const QByteArray& content, const QString& name);

/// The same for a file on disk.
[[nodiscard]] Result<TakenPhoto> readPhotoFile(const QString& path);

/// Whether dropped or pasted data holds files or an image.
[[nodiscard]] bool holdsPhotos(const QMimeData& data);

/// All photographs in dropped or pasted data, or why one could not be read. An image without a file (a screenshot)
/// becomes PNG.
[[nodiscard]] std::vector<Result<TakenPhoto>> readPhotos(const QMimeData& data);

} // namespace padside
