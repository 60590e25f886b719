// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/entry.h"
#include "core/record/kept_forecast.h"
#include "core/record/visit.h"

#include <optional>
#include <span>
#include <vector>

namespace padside {

class Connection;

/// Visits and what is entered at them. Each call is one durable write. Entries of an open visit may be put again (same
/// id: replaced) and removed; on a closed visit only an entry with a correction is accepted, everything else throws
/// StoreError with ProblemKind::refused.
class VisitBook
{
public:
    explicit VisitBook(Connection& connection);

    /// Opens a visit. A unit has at most one open visit at a time: a second is refused.
    void open(const Visit& visit);
    [[nodiscard]] std::vector<Visit> openVisits() const; ///< oldest first
    [[nodiscard]] std::optional<Visit> openVisitOf(UnitId unit) const;
    [[nodiscard]] std::optional<Visit> visit(VisitId id) const;
    /// Changes reason, technician, conditions and note of an open visit (not its unit or date).
    void change(const Visit& visit);
    /// Closes the visit; `forecasts` are those of its unit as of today, kept with it in the same write.
    void close(VisitId id, const Instant& at, std::span<const KeptForecast> forecasts = {});
    /// Removes an open visit with everything entered at it.
    void discard(VisitId id);

    /// One finding per zone and phase stands at an open visit: a new one for the same zone and phase takes the old
    /// one's place.
    void put(const Finding& finding);
    void put(const Reading& reading);
    void put(const Treatment& treatment);
    void put(const ChargeEntry& charge);
    /// The file must have been kept by PhotoFiles::keep before.
    void put(const Photo& photo);
    void put(const FollowUp& followUp);

    void remove(const Finding& finding);
    void remove(const Reading& reading);
    void remove(const Treatment& treatment);
    void remove(const ChargeEntry& charge);
    void remove(const Photo& photo); ///< the row goes, the file stays
    void remove(const FollowUp& followUp);

private:
    Connection& m_connection;
};

} // namespace padside
