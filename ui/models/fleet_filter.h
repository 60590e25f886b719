// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"
#include "core/record/unit.h" // before id.h, for moc

#include <QSortFilterProxyModel>

#include <optional>

namespace padside {

class FleetModel;
struct FleetLine;

/// Which units of the fleet are shown; all that is set must hold.
struct FleetWish
{
    std::string text; ///< every word of it, folded, is somewhere in tag, site, place or kind
    std::optional<SiteId> site;
    std::string kind; ///< code; empty: any
    std::optional<Grade> atLeast; ///< worst grade this or graver
    bool withFlags = false;
    bool overdue = false;
    bool retiredToo = false;

    friend bool operator==(const FleetWish&, const FleetWish&) = default;
};

/// The units that are wished for, in the order of a column. Ties go by gravity: worst grade, flags, then tag.
class FleetFilter : public QSortFilterProxyModel
{
    Q_OBJECT
public:
    explicit FleetFilter(FleetModel& fleet, QObject* parent = nullptr);

    void setWish(const FleetWish& wish);
    [[nodiscard]] const FleetWish& wish() const { return m_wish; }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    [[nodiscard]] int compared(const FleetLine& one, const FleetLine& other) const;

    FleetModel& m_fleet;
    FleetWish m_wish;
};

} // namespace padside
