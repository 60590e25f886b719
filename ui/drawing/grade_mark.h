// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"

#include <QRectF>

class QPainter;

namespace padside {

struct Theme;

/// A grade as a filled mark with its numeral: colour is never the only sign. The numeral's height follows the
/// rectangle's.
void paintGrade(QPainter& painter, const QRectF& area, Grade grade, const Theme& theme);

/// Not seen: hatched, no numeral.
void paintNotSeen(QPainter& painter, const QRectF& area, const Theme& theme);

/// Never looked at: an empty outline.
void paintNoFinding(QPainter& painter, const QRectF& area, const Theme& theme);

} // namespace padside
