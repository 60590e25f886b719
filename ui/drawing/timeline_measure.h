// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline_words.h"

class QFont;

namespace padside {

/// What the texts of a timeline need, in pixels.
struct NameWidths
{
    double part = 60;
    double zone = 40;
    double amount = 0; ///< of refrigerant
};

/// Of a timeline whose text is `pixels` high. Hundreds of texts are measured: to be kept while timeline and font stay.
[[nodiscard]] NameWidths nameWidths(const Timeline& timeline, const TimelineWords& words, const QFont& font,
                                    double pixels);

/// The sizes of such a timeline on `width` pixels: columns as wide as their names, but no more than about a third of
/// all.
[[nodiscard]] TimelineSizes sizesFor(const NameWidths& widths, double pixels, double width);

} // namespace padside
