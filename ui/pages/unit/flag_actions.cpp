// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/flag_actions.h"

#include "core/flags/acknowledge.h"
#include "ui/pages/unit/acknowledge_dialog.h"
#include "ui/pages/unit/next_model.h"

#include <QGuiApplication>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace padside {

FlagActions::FlagActions(NextModel& model, QListView& list)
    : QObject(&list)
    , m_model(model)
    , m_list(list)
    , m_button(new QPushButton(tr("Ac&knowledge…")))
{
    m_button->setObjectName(u"acknowledge"_s);
    m_button->setEnabled(false);
    m_list.setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_button, &QPushButton::clicked, this, &FlagActions::act);
    auto* key = new QShortcut(Qt::Key_A, &m_list);
    key->setContext(Qt::WidgetShortcut);
    connect(key, &QShortcut::activated, this, &FlagActions::act);
    connect(&m_list, &QListView::customContextMenuRequested, this, &FlagActions::showMenu);
    connect(m_list.selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { refresh(m_mayWrite); });
    const auto unfold = [this](const QModelIndex& index) {
        if (m_model.isFold(index))
            keepRow([this] { m_model.showAcknowledged(!m_model.acknowledgedShown()); });
    };
    // Once a click: a double click activates too, and on some desktops a single one does.
    connect(&m_list, &QListView::clicked, this, [this, unfold](const QModelIndex& index) {
        if (m_list.style()->styleHint(QStyle::SH_ItemView_ActivateItemOnSingleClick, nullptr, &m_list) == 0)
            unfold(index);
    });
    connect(&m_list, &QListView::activated, this, [unfold](const QModelIndex& index) {
        if (QGuiApplication::mouseButtons() == Qt::NoButton)
            unfold(index);
    });
}

const Flag* FlagActions::inFront() const
{
    return m_model.flagAt(m_list.currentIndex());
}

void FlagActions::refresh(bool mayWrite)
{
    m_mayWrite = mayWrite;
    const Flag* flag = inFront();
    m_button->setEnabled(mayWrite && flag != nullptr);
    const bool isAcknowledged = flag != nullptr && flag->acknowledged;
    m_button->setText(isAcknowledged ? tr("Ta&ke back") : tr("Ac&knowledge…"));
    m_button->setToolTip(isAcknowledged ? tr("The flag stands again (A)")
                                        : tr("Say why the chosen flag may stand as it is (A)"));
    m_button->setAccessibleDescription(m_button->toolTip());
}

void FlagActions::act()
{
    const Flag* flag = m_mayWrite ? inFront() : nullptr;
    if (flag == nullptr)
        return;
    if (flag->acknowledged)
        keepRow([this, id = flag->acknowledged->id] { Q_EMIT takenBack(id); });
    else
        ask(*flag);
}

void FlagActions::keepRow(const std::function<void()>& change)
{
    const int row = m_list.currentIndex().row();
    change();
    m_list.setCurrentIndex(m_model.index(std::min(row, m_model.rowCount() - 1)));
}

void FlagActions::ask(const Flag& flag)
{
    const QModelIndex index = m_list.currentIndex();
    auto* dialog
        = new AcknowledgeDialog(index.data().toString(), index.data(NextModel::reasonRole).toString(), m_list.window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog, acknowledgement = acknowledgementOf(flag)]() mutable {
        acknowledgement.reason = dialog->reason().toStdString();
        keepRow([&] { Q_EMIT acknowledged(acknowledgement); });
        m_list.setFocus();
    });
    dialog->open();
}

void FlagActions::showMenu(const QPoint& where)
{
    const QModelIndex index = m_list.indexAt(where);
    if (m_model.flagAt(index) == nullptr || !m_mayWrite)
        return;
    m_list.setCurrentIndex(index);
    auto* menu = new QMenu(&m_list);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    menu->addAction(m_button->text(), this, &FlagActions::act);
    menu->popup(m_list.viewport()->mapToGlobal(where));
}

} // namespace padside
