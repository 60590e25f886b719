// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>

namespace padside {

class Speaker;
struct Timeline;

// Drawings of the screen on paper: made for a screen of about 115 dots to the inch, then scaled.

constexpr double screenScale = 2.2; ///< tenths of a millimetre to a dot of that screen
constexpr double labelPixels = 11.5; ///< letters on that screen: 7 points

[[nodiscard]] QFont labelFont();

/// How high the legend of a timeline gets in this width, in dots.
[[nodiscard]] double legendHeight(const Timeline& timeline, const Speaker& speaker, double width);

} // namespace padside
