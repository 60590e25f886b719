// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline_geometry.h"

namespace padside {

/// Places what a lane is expected to become, if it has an outlook of which something is in sight.
void placeOutlook(TimelineGeometry& geometry, const TimelineLane& lane, const PlacedLane& placedLane);

} // namespace padside
