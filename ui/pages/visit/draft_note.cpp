// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/draft_note.h"

#include "core/store/drafts.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/pages/visit/lettering.h"

#include <QKeyEvent>

namespace padside {

DraftNote::DraftNote(RecordBook& book, QWidget* parent)
    : QPlainTextEdit(parent)
    , m_book(book)
{
    setTabChangesFocus(true);
    connect(this, &QPlainTextEdit::textChanged, this, &DraftNote::keep);
}

void DraftNote::showNote(const QString& key, const QString& entered)
{
    if (key == m_key && m_unfinished)
        return;
    m_key = key;
    std::optional<QString> kept;
    m_book.attempt([&] { kept = m_book.store().drafts().text(key); });
    m_unfinished = kept && *kept != entered;
    setQuietly(kept.value_or(entered));
}

void DraftNote::settle(const QString& entered)
{
    m_unfinished = false;
    m_book.attempt([this] { m_book.store().drafts().remove(m_key); });
    setQuietly(entered);
}

void DraftNote::focusOutEvent(QFocusEvent* event)
{
    QPlainTextEdit::focusOutEvent(event);
    if (m_unfinished)
        Q_EMIT leftWith(toPlainText());
}

bool DraftNote::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && !m_unfinished && isUndoOrRedo(*static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return true;
    }
    return QPlainTextEdit::event(event);
}

void DraftNote::keep()
{
    if (m_quiet || isReadOnly())
        return;
    m_unfinished = true;
    m_book.attempt([this] { m_book.store().drafts().setText(m_key, toPlainText()); });
}

void DraftNote::setQuietly(const QString& text)
{
    if (text == toPlainText())
        return;
    m_quiet = true;
    setPlainText(text);
    m_quiet = false;
}

} // namespace padside
