// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/edit_menu.h"

#include <QEvent>
#include <QUndoStack>

#include <algorithm>
#include <utility>

namespace padside {

using namespace Qt::Literals::StringLiterals;

EditMenu::EditMenu(QWidget* parent)
    : QMenu(tr("&Edit"), parent)
    , m_undo(addAction(tr("&Undo"), QKeySequence::Undo, this,
                       [this] {
                           if (const Steps* steps = inFront())
                               steps->undo();
                       }))
    , m_redo(addAction(tr("&Redo"), this, [this] {
        if (const Steps* steps = inFront())
            steps->redo();
    }))
{
    m_undo->setObjectName(u"undo"_s);
    m_redo->setObjectName(u"redo"_s);
    // The one the key sheet names does on every desktop; the desktop's own do too.
    const QKeySequence named(Qt::CTRL | Qt::SHIFT | Qt::Key_Z);
    QList<QKeySequence> again = QKeySequence::keyBindings(QKeySequence::Redo);
    again.removeAll(named);
    again.prepend(named);
    m_redo->setShortcuts(again);
    refresh();
}

void EditMenu::follow(QWidget& page, Steps steps)
{
    // Once, also where several pages share the same steps.
    for (const auto& changed : {&QUndoStack::undoTextChanged, &QUndoStack::redoTextChanged})
        connect(&steps.names, changed, this, &EditMenu::refresh, Qt::UniqueConnection);
    for (const auto& changed : {&QUndoStack::canUndoChanged, &QUndoStack::canRedoChanged})
        connect(&steps.names, changed, this, &EditMenu::refresh, Qt::UniqueConnection);
    page.installEventFilter(this);
    m_pages.push_back({&page, std::move(steps)});
    refresh();
}

bool EditMenu::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show || event->type() == QEvent::Hide)
        refresh();
    return QMenu::eventFilter(watched, event);
}

const EditMenu::Steps* EditMenu::inFront() const
{
    const auto found
        = std::ranges::find_if(m_pages, [](const Followed& one) { return one.page && one.page->isVisible(); });
    return found == m_pages.end() ? nullptr : &found->steps;
}

void EditMenu::refresh()
{
    const Steps* steps = inFront();
    m_undo->setEnabled(steps && steps->names.canUndo());
    m_redo->setEnabled(steps && steps->names.canRedo());
    if (steps && steps->isClosed && steps->isClosed())
        m_undo->setText(tr("&Undo: the visit is closed, correct it with a reason"));
    else
        m_undo->setText(m_undo->isEnabled() ? tr("&Undo %1").arg(steps->names.undoText()) : tr("&Undo"));
    m_redo->setText(m_redo->isEnabled() ? tr("&Redo %1").arg(steps->names.redoText()) : tr("&Redo"));
}

} // namespace padside
