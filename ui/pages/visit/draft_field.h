// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLineEdit>

namespace padside {

class RecordBook;

/// A line of text whose unfinished input is kept in the store as it is typed and comes back when the field is shown
/// again. The owner says with settle() that the text has been entered.
class DraftField : public QLineEdit
{
    Q_OBJECT
public:
    explicit DraftField(RecordBook& book, QWidget* parent = nullptr);
    /// With the name tests find it by and the one that is read aloud.
    DraftField(RecordBook& book, const QString& objectName, const QString& accessibleName);

    /// Shows what is kept under `key`, else `entered`. Text being typed under the same key is left alone.
    void show(const QString& key, const QString& entered);
    void settle(const QString& entered); ///< forgets the draft and shows what was entered
    [[nodiscard]] bool hasUnfinished() const { return m_unfinished; }

    using QWidget::show;

protected:
    bool event(QEvent* event) override;

private:
    void keep(const QString& text);

    RecordBook& m_book;
    QString m_key;
    bool m_unfinished = false;
};

} // namespace padside
