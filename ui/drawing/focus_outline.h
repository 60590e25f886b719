// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>

class QPainter;
class QPalette;

namespace padside {

/// Shows where the keys go: a strong line in the accent colour, and inside it a thin one in the colour of the ground,
/// so that it is seen on a control that is itself in the accent colour.
void paintFocusOutline(QPainter& painter, const QRectF& area, const QPalette& colours);

} // namespace padside
