// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "core/review/unit_worth.h"

#include <QWidget>

#include <optional>
#include <string>

class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace padside {

class RecordBook;

/// The parts of a unit, those that matter most first, each with its choices: what they cost, the years they gain, and
/// why. Below, the whole of what is said about the chosen line.
class WorthParts : public QWidget
{
    Q_OBJECT
public:
    explicit WorthParts(const RecordBook& book, QWidget* parent = nullptr);

    /// Both are read, not kept. The line chosen before stays chosen.
    void show(const UnitRecord& record, const UnitWorth& worth, bool mayWrite);
    using QWidget::show;

Q_SIGNALS:
    void costsRequested(const QString& partKind, const QString& name);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum Column { what, chance, cost, gained, why, columns };

    void addPart(const UnitRecord& record, const PartWorth& part);
    void addChoice(QTreeWidgetItem* parent, const PartWorth& part, const PartChoice& choice);
    [[nodiscard]] QString aboutPart(const PartWorth& part) const;
    void fitColumns();
    void showChosen();
    [[nodiscard]] QTreeWidgetItem* chosenPart() const;

    const RecordBook& m_book;
    QTreeWidget* m_tree;
    QLabel* m_about;
    QPushButton* m_costs;
    bool m_mayWrite = true;
};

} // namespace padside
