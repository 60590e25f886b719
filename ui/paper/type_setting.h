// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_sheet.h"

#include <QFont>

namespace padside {

/// The type of a face, in whole pixels of a tenth of a millimetre, without hinting: lines are as long on every device.
[[nodiscard]] QFont paperFont(Face face);

/// From baseline to baseline.
[[nodiscard]] double leading(Face face);

/// How wide the text is on one line.
[[nodiscard]] double textWidth(const QString& text, Face face);

/// The text broken into lines no wider than `width`; a word longer than that is broken too. Line breaks in the text
/// count; an empty text has no lines.
[[nodiscard]] std::vector<QString> brokenLines(const QString& text, Face face, double width);

/// Lines set one below the other from (0, 0), broken at `width`.
[[nodiscard]] std::vector<Run> setLines(const QString& text, Face face, Ink ink, double width);

/// One line whose right end is at `right`.
[[nodiscard]] TextRun setRight(const QString& text, Face face, Ink ink, double right);

/// One line from (0, 0).
[[nodiscard]] TextRun setLeft(const QString& text, Face face, Ink ink);

/// The text on one line of at most `width`, its end replaced by "…" where it is too long.
[[nodiscard]] QString shortened(const QString& text, Face face, double width);

/// The lowest edge of the runs; 0 if there are none.
[[nodiscard]] double bottomOf(const std::vector<Run>& runs);

} // namespace padside
