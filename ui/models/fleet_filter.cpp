// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/fleet_filter.h"

#include "core/record/reading_order.h"
#include "ui/models/fleet_model.h"

#include <algorithm>

namespace padside {

namespace {

/// -1, 0 or 1, as for numbers.
template <typename T> int order(const T& one, const T& other)
{
    return one < other ? -1 : other < one ? 1 : 0;
}

/// 0 without flags, then from look to act.
int severity(const FleetLine& line)
{
    const Flag* flag = line.worstFlag();
    return flag ? 1 + static_cast<int>(flag->severity) : 0;
}

/// How grave a unit is: its worst grade, then what its gravest flag wants. A retired one asks for nothing.
int gravity(const FleetLine& line)
{
    if (line.unit.retired)
        return -1;
    const int grade = line.unit.worst ? numeral(*line.unit.worst) : 0;
    return grade * 4 + severity(line);
}

std::optional<Date> latestOf(const FleetLine& line)
{
    const Check* check = line.nextCheck();
    return check ? std::optional(check->latest) : std::nullopt;
}

int flagOrder(const FleetLine& one, const FleetLine& other)
{
    return order(one.flagCount(), other.flagCount());
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
    if (m_wish.overdue && !line.isOverdue(m_fleet.today()))
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
    // What is not known stands last, whichever way the column is sorted.
    const bool rising = sortOrder() == Qt::AscendingOrder;
    const Date late = rising ? Date::max() : Date::min();
    const Date early = rising ? Date::min() : Date::max();
    switch (sortColumn()) {
    case FleetModel::tag:
        return inReadingOrder(one.unit.tag, other.unit.tag);
    case FleetModel::site:
        return inReadingOrder(one.unit.siteName, other.unit.siteName);
    case FleetModel::place:
        return inReadingOrder(one.unit.place, other.unit.place);
    case FleetModel::kind:
        return QString::localeAwareCompare(one.kindName, other.kindName);
    case FleetModel::age: // the younger has the later day
        return order(other.unit.installedOn.value_or(early), one.unit.installedOn.value_or(early));
    case FleetModel::flags:
        return flagOrder(one, other);
    case FleetModel::worstFlag:
        return order(severity(one), severity(other));
    case FleetModel::lastVisit: // never visited: longest not seen
        return order(one.unit.lastVisitOn.value_or(Date::min()), other.unit.lastVisitOn.value_or(Date::min()));
    case FleetModel::nextCheck:
        return order(latestOf(one).value_or(late), latestOf(other).value_or(late));
    default:
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
    const int byTag = inReadingOrder(one.unit.tag, other.unit.tag);
    return rising ? byTag < 0 : byTag > 0;
}

} // namespace padside
