// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/rates.h"
#include "ui/drawing/timeline_painter.h"

namespace padside {

/// The ground of what has not come yet: from today on, toned and lightly hatched.
void paintOutlookGround(QPainter& painter, const TimelinePicture& picture);

/// What each lane is expected to become: a stave of five lines, grade 1 on top; the deeper a line's colour, the
/// likelier the grade. The dates of spent lie across it as a whisker from 10 to 90 % with its mark at 50 %.
void paintOutlooks(QPainter& painter, const TimelinePicture& picture);

/// The band alone over one stretch.
void paintShares(QPainter& painter, const QRectF& area, const GradeChances& chances, const Theme& theme);

/// The whisker and the mark of spent; see PlacedOutlook.
void paintSpentRange(QPainter& painter, const PlacedOutlook& placed, const Theme& theme);

/// The colour behind the outlook.
[[nodiscard]] QColor outlookGround(const Theme& theme);

/// A grade that is expected, not seen: a broken outline.
void paintExpectedGrade(QPainter& painter, const QRectF& area, Grade grade, const Theme& theme);

} // namespace padside
