// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/shell/appearance.h"

#include <QMenu>

class QActionGroup;

namespace padside {

/// How the program is seen: its colours and its size. They change at once.
class ViewMenu : public QMenu
{
    Q_OBJECT
public:
    explicit ViewMenu(const Theme& worn, QWidget* parent = nullptr);

Q_SIGNALS:
    void lookRequested(const padside::Look& look);

private:
    void ask();

    QActionGroup* m_themes;
    QAction* m_fieldSize;
};

} // namespace padside
