// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>

class QTableView;

namespace padside {

/// Gives each column of a table what it shows needs, and shares out evenly the room that is left beside them.
class SpreadColumns final : public QObject
{
    Q_OBJECT
public:
    explicit SpreadColumns(QTableView& table);

    /// Call it when what the table shows has changed.
    void fit();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QTableView& m_table;
};

} // namespace padside
