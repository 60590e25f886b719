// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QObject>

#include <functional>

class QListView;
class QModelIndex;
class QPushButton;

namespace padside {

class NextModel;

/// What can be done with the flag in front in the list of what goes next: acknowledge it with a reason, or take that
/// back, by button, context menu or the key A; and unfolding the acknowledged ones.
class FlagActions : public QObject
{
    Q_OBJECT
public:
    FlagActions(NextModel& model, QListView& list);

    /// Stands beside the list's title; the list has its own keys.
    [[nodiscard]] QPushButton* button() const { return m_button; }

    /// Brings the button up to date; call it when the model shows another record. A file that can't be written has
    /// none.
    void refresh(bool mayWrite);

Q_SIGNALS:
    /// Key, moment and person are still to be filled in.
    void acknowledged(const padside::Acknowledgement& acknowledgement);
    void takenBack(const padside::AcknowledgementId& id);

private:
    void act();
    /// Does something that may make the list anew; whoever walks it by keys stays on the row.
    void keepRow(const std::function<void()>& change);
    void ask(const Flag& flag);
    void showMenu(const QPoint& where);
    [[nodiscard]] const Flag* inFront() const;

    NextModel& m_model;
    QListView& m_list;
    QPushButton* m_button;
    bool m_mayWrite = true;
};

} // namespace padside
