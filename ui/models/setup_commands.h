// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/fitted_unit.h" // before id.h, for moc
#include "core/record/site.h"

#include <QUndoCommand>

#include <vector>

namespace padside {

class RecordBook;
class SiteBook;

/// One change of sites or units that can be taken back. Each way is one transaction; if the store refuses it, the
/// reason is said by RecordBook::failed and the command leaves the stack.
class SetupCommand : public QUndoCommand
{
public:
    SetupCommand(RecordBook& book, const QString& name);

    void redo() final;
    void undo() final;

protected:
    virtual void carryOut(SiteBook& sites) = 0;
    virtual void takeBack(SiteBook& sites) = 0;
    virtual void announce() = 0; ///< what is another one now

    RecordBook& m_book;

private:
    void attempt(void (SetupCommand::*way)(SiteBook&));
};

class ChangeSiteCommand final : public SetupCommand
{
public:
    ChangeSiteCommand(RecordBook& book, const QString& name, Site before, Site after);

private:
    void carryOut(SiteBook& sites) override;
    void takeBack(SiteBook& sites) override;
    void announce() override;

    Site m_before;
    Site m_after;
};

class ChangeUnitCommand final : public SetupCommand
{
public:
    ChangeUnitCommand(RecordBook& book, const QString& name, Unit before, Unit after);

private:
    void carryOut(SiteBook& sites) override;
    void takeBack(SiteBook& sites) override;
    void announce() override;

    Unit m_before;
    Unit m_after;
};

/// Adds sites and units; taken back, they go again, unless a unit was visited meanwhile.
class AddCommand final : public SetupCommand
{
public:
    AddCommand(RecordBook& book, const QString& name, std::vector<Site> sites, std::vector<FittedUnit> units);

private:
    void carryOut(SiteBook& sites) override;
    void takeBack(SiteBook& sites) override;
    void announce() override;

    std::vector<Site> m_sites;
    std::vector<FittedUnit> m_units;
};

/// Removes a unit that was never visited; taken back, it is there again with its parts.
class RemoveUnitCommand final : public SetupCommand
{
public:
    RemoveUnitCommand(RecordBook& book, const QString& name, FittedUnit unit);

private:
    void carryOut(SiteBook& sites) override;
    void takeBack(SiteBook& sites) override;
    void announce() override;

    FittedUnit m_unit;
};

} // namespace padside
