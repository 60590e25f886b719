// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPlainTextEdit>

namespace padside {

class RecordBook;

/// Several lines of text, kept in the store as they are typed and offered for entering when the cursor leaves.
class DraftNote : public QPlainTextEdit
{
    Q_OBJECT
public:
    explicit DraftNote(RecordBook& book, QWidget* parent = nullptr);

    void showNote(const QString& key, const QString& entered);
    void settle(const QString& entered);
    [[nodiscard]] bool hasUnfinished() const { return m_unfinished; }

Q_SIGNALS:
    void leftWith(const QString& text); ///< the cursor left an unfinished text

protected:
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    void keep();
    void setQuietly(const QString& text);

    RecordBook& m_book;
    QString m_key;
    bool m_unfinished = false;
    bool m_quiet = false;
};

} // namespace padside
