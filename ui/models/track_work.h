// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/kind_lesson.h"
#include "core/track/track_record.h"
#include "ui/models/long_work.h"

#include <QString>

namespace padside {

/// What looking back over a whole file needs. Nothing of the window's thread is touched; the catalogue outlives it.
struct LookBack
{
    QString path;
    const Catalogue& catalogue;
    Date today{};
};

/// Holds all forecasts kept in the file against its record, with a store of its own. Empty if `tell` asked to stop.
/// Throws StoreError.
[[nodiscard]] std::optional<TrackSummary> gatherTrack(const LookBack& file, const LongWork::Tell& tell);

/// Learns the life of each part kind from all units of the file, retired ones and parts taken out too. The same record
/// gives the same lessons. Empty if `tell` asked to stop. Throws StoreError.
[[nodiscard]] std::optional<std::vector<KindLesson>> learnLives(const LookBack& file, const LongWork::Tell& tell);

} // namespace padside
