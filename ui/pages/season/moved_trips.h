// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"
#include "core/schedule/planned_trips.h"

#include <QString>

#include <vector>

namespace padside {

class RecordBook;

/// The days people chose for trips, kept in the file as drafts so that they are there tomorrow.
class MovedTrips
{
public:
    explicit MovedTrips(RecordBook& book)
        : m_book(book)
    {
    }

    /// The chosen days of a site that are not over. What can't be read is said by the book and left out.
    [[nodiscard]] std::vector<MovedTrip> of(SiteId site) const;

    /// Keeps them; false if the file refused, which the book has then said.
    bool keep(SiteId site, const std::vector<MovedTrip>& moves);

private:
    RecordBook& m_book;
};

/// One line a trip: the day worked out, the day chosen and, where it was kept, from which day on what comes to be due
/// goes along; in ISO 8601.
[[nodiscard]] QString movedTripsText(const std::vector<MovedTrip>& moves);

/// Reads what movedTripsText writes; empty if it is something else.
[[nodiscard]] std::optional<std::vector<MovedTrip>> parseMovedTrips(const QString& text);

} // namespace padside
