// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/view_menu.h"

#include <QActionGroup>

namespace padside {

using namespace Qt::Literals::StringLiterals;

ViewMenu::ViewMenu(const Theme& worn, QWidget* parent)
    : QMenu(tr("Vie&w"), parent)
    , m_themes(new QActionGroup(this))
{
    const auto add = [&](ThemeKind kind, const QString& text) {
        QAction* action = addAction(text, this, &ViewMenu::ask);
        action->setCheckable(true);
        action->setData(static_cast<int>(kind));
        action->setChecked(worn.kind == kind);
        m_themes->addAction(action);
    };
    add(ThemeKind::light, tr("&Light"));
    add(ThemeKind::dark, tr("&Dark"));
    add(ThemeKind::sunlight, tr("Sunli&ght (strong contrast)"));
    addSeparator();
    m_fieldSize = addAction(tr("Field si&ze (touch and gloves)"), this, &ViewMenu::ask);
    m_fieldSize->setObjectName(u"fieldSize"_s);
    m_fieldSize->setCheckable(true);
    m_fieldSize->setChecked(worn.size == Size::field());
}

void ViewMenu::ask()
{
    const QAction* chosen = m_themes->checkedAction();
    Q_EMIT lookRequested(
        Look{chosen ? static_cast<ThemeKind>(chosen->data().toInt()) : ThemeKind::light, m_fieldSize->isChecked()});
}

} // namespace padside
