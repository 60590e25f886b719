// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

/// How large things are that are pressed or read, in pixels. The one place for it: widgets take their sizes from the
/// theme they paint with, Qt's own controls from the style made for it.
struct Size
{
    int target = 40; ///< what is pressed on the page of a visit
    int row = 36; ///< a line of the list of zones
    int entry = 0; ///< everything else that can be pressed, on all pages; 0: as the desktop has it
    int scrollBar = 0; ///< its width; 0: as the desktop has it
    double text = 1; ///< times the desktop's letters

    /// For a desk, keys and a mouse.
    [[nodiscard]] static constexpr Size desk() { return {}; }
    /// For a touch screen and gloves: nothing that is pressed is under 44 px, and the letters are larger.
    [[nodiscard]] static constexpr Size field() { return {46, 46, 46, 24, 1.2}; }

    /// A width made for letters of the desktop's size.
    [[nodiscard]] constexpr int wide(int pixels) const { return static_cast<int>(pixels * text); }

    friend bool operator==(const Size&, const Size&) = default;
};

} // namespace padside
