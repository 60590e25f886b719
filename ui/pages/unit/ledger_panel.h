// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/ledger/unit_ledger.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

class QLabel;
class QTreeWidget;

namespace padside {

class RecordBook;

/// A unit's refrigerant account: what it says, then day by day what went in, was recovered and was lost.
class LedgerPanel : public QWidget
{
    Q_OBJECT
public:
    explicit LedgerPanel(RecordBook& book, QWidget* parent = nullptr);

    void setSnapshot(const UnitSnapshot& snapshot);

private:
    enum Column { day, added, recovered, lost, topUp, annualizing, rolling, details, columns };

    void addDay(const LedgerDay& one);
    [[nodiscard]] QString massText(double kilograms) const; ///< empty for nothing
    [[nodiscard]] QString rateText(const std::optional<double>& rate) const;

    RecordBook& m_book;
    QLabel* m_says;
    QTreeWidget* m_days;
};

} // namespace padside
