// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/fleet_filter.h"

#include "ui/models/fleet_model.h"

#include <algorithm>

namespace padside {

namespace {

/// -1, 0 or 1, as for numbers.
template <typename T> int order(const T& one, const T& other)
{
    return one < other ? -1 : other < one ? 1 : 0;
}

/// Days that are not known stand behind all others, whichever way the column is sorted first.
int byDay(const std::optional<Date>& one, const std::optional<Date>& other)
{
    return order(one.value_or(Date::max()), other.value_or(Date::max()));
}

/// How grave a unit is: its worst grade, then how many flags of what severity. A retired one asks for nothing.
int gravity(const FleetLine& line)
{
    if (line.unit.retired)
        return -1;
    const int grade = line.unit.worst ? numeral(*line.unit.worst) : 0;
    const Flag* flag = line.worstFlag();
    return grade * 4 + (flag ? 1 + static_cast<int>(flag->severity) : 0);
}

std::optional<Date> latestOf(const FleetLine& line)
{
    const Check* check = line.nextCheck();
    return check ? std::optional(check->latest) : std::nullopt;
}

int flagOrder(const FleetLine& one, const FleetLine& other)
{
    const auto count = [](const FleetLine& line) { return line.unit.retired ? 0 : line.flagCount(); };
    return order(count(one), count(other));
}

} // namespace

FleetFilter::FleetFilter(FleetModel& fleet, QObject* parent)
    : QSortFilterProxyModel(parent)
    , m_fleet(fleet)
{
    setSourceModel(&fleet);
    setDynamicSortFilter(true);
}

void FleetFilter::setWish(const FleetWish& wish)
{
    if (wish == m_wish)
        return;
    m_wish = wish;
    invalidateFilter();
}

bool FleetFilter::filterAcceptsRow(int row, const QModelIndex&) const
{
    const FleetLine& line = m_fleet.line(row);
    if (line.unit.retired && !m_wish.retiredToo)
        return false;
    if (m_wish.site && line.unit.siteId != *m_wish.site)
        return false;
    if (!m_wish.kind.empty() && line.unit.kind != m_wish.kind)
        return false;
    if (m_wish.atLeast && (!line.unit.worst || *line.unit.worst < *m_wish.atLeast))
        return false;
    if (m_wish.withFlags && line.flagCount() == 0)
        return false;
    if (m_wish.overdue && (!line.nextCheck() || line.nextCheck()->latest >= m_fleet.today()))
        return false;
    const std::string& text = m_fleet.searchText(row);
    std::size_t begin = 0;
    while (begin < m_wish.text.size()) {
        const std::size_t end = std::min(m_wish.text.find(' ', begin), m_wish.text.size());
        if (text.find(m_wish.text.substr(begin, end - begin)) == std::string::npos)
            return false;
        begin = end + 1;
    }
    return true;
}

int FleetFilter::compared(const FleetLine& one, const FleetLine& other) const
{
    switch (sortColumn()) {
    case FleetModel::tag:
        return order(one.unit.tag, other.unit.tag);
    case FleetModel::site:
        return order(one.unit.siteName, other.unit.siteName);
    case FleetModel::place:
        return order(one.unit.place, other.unit.place);
    case FleetModel::kind:
        return order(one.unit.kind, other.unit.kind);
    case FleetModel::age: // the oldest has the earliest day
        return order(other.unit.installedOn.value_or(Date::max()), one.unit.installedOn.value_or(Date::max()));
    case FleetModel::flags:
        return flagOrder(one, other);
    case FleetModel::lastVisit:
        return order(one.unit.lastVisitOn.value_or(Date::min()), other.unit.lastVisitOn.value_or(Date::min()));
    case FleetModel::nextCheck:
        return byDay(latestOf(one), latestOf(other));
    default: // the grade, and the flag that says why
        return order(gravity(one), gravity(other));
    }
}

bool FleetFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const
{
    const FleetLine& one = m_fleet.line(left.row());
    const FleetLine& other = m_fleet.line(right.row());
    if (const int result = compared(one, other); result != 0)
        return result < 0;
    // Ties: the graver first, whichever way the column is sorted; then by tag.
    const bool rising = sortOrder() == Qt::AscendingOrder;
    if (const int result = order(gravity(other), gravity(one)); result != 0)
        return rising ? result < 0 : result > 0;
    if (const int result = flagOrder(other, one); result != 0)
        return rising ? result < 0 : result > 0;
    return rising ? one.unit.tag < other.unit.tag : other.unit.tag < one.unit.tag;
}

} // namespace padside
