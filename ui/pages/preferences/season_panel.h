// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/site.h"
#include "core/record/unit.h"

#include <QWidget>

#include <array>
#include <vector>

class QGridLayout;
class QLabel;
class QSpinBox;

namespace padside {

class RecordBook;

/// The weeks of the spring and fall season of every site, in one table. South of the equator spring is late in the
/// year: one button swaps the two.
class SeasonPanel : public QWidget
{
    Q_OBJECT
public:
    explicit SeasonPanel(RecordBook& book, QWidget* parent = nullptr);

    /// What stands in the way of keeping the weeks; empty if nothing does.
    [[nodiscard]] QString problem() const;
    /// Writes the sites whose weeks differ. False: the store refused, as RecordBook::failed says.
    bool keep();

private:
    struct Row
    {
        Site site;
        std::array<QSpinBox*, 4> weeks{}; ///< spring first, spring last, fall first, fall last
        QLabel* days = nullptr;
    };

    void addRow(QGridLayout& grid, const Site& site);
    [[nodiscard]] static Site edited(const Row& row);
    [[nodiscard]] QString problemOf(const Row& row) const;
    [[nodiscard]] QString daysOf(const Row& row) const;
    void swap(const Row& row);
    void showDays();

    RecordBook& m_book;
    std::vector<Row> m_rows;
};

} // namespace padside
