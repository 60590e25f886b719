// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/site_season.h"
#include "ui/paper/sheet.h"

#include <optional>

namespace padside {

class RecordBook;

/// The sheet for the day of a trip; empty if a record can't be read, which the book has then said.
[[nodiscard]] std::optional<Sheet> daySheet(RecordBook& book, const SiteSeason& site, std::size_t trip);

/// A blank field sheet for one unit of a trip; empty as above.
[[nodiscard]] std::optional<Sheet> fieldSheet(RecordBook& book, const SeasonTrip& trip, UnitId unit);

} // namespace padside
