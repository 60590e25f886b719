// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"

#include <QByteArray>

#include <map>
#include <string>

namespace padside {

struct Theme;

/// The condition that tints a place of the drawing, by the place's code.
using CutawayTints = std::map<std::string, Grade>;

/// The style sheet of our unit drawings in a theme's inks, with the surfaces of graded places in their grade's colour.
/// Lines and surfaces have classes (edge, fine, sheet, metal, …) and no colours of their own. `lit` gives the look of
/// a part pointed at.
[[nodiscard]] QByteArray cutawayStyle(const Theme& theme, const CutawayTints& tints);
[[nodiscard]] QByteArray cutawayLitStyle(const Theme& theme);

/// A drawing with the content of its style element replaced.
[[nodiscard]] QByteArray withStyle(const QByteArray& svg, const QByteArray& style);

} // namespace padside
