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

    /// One figure at its path in the catalogue's text; empty: ours, or none.
    using Figure = std::pair<std::vector<std::string>, std::optional<double>>;
    /// Which figure can't stand, and why.
    struct Refusal
    {
        std::size_t figure = 0;
        QString why; ///< empty: the store refused it, and RecordBook::failed has said why
    };

    /// Puts these figures in place of what stands at their paths, all in one step or none. Empty: it is done.
    std::optional<Refusal> setFigures(const std::vector<Figure>& figures);

    /// Assumes a figure of a unit, or nothing any more. Answers why not, empty if it was kept.
    QString assume(UnitId unit, const std::string& code, std::optional<double> value);

Q_SIGNALS:
    void costsChanged(); ///< done, taken back or done again
    void unitAssumed(const padside::UnitId& unit);

private:
    [[nodiscard]] std::optional<Refusal> firstRefused(const std::vector<std::string>& shipped, OwnChanges changes,
                                                      const std::vector<Figure>& figures) const;

    RecordBook& m_book;
    QUndoStack& m_stack;
};

} // namespace padside
