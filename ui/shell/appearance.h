// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

struct Theme;

/// Gives the whole program our colours: Fusion style, a palette and a few rules made from the theme.
void applyTheme(const Theme& theme);

} // namespace padside
