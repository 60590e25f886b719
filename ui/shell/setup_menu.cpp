// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/setup_menu.h"

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/setup/import_dialog.h"
#include "ui/pages/setup/retire_dialog.h"
#include "ui/pages/setup/site_dialog.h"

#include <QAbstractScrollArea>
#include <QMenu>

namespace padside {

SetupMenu::SetupMenu(RecordBook& book, QUndoStack& stack, std::function<std::optional<UnitId>()> selected,
                     QWidget* window)
    : QObject(window)
    , m_book(book)
    , m_log(book, stack)
    , m_selected(std::move(selected))
    , m_window(window)
    , m_menu(new QMenu(tr("Set &up"), window))
{
    fill();
    if (m_book.store().isReadOnly()) { // the window said so when it opened
        for (QAction* action : m_menu->actions())
            action->setEnabled(false);
        return;
    }
    connect(m_menu, &QMenu::aboutToShow, this, &SetupMenu::refresh);
    // Keys work while the menu is closed, whatever it was about when it was open last.
    connect(m_menu, &QMenu::aboutToHide, this, [this] {
        for (const OfUnit& one : m_ofUnit)
            one.action->setEnabled(true);
    });
}

void SetupMenu::fill()
{
    // `text` names the unit: the list may be hidden behind another page.
    const auto ofUnit
        = [this](const QString& text, void (SetupMenu::*does)(), const QString& name, const QKeySequence& keys = {}) {
              QAction* action = m_menu->addAction(text.arg(tr("a unit")), keys, this, does);
              action->setObjectName(name);
              m_ofUnit.push_back({action, text});
              return action;
          };
    m_menu->addAction(tr("Add a &unit…"), QKeySequence::New, this, &SetupMenu::addUnit)
        ->setObjectName(QStringLiteral("setup-add"));
    ofUnit(tr("One &like %1…"), &SetupMenu::oneLikeThis, QStringLiteral("setup-like"),
           QKeySequence(tr("Ctrl+Shift+N")));
    m_menu->addAction(tr("Units from a l&ist…"), QKeySequence(tr("Ctrl+Shift+I")), this, &SetupMenu::importUnits)
        ->setObjectName(QStringLiteral("setup-import"));
    m_menu->addSeparator();
    ofUnit(tr("&Change or move %1…"), &SetupMenu::changeUnit, QStringLiteral("setup-change"),
           QKeySequence(tr("Ctrl+E")));
    m_retire = ofUnit(tr("&Retire %1…"), &SetupMenu::retire, QStringLiteral("setup-retire"));
    m_bringBack = ofUnit(tr("&Bring %1 back"), &SetupMenu::bringBack, QStringLiteral("setup-bring-back"));
    ofUnit(tr("Remove %1: added by &mistake"), &SetupMenu::remove, QStringLiteral("setup-remove"));
    m_menu->addSeparator();
    m_menu->addAction(tr("Add a &site…"), this, &SetupMenu::addSite)->setObjectName(QStringLiteral("setup-add-site"));
    ofUnit(tr("Change the si&te of %1…"), &SetupMenu::changeSite, QStringLiteral("setup-change-site"),
           QKeySequence(tr("Ctrl+Shift+E")));
}

void SetupMenu::attachTo(QAbstractScrollArea* list)
{
    list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(list, &QWidget::customContextMenuRequested, this,
            [this, list](const QPoint& at) { m_menu->popup(list->viewport()->mapToGlobal(at)); });
}

void SetupMenu::refresh()
{
    const auto unit = m_selected() ? record() : std::nullopt;
    QString tag = unit ? shown(unit->unit.tag) : tr("a unit");
    tag.replace(QLatin1Char('&'), QLatin1String("&&"));
    for (const OfUnit& one : m_ofUnit) {
        one.action->setText(one.text.arg(tag));
        one.action->setEnabled(unit.has_value());
    }
    m_retire->setVisible(!unit || !unit->unit.retiredOn);
    m_bringBack->setVisible(unit && unit->unit.retiredOn);
}

std::optional<UnitRecord> SetupMenu::record() const
{
    std::optional<UnitRecord> found;
    if (const auto unit = m_selected())
        m_book.attempt([&] { found = m_book.record(*unit); });
    return found;
}

void SetupMenu::addSite()
{
    auto* dialog = new SiteDialog(m_book, m_log, std::nullopt, m_window);
    connect(dialog, &SiteDialog::kept, this, &SetupMenu::addUnitAt); // a site is of use only with a unit
    dialog->open();
}

void SetupMenu::changeSite()
{
    if (const auto unit = record())
        (new SiteDialog(m_book, m_log, unit->site, m_window))->open();
}

void SetupMenu::addUnit()
{
    std::vector<Site> sites;
    if (!m_book.attempt([&] { sites = m_book.store().sites().sites(); }))
        return;
    const auto beside = record();
    addUnitAt(beside ? beside->site.id : sites.empty() ? SiteId() : sites.front().id);
}

void SetupMenu::addUnitAt(SiteId site)
{
    openForNew(UnitDialog::newAt(site, m_book));
}

void SetupMenu::openForNew(const UnitDialog::Task& task)
{
    auto* dialog = new UnitDialog(m_book, m_log, task, m_window);
    connect(dialog, &UnitDialog::kept, this, &SetupMenu::unitKept);
    dialog->open();
}

void SetupMenu::importUnits()
{
    importUnitsFrom({});
}

void SetupMenu::importUnitsFrom(const QString& file)
{
    auto* dialog = new ImportDialog(m_book, m_log, m_window);
    connect(dialog, &ImportDialog::added, this, [this](int count) {
        Q_EMIT said(count == 1 ? tr("One unit was added.") : tr("%n units were added.", nullptr, count));
    });
    dialog->open();
    if (!file.isEmpty())
        dialog->read(file);
}

void SetupMenu::oneLikeThis()
{
    if (const auto unit = record())
        openForNew(UnitDialog::oneLike({unit->unit, unit->parts}, m_book));
}

void SetupMenu::changeUnit()
{
    if (const auto unit = record())
        (new UnitDialog(m_book, m_log, UnitDialog::change(unit->unit), m_window))->open();
}

void SetupMenu::retire()
{
    if (const auto unit = record())
        (new RetireDialog(m_book, m_log, unit->unit, m_window))->open();
}

void SetupMenu::bringBack()
{
    const auto unit = record();
    if (unit && m_log.bringBack(unit->unit.id))
        Q_EMIT said(tr("%1 is in service again: its visits are planned once more.").arg(shown(unit->unit.tag)));
}

void SetupMenu::remove()
{
    const auto unit = record();
    if (unit && m_log.remove(unit->unit.id))
        Q_EMIT said(tr("%1 was removed. Edit, Undo brings it back.").arg(shown(unit->unit.tag)));
}

} // namespace padside
