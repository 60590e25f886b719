// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/draft_field.h"

#include "core/store/drafts.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/pages/visit/lettering.h"

#include <QKeyEvent>

namespace padside {

DraftField::DraftField(RecordBook& book, QWidget* parent)
    : QLineEdit(parent)
    , m_book(book)
{
    makeLarge(*this);
    connect(this, &QLineEdit::textEdited, this, &DraftField::keep);
}

DraftField::DraftField(RecordBook& book, const QString& objectName, const QString& accessibleName)
    : DraftField(book)
{
    setObjectName(objectName);
    setAccessibleName(accessibleName);
}

void DraftField::show(const QString& key, const QString& entered)
{
    if (key == m_key && m_unfinished)
        return;
    m_key = key;
    m_unfinished = false;
    std::optional<QString> kept;
    m_book.attempt([&] { kept = m_book.store().drafts().text(key); });
    m_unfinished = kept && *kept != entered; // the same: entered, but the program ended before the draft was dropped
    const QString text = kept.value_or(entered);
    if (text != this->text())
        setText(text);
}

void DraftField::settle(const QString& entered)
{
    m_unfinished = false;
    m_book.attempt([this] { m_book.store().drafts().remove(m_key); });
    setText(entered);
}

bool DraftField::event(QEvent* event)
{
    // While something is being typed here, undo is the typing's; otherwise it is the visit's.
    if (event->type() == QEvent::ShortcutOverride && !m_unfinished && isUndoOrRedo(*static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return true;
    }
    return QLineEdit::event(event);
}

void DraftField::keep(const QString& text)
{
    m_unfinished = true;
    m_book.attempt([&] { m_book.store().drafts().setText(m_key, text); });
}

} // namespace padside
