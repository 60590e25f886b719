// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace padside {

class DraftNote;
class RecordBook;

/// The end of a visit: what changed, what that does to the outlook, what was not looked at, a note on the whole visit;
/// closing it, and correcting it later.
class ClosingPanel : public QWidget
{
    Q_OBJECT
public:
    ClosingPanel(RecordBook& book, VisitLog& log, QWidget* parent = nullptr);

    /// `unfinished` names what was typed but could not be entered yet: it has to be settled before closing.
    void showSheet(const VisitSheet& sheet, const QStringList& unfinished);
    void focusFirst();

Q_SIGNALS:
    void closeConfirmed();
    void nextOpenZoneRequested();
    void correctingChanged(); ///< VisitLog::correctionReason is another now

private:
    void showChanges(const VisitSheet& sheet);
    void showOutlook(const VisitSheet& sheet);
    void askToClose();
    void setAsking(bool asking);
    void startCorrecting();

    RecordBook& m_book;
    VisitLog& m_log;
    QStringList m_unfinished;
    int m_left = 0;
    QLabel* m_changes;
    QLabel* m_outlookHeading;
    QLabel* m_outlook; ///< what the visit did to it
    QLabel* m_open;
    QPushButton* m_goToOpen;
    DraftNote* m_note;
    QPushButton* m_close;
    QWidget* m_question;
    QLabel* m_questionText;
    QPushButton* m_confirm;
    QPushButton* m_keepOpen;
    QWidget* m_correcting;
    QLineEdit* m_reason;
    QPushButton* m_correct;
};

} // namespace padside
