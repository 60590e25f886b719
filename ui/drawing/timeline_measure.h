// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline_words.h"

class QFont;

namespace padside {

/// The sizes of a timeline whose text is `pixels` high, on `width` pixels: columns as wide as their names, but no more
/// than about a third of all.
[[nodiscard]] TimelineSizes measured(const Timeline& timeline, const TimelineWords& words, const QFont& font,
                                     double pixels, double width);

} // namespace padside
