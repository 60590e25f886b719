// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <optional>

class QDateEdit;
class QPushButton;

namespace padside {

class DraftField;
class EntryLines;
class RecordBook;

/// "Look again": a promise to look at a zone within a window of days, and why.
class FollowUpPanel : public QWidget
{
    Q_OBJECT
public:
    FollowUpPanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, const VisitSheet& sheet, bool mayWrite);
    /// Writes a reason in and goes there; nothing is promised until it is entered.
    void suggest(const QString& why);

Q_SIGNALS:
    void refused(const QString& sentence);

private:
    void enter();

    RecordBook& m_book;
    VisitLog& m_log;
    std::optional<ZoneLine> m_line;
    DraftField* m_why;
    QDateEdit* m_earliest;
    QDateEdit* m_latest;
    QPushButton* m_enter;
    EntryLines* m_entries;
};

} // namespace padside
