// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/acknowledgement.h" // before id.h, for moc

#include <QUndoCommand>

namespace padside {

class RecordBook;

/// Acknowledges a flag, or takes an acknowledgement back; either can be undone. What the store refuses is said by
/// RecordBook::failed and the command leaves the stack. Nothing is ever removed from the file: an acknowledgement made
/// again is a new one.
class AcknowledgeCommand final : public QUndoCommand
{
public:
    enum class Way { acknowledge, takeBack };

    /// To acknowledge, key and moment are filled in here; to take back, `acknowledgement` is one of the record.
    AcknowledgeCommand(RecordBook& book, Way way, Acknowledgement acknowledgement);

    void redo() override;
    void undo() override;

private:
    void carryOut(Way way);

    RecordBook& m_book;
    Way m_way;
    Acknowledgement m_acknowledgement;
};

} // namespace padside
