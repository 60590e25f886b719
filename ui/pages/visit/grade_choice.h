// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/entry.h"

#include <QWidget>

#include <array>

class QLabel;
class QPushButton;

namespace padside {

struct Theme;
struct ZoneLine;
class GradeButton;
class RecordBook;

/// The five grades and "not seen", as rows to press or keys: 1-5, N and then the number of the reason.
class GradeChoice : public QWidget
{
    Q_OBJECT
public:
    GradeChoice(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, Phase phase);

    bool digit(int digit); ///< a grade, or a reason while one is asked for; false: there is no such choice
    void askReason();
    void cancelReason();
    [[nodiscard]] bool isAskingReason() const { return m_askingReason; }

Q_SIGNALS:
    void graded(padside::Grade grade);
    void notSeen(padside::NotSeenReason reason);

protected:
    void changeEvent(QEvent* event) override;

private:
    void alignSentences(); ///< under one another, beside words of any width
    void setAskingReason(bool asking);

    RecordBook& m_book;
    std::array<GradeButton*, 5> m_grades{};
    GradeButton* m_notSeen;
    QWidget* m_gradeRows;
    QWidget* m_reasonRows;
    bool m_askingReason = false;
};

} // namespace padside
