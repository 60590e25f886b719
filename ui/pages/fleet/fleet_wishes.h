// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/record_reader.h" // before id.h, for moc
#include "ui/models/fleet_filter.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace padside {

class FleetModel;

/// Where a person says which units of the fleet to show: words, site, kind, worst grade, flags, overdue, retired.
class FleetWishes : public QWidget
{
    Q_OBJECT
public:
    explicit FleetWishes(QWidget* parent = nullptr);

    /// Offers the sites and kinds that are in the fleet; what was chosen stays chosen while it is there.
    void offer(const FleetModel& fleet);

    [[nodiscard]] FleetWish wish() const;
    [[nodiscard]] QLineEdit& search() const { return *m_search; }
    void clear(); ///< everything as it was first: all units that are not retired

Q_SIGNALS:
    void changed();

private:
    void makeLayout();
    void takeChange();

    QLineEdit* m_search;
    QComboBox* m_site;
    QComboBox* m_kind;
    QComboBox* m_grade;
    QCheckBox* m_flags;
    QCheckBox* m_overdue;
    QCheckBox* m_retired;
    QPushButton* m_clear;
};

} // namespace padside
