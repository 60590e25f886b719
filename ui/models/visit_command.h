// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/visit_edit.h"

#include <QUndoCommand>

namespace padside {

/// Where on the page of a visit something was entered.
struct VisitPlace
{
    enum class Part { head, zone, readings, work, refrigerant, finish };

    Part part = Part::zone;
    std::optional<ZoneId> zone;
    Phase phase = Phase::asFound;
    std::string reading; ///< code of its kind
};

/// One act of a person at an open visit, as a command that can be taken back. Each way is one durable write.
///
/// undo() and redo() throw StoreError, before the stack has moved: a step that fails is a step not taken.
class VisitCommand : public QUndoCommand
{
public:
    /// `field`: the text field it was typed into; entries of the same field that follow one another become one step.
    VisitCommand(Store& store, VisitEdit edit, VisitPlace place, const QString& name, std::string field = {});

    void undo() override;
    void redo() override;
    [[nodiscard]] int id() const override;
    [[nodiscard]] bool mergeWith(const QUndoCommand* other) override;

    [[nodiscard]] const VisitEdit& edit() const { return m_edit; }
    [[nodiscard]] const VisitPlace& place() const { return m_place; }

private:
    Store& m_store;
    VisitEdit m_edit;
    VisitPlace m_place;
    std::string m_field;
};

} // namespace padside
