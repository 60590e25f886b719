// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/edit_menu.h"

#include "ui/pages/visit/visit_page.h"

#include <QEvent>
#include <QUndoStack>

namespace padside {

using namespace Qt::Literals::StringLiterals;

EditMenu::EditMenu(VisitPage& visit, QWidget* parent)
    : QMenu(tr("&Edit"), parent)
    , m_visit(visit)
    , m_undo(addAction(tr("&Undo"), QKeySequence::Undo, this, [this] { m_visit.undo(); }))
    , m_redo(addAction(tr("&Redo"), QKeySequence::Redo, this, [this] { m_visit.redo(); }))
{
    m_undo->setObjectName(u"undo"_s);
    m_redo->setObjectName(u"redo"_s);
    const QUndoStack& steps = m_visit.steps();
    for (const auto& changed : {&QUndoStack::undoTextChanged, &QUndoStack::redoTextChanged})
        connect(&steps, changed, this, &EditMenu::refresh);
    for (const auto& changed : {&QUndoStack::canUndoChanged, &QUndoStack::canRedoChanged})
        connect(&steps, changed, this, &EditMenu::refresh);
    m_visit.installEventFilter(this);
    refresh();
}

bool EditMenu::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &m_visit && (event->type() == QEvent::Show || event->type() == QEvent::Hide))
        refresh();
    return QMenu::eventFilter(watched, event);
}

void EditMenu::refresh()
{
    const QUndoStack& steps = m_visit.steps();
    const bool here = m_visit.isVisible();
    m_undo->setEnabled(here && steps.canUndo());
    m_redo->setEnabled(here && steps.canRedo());
    if (here && m_visit.isClosed())
        m_undo->setText(tr("&Undo: the visit is closed, correct it with a reason"));
    else
        m_undo->setText(m_undo->isEnabled() ? tr("&Undo %1").arg(steps.undoText()) : tr("&Undo"));
    m_redo->setText(m_redo->isEnabled() ? tr("&Redo %1").arg(steps.redoText()) : tr("&Redo"));
}

} // namespace padside
