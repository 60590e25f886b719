// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"
#include "core/schedule/planned_trips.h"

#include <QUndoCommand>

#include <functional>

namespace padside {

/// The days chosen for a site, before and after one more was chosen (moved to, kept) or let go.
struct TripMove
{
    SiteId site;
    std::vector<MovedTrip> before;
    std::vector<MovedTrip> after;
    Date from{}; ///< the trip's day before
    Date to{}; ///< and after
};

/// Moves a trip, keeps its day or lets it move again; can be undone. What the file refuses leaves no trace.
class MoveTripCommand : public QUndoCommand
{
public:
    /// Keeps the days and shows the trip on `on`; false: refused.
    using Apply = std::function<bool(SiteId site, const std::vector<MovedTrip>& moves, Date on)>;

    MoveTripCommand(const QString& name, TripMove move, Apply apply)
        : QUndoCommand(name)
        , m_move(std::move(move))
        , m_apply(std::move(apply))
    {
    }

    void redo() override { setObsolete(!m_apply(m_move.site, m_move.after, m_move.to)); }
    void undo() override { setObsolete(!m_apply(m_move.site, m_move.before, m_move.from)); }

private:
    TripMove m_move;
    Apply m_apply;
};

} // namespace padside
