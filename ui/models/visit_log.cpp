// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/visit_log.h"

#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "ui/models/record_book.h"
#include "ui/models/refusal.h"
#include "ui/models/visit_words.h"

#include <QCoreApplication>

#include <memory>

namespace padside {

VisitId startVisit(RecordBook& book, UnitId unit, VisitReason reason)
{
    std::optional<Visit> open;
    if (!book.attempt([&] { open = book.store().visits().openVisitOf(unit); }))
        return {};
    if (open)
        return open->id;
    Visit visit;
    visit.id = book.ids().make<VisitId>();
    visit.unitId = unit;
    visit.on = book.today();
    visit.reason = reason;
    visit.technician = book.surroundings().technician.toStdString();
    visit.openedAt = book.now();
    if (!book.change(unit, [&] { book.store().visits().open(visit); }))
        return {};
    return visit.id;
}

VisitLog::VisitLog(RecordBook& book)
    : m_book(book)
{
}

bool VisitLog::turnTo(VisitId id)
{
    return m_book.attempt([&] {
        const std::optional<Visit> visit = m_book.store().visits().visit(id);
        if (!visit)
            throw refusal(PADSIDE_SAY("This visit is no longer in the file. Go back to the unit and choose another."));
        if (visit->id != m_visit.id) {
            m_reason.clear();
            m_steps.clear();
        }
        m_visit = *visit;
    });
}

void VisitLog::enter(const VisitEdit& edit, const Step& step)
{
    if (changesNothing(edit))
        return;
    if (!m_visit.isOpen()) { // a correction stays in the record and is itself corrected
        carryOut(m_book.store(), edit);
        return;
    }
    auto command = std::make_unique<VisitCommand>(m_book.store(), edit, step.place, step.name, step.field);
    m_steps.push(command.get()); // writes; if that fails, nothing was pushed
    static_cast<void>(command.release()); // the stack's now
    keepUp(edit);
}

void VisitLog::keepUp(const VisitEdit& edit)
{
    for (const VisitChange& change : edit) {
        if (const auto* visit = std::get_if<RowChange<Visit>>(&change))
            m_visit = *visit->after;
    }
}

std::optional<VisitPlace> VisitLog::move(int index, bool back)
{
    const auto* command = dynamic_cast<const VisitCommand*>(m_steps.command(index));
    if (!command)
        return std::nullopt;
    const VisitPlace place = command->place();
    const VisitEdit edit = back ? reversed(command->edit()) : command->edit();
    const bool moved = m_book.change(m_visit.unitId, [&] {
        back ? m_steps.undo() : m_steps.redo();
        keepUp(edit);
    });
    return moved ? std::optional<VisitPlace>(place) : std::nullopt;
}

std::optional<VisitPlace> VisitLog::undo()
{
    return move(m_steps.index() - 1, true);
}

std::optional<VisitPlace> VisitLog::redo()
{
    return move(m_steps.index(), false);
}

bool VisitLog::changeVisit(const Visit& visit, const QString& name, VisitPlace::Part part, std::string field)
{
    return m_book.change(m_visit.unitId, [&] {
        enter({RowChange<Visit>{m_visit, visit}}, {name, {part, {}, {}, {}}, std::move(field)});
    });
}

bool VisitLog::setConditions(const Conditions& conditions)
{
    Visit visit = m_visit;
    visit.conditions = conditions;
    return changeVisit(visit, stepName(QT_TRANSLATE_NOOP("Visit", "conditions")), VisitPlace::Part::head);
}

bool VisitLog::setTechnician(const std::string& name)
{
    Visit visit = m_visit;
    visit.technician = name;
    return changeVisit(visit, stepName(QT_TRANSLATE_NOOP("Visit", "technician")), VisitPlace::Part::head, "technician");
}

bool VisitLog::setReason(VisitReason reason)
{
    Visit visit = m_visit;
    visit.reason = reason;
    return changeVisit(visit, stepName(QT_TRANSLATE_NOOP("Visit", "reason of the visit")), VisitPlace::Part::head);
}

bool VisitLog::setVisitNote(const std::string& note)
{
    Visit visit = m_visit;
    visit.note = note;
    return changeVisit(visit, stepName(QT_TRANSLATE_NOOP("Visit", "note on the visit")), VisitPlace::Part::finish,
                       "visit-note");
}

bool VisitLog::close()
{
    const Instant at = m_book.now();
    return m_book.change(m_visit.unitId, [&] {
        m_book.store().visits().close(m_visit.id, at, m_book.forecastsAtClosing(m_visit));
        m_visit.closedAt = at;
        m_steps.clear();
    });
}

} // namespace padside
