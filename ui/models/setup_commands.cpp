// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/setup_commands.h"

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/transaction.h"
#include "ui/models/record_book.h"

#include <tuple>

namespace padside {

namespace {

/// A handful of units is written at once; a large list goes through the import.
void add(SiteBook& book, const std::vector<Site>& sites, const std::vector<FittedUnit>& units)
{
    std::ignore = book.addAll(sites, units, [](double) { return true; });
}

} // namespace

SetupCommand::SetupCommand(RecordBook& book, const QString& name)
    : QUndoCommand(name)
    , m_book(book)
{
}

void SetupCommand::redo()
{
    attempt(&SetupCommand::carryOut);
}

void SetupCommand::undo()
{
    attempt(&SetupCommand::takeBack);
}

void SetupCommand::attempt(void (SetupCommand::*way)(SiteBook&))
{
    const bool well = m_book.attempt([&] {
        Transaction transaction(m_book.store());
        (this->*way)(m_book.store().sites());
        transaction.commit();
    });
    setObsolete(!well);
    if (well)
        announce();
}

ChangeSiteCommand::ChangeSiteCommand(RecordBook& book, const QString& name, Site before, Site after)
    : SetupCommand(book, name)
    , m_before(std::move(before))
    , m_after(std::move(after))
{
}

void ChangeSiteCommand::carryOut(SiteBook& sites)
{
    sites.changeSite(m_after);
}

void ChangeSiteCommand::takeBack(SiteBook& sites)
{
    sites.changeSite(m_before);
}

void ChangeSiteCommand::announce()
{
    Q_EMIT m_book.sitesChanged();
}

ChangeUnitCommand::ChangeUnitCommand(RecordBook& book, const QString& name, Unit before, Unit after)
    : SetupCommand(book, name)
    , m_before(std::move(before))
    , m_after(std::move(after))
{
}

void ChangeUnitCommand::carryOut(SiteBook& sites)
{
    sites.changeUnit(m_after);
}

void ChangeUnitCommand::takeBack(SiteBook& sites)
{
    sites.changeUnit(m_before);
}

void ChangeUnitCommand::announce()
{
    Q_EMIT m_book.unitChanged(m_after.id);
}

AddCommand::AddCommand(RecordBook& book, const QString& name, std::vector<Site> sites, std::vector<FittedUnit> units)
    : SetupCommand(book, name)
    , m_sites(std::move(sites))
    , m_units(std::move(units))
{
}

void AddCommand::carryOut(SiteBook& sites)
{
    add(sites, m_sites, m_units);
}

void AddCommand::takeBack(SiteBook& sites)
{
    for (const FittedUnit& unit : m_units)
        sites.removeUnit(unit.unit.id);
    for (const Site& site : m_sites)
        sites.removeSite(site.id);
}

void AddCommand::announce()
{
    Q_EMIT m_book.sitesChanged();
}

RemoveUnitCommand::RemoveUnitCommand(RecordBook& book, const QString& name, FittedUnit unit)
    : SetupCommand(book, name)
    , m_unit(std::move(unit))
{
}

void RemoveUnitCommand::carryOut(SiteBook& sites)
{
    sites.removeUnit(m_unit.unit.id);
}

void RemoveUnitCommand::takeBack(SiteBook& sites)
{
    add(sites, {}, {m_unit});
}

void RemoveUnitCommand::announce()
{
    Q_EMIT m_book.sitesChanged();
}

} // namespace padside
