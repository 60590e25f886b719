// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <string>

namespace padside {

/// The folder beside a record file that holds its photographs.
[[nodiscard]] QString photoFolderOf(const QString& recordFile);

/// Where the photograph with this SHA-256 lies: the digits, and an ending by media type so that any viewer opens it.
[[nodiscard]] QString photoPath(const QString& folder, const std::string& sha256, const std::string& mediaType);

} // namespace padside
