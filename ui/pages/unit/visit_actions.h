// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace padside {

class LocalSpeaker;

/// The row of buttons: start a visit or go on with the open one, and the summary of the last visit.
class VisitActions : public QWidget
{
    Q_OBJECT
public:
    explicit VisitActions(const LocalSpeaker& speaker, QWidget* parent = nullptr);

    /// `mayWrite` is false for a file opened read-only: no visit can be started then.
    void setSnapshot(const UnitSnapshot& snapshot, bool mayWrite);
    [[nodiscard]] std::vector<QPushButton*> buttons() const; ///< from left to right

Q_SIGNALS:
    void startRequested(padside::VisitReason reason);
    void resumeRequested(const padside::VisitId& visit);
    void summaryRequested(const padside::VisitId& visit);

private:
    [[nodiscard]] QPushButton* button(const QString& name, const QString& text, const QString& what);
    QPushButton* startButton(const QString& name, const QString& text, const QString& what, VisitReason reason);

    const LocalSpeaker& m_speaker;
    QLabel* m_first; ///< invites to the first visit
    QPushButton* m_spring;
    QPushButton* m_fall;
    QPushButton* m_callOut;
    QPushButton* m_resume;
    QPushButton* m_summary;
    VisitId m_open;
    VisitId m_last;
};

} // namespace padside
