// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/unit_worth.h"

#include <QWidget>

class QLabel;

namespace padside {

struct Theme;
class RecordBook;
class WorthBarsView;

/// Carry on or replace: both yearly costs as bars, the answer, what would turn it, and what is missing or left out.
class WorthComparison : public QWidget
{
    Q_OBJECT
public:
    WorthComparison(const RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    void show(const UnitRecord& record, const UnitWorth& worth); ///< both are read, not kept
    using QWidget::show;

private:
    [[nodiscard]] QString answerOf(const UnitRecord& record, const UnitWorth& worth) const;
    [[nodiscard]] QString turningOf(const UnitWorth& worth) const;
    [[nodiscard]] QString missingOf(const UnitRecord& record, const UnitWorth& worth) const;

    const RecordBook& m_book;
    WorthBarsView* m_bars;
    QLabel* m_answer;
    QLabel* m_turning;
    QLabel* m_missing;
};

} // namespace padside
