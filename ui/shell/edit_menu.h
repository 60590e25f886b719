// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QMenu>

namespace padside {

class VisitPage;

/// Undo and redo of the visit on the page, with the names of the steps.
class EditMenu : public QMenu
{
    Q_OBJECT
public:
    explicit EditMenu(VisitPage& visit, QWidget* parent = nullptr);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();

    VisitPage& m_visit;
    QAction* m_undo;
    QAction* m_redo;
};

} // namespace padside
