// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"
#include "ui/drawing/size.h"

#include <QColor>

#include <array>

namespace padside {

enum class ThemeKind { light, dark, sunlight, paper };

/// The codes the choice is remembered by, and how it is called.
[[nodiscard]] constexpr auto codesOf(ThemeKind)
{
    return std::array{Coded<ThemeKind>{ThemeKind::light, "light", "light"},
                      Coded<ThemeKind>{ThemeKind::dark, "dark", "dark"},
                      Coded<ThemeKind>{ThemeKind::sunlight, "sunlight", "sunlight"},
                      Coded<ThemeKind>{ThemeKind::paper, "paper", "paper"}};
}

/// The colours everything is painted with, and the sizes. All colours are opaque: paper can't blend.
struct Theme
{
    QColor ground; ///< the page behind everything
    QColor panel; ///< a raised area on it
    QColor ink; ///< text and strong lines
    QColor softInk; ///< second-rank text
    QColor line; ///< hairlines and grids
    QColor accent; ///< focus and what can be pressed
    QColor accentInk; ///< text on accent
    QColor hatch; ///< the lines of "not seen"
    std::array<QColor, 5> gradeFill; ///< slate, through ochre, to rust-brown; lightness falls from each to the next
    std::array<QColor, 5> gradeInk; ///< the numeral on it
    ThemeKind kind = ThemeKind::light;
    Size size = {};

    [[nodiscard]] const QColor& fill(Grade grade) const
    {
        return gradeFill[static_cast<std::size_t>(numeral(grade)) - 1];
    }
    [[nodiscard]] const QColor& numeralInk(Grade grade) const
    {
        return gradeInk[static_cast<std::size_t>(numeral(grade)) - 1];
    }

    [[nodiscard]] static const Theme& light();
    [[nodiscard]] static const Theme& darkTheme();
    [[nodiscard]] static const Theme& sunlight(); ///< near black on white, for a screen in the sun
    [[nodiscard]] static const Theme& print(); ///< white ground, for paper
    [[nodiscard]] static const Theme& of(ThemeKind kind);
};

/// `share` of `front` over `back`, as an opaque colour.
[[nodiscard]] QColor mixed(const QColor& front, const QColor& back, double share);

} // namespace padside
