// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/visit_command.h"

namespace padside {

namespace {

constexpr int neverMerged = -1; // as QUndoCommand has it
constexpr int typedText = 1;

/// Takes over what `later` leaves behind, if both change the same rows in the same order.
bool follow(VisitEdit& edit, const VisitEdit& later)
{
    if (edit.size() != later.size())
        return false;
    for (std::size_t i = 0; i < edit.size(); ++i) {
        if (edit[i].index() != later[i].index())
            return false;
    }
    for (std::size_t i = 0; i < edit.size(); ++i)
        std::visit([&](auto& one) { one.after = std::get<std::remove_reference_t<decltype(one)>>(later[i]).after; },
                   edit[i]);
    return true;
}

} // namespace

VisitCommand::VisitCommand(Store& store, VisitEdit edit, VisitPlace place, const QString& name, std::string field)
    : QUndoCommand(name)
    , m_store(store)
    , m_edit(std::move(edit))
    , m_place(std::move(place))
    , m_field(std::move(field))
{
}

void VisitCommand::undo()
{
    carryOut(m_store, reversed(m_edit));
}

void VisitCommand::redo()
{
    carryOut(m_store, m_edit);
}

int VisitCommand::id() const
{
    return m_field.empty() ? neverMerged : typedText;
}

bool VisitCommand::mergeWith(const QUndoCommand* other)
{
    const auto* later = dynamic_cast<const VisitCommand*>(other);
    if (!later || later->m_field != m_field || !follow(m_edit, later->m_edit))
        return false;
    setObsolete(changesNothing(m_edit)); // typed back to what it was: no step
    return true;
}

} // namespace padside
