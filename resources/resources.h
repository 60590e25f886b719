// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// The texts of the catalogue that we ship (UTF-8 JSON), sorted by file name, ready for Catalogue::load.
[[nodiscard]] std::vector<std::string> shippedCatalogue();

/// Where Qt finds our icon (SVG); good for QIcon and QSvgRenderer.
[[nodiscard]] std::string iconPath();

/// Where Qt finds the drawing of an opened unit of this kind (SVG); empty if we have none.
[[nodiscard]] std::string drawingPath(std::string_view unitKind);

/// The folder with the translations built into the program (padside_<language>.qm).
[[nodiscard]] std::string shippedTranslations();

} // namespace padside
