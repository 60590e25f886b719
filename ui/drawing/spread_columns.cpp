// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/spread_columns.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>

namespace padside {

SpreadColumns::SpreadColumns(QTableView& table)
    : QObject(&table)
    , m_table(table)
{
    table.viewport()->installEventFilter(this);
}

void SpreadColumns::fit()
{
    m_table.resizeColumnsToContents();
    QHeaderView& columns = *m_table.horizontalHeader();
    int left = columns.count() - columns.hiddenSectionCount();
    int spare = m_table.viewport()->width() - columns.length();
    for (int column = 0; column < columns.count() && spare > 0; ++column) {
        if (columns.isSectionHidden(column))
            continue;
        const int share = spare / left;
        columns.resizeSection(column, columns.sectionSize(column) + share);
        spare -= share;
        --left;
    }
}

bool SpreadColumns::eventFilter(QObject* watched, QEvent* event)
{
    const bool handled = QObject::eventFilter(watched, event);
    if (event->type() == QEvent::Resize)
        fit();
    return handled;
}

} // namespace padside
