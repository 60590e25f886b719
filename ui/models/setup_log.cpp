// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/setup_log.h"

#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_commands.h"
#include "ui/models/speaker.h"

#include <algorithm>

namespace padside {

namespace {

void addLine(std::string& note, const QString& line)
{
    if (!note.empty() && !note.ends_with('\n'))
        note += '\n';
    note += line.toStdString();
}

/// Throws where a unit can't be retired on this day.
void requireRetirable(const UnitRecord& record, Date on)
{
    const Unit& unit = record.unit;
    const auto refuse = [](const char* pattern, std::vector<Argument> arguments) {
        throw StoreError(Problem{ProblemKind::refused, {pattern, std::move(arguments)}});
    };
    if (std::ranges::any_of(record.visits, &Visit::isOpen))
        refuse(PADSIDE_SAY("A visit is open at {0}: close it, then retire the unit."), {unit.tag});
    if (unit.installedOn && on < *unit.installedOn)
        refuse(PADSIDE_SAY("{0} was installed on {1}: it can't be retired before."), {unit.tag, *unit.installedOn});
    if (!record.visits.empty() && on < record.visits.back().on)
        refuse(PADSIDE_SAY("{0} was visited on {1}: it can't be retired before."), {unit.tag, record.visits.back().on});
}

} // namespace

SetupLog::SetupLog(RecordBook& book, QUndoStack& stack)
    : m_book(book)
    , m_stack(stack)
{
}

bool SetupLog::push(QUndoCommand* command)
{
    // A command that the store refused is not kept: then neither count nor place on the stack moved on.
    bool refused = false;
    const auto watch = QObject::connect(&m_book, &RecordBook::failed, &m_stack, [&refused] { refused = true; });
    m_stack.push(command);
    QObject::disconnect(watch);
    return !refused;
}

std::optional<Unit> SetupLog::unit(UnitId id) const
{
    std::optional<Unit> found;
    m_book.attempt([&] { found = m_book.record(id).unit; });
    return found;
}

bool SetupLog::add(std::vector<Site> sites, std::vector<FittedUnit> units)
{
    QString name;
    if (units.size() == 1)
        name = tr("adding %1").arg(shown(units.front().unit.tag));
    else if (!units.empty())
        name = tr("adding %n units", nullptr, static_cast<int>(units.size()));
    else if (!sites.empty())
        name = tr("adding %1").arg(shown(sites.front().name));
    return push(new AddCommand(m_book, name, std::move(sites), std::move(units)));
}

bool SetupLog::change(const Site& before, const Site& after)
{
    return before == after
        || push(new ChangeSiteCommand(m_book, tr("changing %1").arg(shown(after.name)), before, after));
}

bool SetupLog::change(const Unit& before, const Unit& after)
{
    return before == after
        || push(new ChangeUnitCommand(m_book, tr("changing %1").arg(shown(after.tag)), before, after));
}

bool SetupLog::retire(UnitId id, Date on, const QString& because)
{
    std::optional<Unit> before;
    const bool mayRetire = m_book.attempt([&] {
        const UnitRecord record = m_book.record(id);
        requireRetirable(record, on);
        before = record.unit;
    });
    if (!mayRetire)
        return false;
    Unit after = *before;
    after.retiredOn = on;
    addLine(after.note, tr("Retired %1: %2").arg(shown(isoText(on)), because));
    return push(new ChangeUnitCommand(m_book, tr("retiring %1").arg(shown(after.tag)), *before, after));
}

bool SetupLog::bringBack(UnitId id)
{
    const auto before = unit(id);
    if (!before)
        return false;
    Unit after = *before;
    after.retiredOn.reset();
    addLine(after.note, tr("Brought back %1").arg(shown(isoText(m_book.today()))));
    return push(new ChangeUnitCommand(m_book, tr("bringing back %1").arg(shown(after.tag)), *before, after));
}

bool SetupLog::remove(UnitId id)
{
    std::optional<FittedUnit> fitted;
    m_book.attempt([&] {
        const UnitRecord record = m_book.record(id);
        fitted = FittedUnit{record.unit, record.parts};
    });
    return fitted && push(new RemoveUnitCommand(m_book, tr("removing %1").arg(shown(fitted->unit.tag)), *fitted));
}

} // namespace padside
