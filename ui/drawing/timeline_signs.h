// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/entry.h"
#include "core/record/visit.h"

#include <QRectF>

class QPainter;

namespace padside {

struct Theme;

/// Small signs beside the grades of a timeline. Each is told apart by its shape, not by its colour.
void paintTreatmentSign(QPainter& painter, const QRectF& area, TreatmentKind kind, const Theme& theme);

/// A part was replaced: an upright bar over the whole lane.
void paintFittedSign(QPainter& painter, const QRectF& area, const Theme& theme);

/// There are photographs: a folded corner at the top right of a mark.
void paintPhotoSign(QPainter& painter, const QRectF& mark, const Theme& theme);

/// An entry was corrected: a dot at the bottom left of a mark.
void paintCorrectedSign(QPainter& painter, const QRectF& mark, const Theme& theme);

/// Marks behind this one had no room: the edge of a second sheet, right and below.
void paintMoreSign(QPainter& painter, const QRectF& mark, const Theme& theme);

/// A visit: a disc for spring and fall, a diamond for a call-out; hollow while it is open.
void paintVisitSign(QPainter& painter, const QRectF& area, VisitReason reason, bool open, const Theme& theme);

/// Refrigerant: a triangle up for added, down for recovered or lost.
void paintChargeSign(QPainter& painter, const QRectF& area, ChargeDirection direction, const Theme& theme);

/// A grade that holds: filled while it is sure, hatched in the grade's colour once the zone was not seen.
void paintBand(QPainter& painter, const QRectF& area, Grade grade, bool sure, const Theme& theme);

} // namespace padside
