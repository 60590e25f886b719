// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/photo_path.h"

#include <array>
#include <string_view>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 7> endings{{
    {"image/jpeg", ".jpg"},
    {"image/png", ".png"},
    {"image/heic", ".heic"},
    {"image/heif", ".heif"},
    {"image/webp", ".webp"},
    {"image/tiff", ".tif"},
    {"image/gif", ".gif"},
}};

std::string endingOf(std::string_view mediaType)
{
    for (const auto& [type, ending] : endings) {
        if (type == mediaType)
            return std::string(ending);
    }
    return ".image";
}

} // namespace

QString photoFolderOf(const QString& recordFile)
{
    return recordFile + u".photos"_s;
}

QString photoPath(const QString& folder, const std::string& sha256, const std::string& mediaType)
{
    return folder + u'/' + QString::fromStdString(sha256 + endingOf(mediaType));
}

} // namespace padside
