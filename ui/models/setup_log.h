// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/fitted_unit.h" // before id.h, for moc
#include "core/record/site.h"

#include <QCoreApplication>
#include <QUndoStack>

#include <vector>

namespace padside {

class RecordBook;

/// Everything that can be done to sites and units, each as one durable write that can be taken back. No widgets here.
/// Every function answers whether it was written; if not, RecordBook::failed has said why and nothing changed.
class SetupLog
{
    Q_DECLARE_TR_FUNCTIONS(SetupLog)
public:
    /// Both outlive it.
    SetupLog(RecordBook& book, QUndoStack& stack);

    bool add(std::vector<Site> sites, std::vector<FittedUnit> units);
    bool change(const Site& before, const Site& after);
    bool change(const Unit& before, const Unit& after);
    /// Retires a unit on a day; the reason is kept in its note. Refused while a visit is open there.
    bool retire(UnitId id, Date on, const QString& because);
    bool bringBack(UnitId id);
    /// Removes a unit that was added by mistake; one that was visited is refused.
    bool remove(UnitId id);

private:
    bool push(QUndoCommand* command);
    [[nodiscard]] std::optional<Unit> unit(UnitId id) const;

    RecordBook& m_book;
    QUndoStack& m_stack;
};

} // namespace padside
