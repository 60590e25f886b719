// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "core/record/id.h"

#include <QObject>
#include <QString>

#include <optional>
#include <string>
#include <utility>
#include <vector>

class QUndoStack;

namespace padside {

class RecordBook;

/// Every change of what money is reckoned from, each as one durable write that can be taken back: costs and general
/// figures (in the person's own catalogue), and what is assumed of one unit.
class WorthLog : public QObject
{
    Q_OBJECT
public:
    /// Both outlive it; the steps on the stack refer to it, so it must outlive them or the stack be cleared.
    WorthLog(RecordBook& book, QUndoStack& stack, QObject* parent = nullptr);

    /// The person's own catalogue as the file keeps it; ours alone where it can't be read. Throws StoreError.
    [[nodiscard]] OwnChanges ownChanges() const;

    /// Puts these figures in place of what stands at their paths; an empty one puts ours back. Answers why not, empty
    /// if it was kept. A store that refuses is said by RecordBook::failed.
    QString setFigures(const std::vector<std::pair<std::vector<std::string>, std::optional<double>>>& figures);

    /// Why a figure can't stand at this path; empty if it can. Throws nothing.
    [[nodiscard]] QString problemWith(const std::vector<std::string>& path, double value) const;

    /// Assumes a figure of a unit, or nothing any more. Answers as setFigures.
    QString assume(UnitId unit, const std::string& code, std::optional<double> value);

Q_SIGNALS:
    void costsChanged(); ///< done, taken back or done again
    void unitAssumed(const padside::UnitId& unit);

private:
    RecordBook& m_book;
    QUndoStack& m_stack;
};

} // namespace padside
