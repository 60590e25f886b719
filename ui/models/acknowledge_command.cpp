// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/acknowledge_command.h"

#include "core/store/judgement_book.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"

#include <QCoreApplication>

#include <utility>

namespace padside {

AcknowledgeCommand::AcknowledgeCommand(RecordBook& book, Way way, Acknowledgement acknowledgement)
    : QUndoCommand(way == Way::acknowledge
                       ? QCoreApplication::translate("AcknowledgeCommand", "acknowledging a flag")
                       : QCoreApplication::translate("AcknowledgeCommand", "taking an acknowledgement back"))
    , m_book(book)
    , m_way(way)
    , m_acknowledgement(std::move(acknowledgement))
{
}

void AcknowledgeCommand::redo()
{
    carryOut(m_way);
}

void AcknowledgeCommand::undo()
{
    carryOut(m_way == Way::acknowledge ? Way::takeBack : Way::acknowledge);
}

void AcknowledgeCommand::carryOut(Way way)
{
    const bool well = m_book.change(m_acknowledgement.unitId, [&] {
        if (way == Way::takeBack)
            return m_book.store().judgements().takeBack(m_acknowledgement.id, m_book.now());
        Acknowledgement again = m_acknowledgement;
        again.id = m_book.ids().make<AcknowledgementId>();
        again.at = m_book.now();
        again.takenBackAt.reset();
        m_book.store().judgements().acknowledge(again);
        m_acknowledgement = std::move(again);
    });
    if (!well)
        setObsolete(true);
}

} // namespace padside
