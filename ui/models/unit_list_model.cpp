// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/unit_list_model.h"

#include "ui/models/speaker.h"

#include <algorithm>
#include <utility>

namespace padside {

namespace {

// A site's index carries 0, a unit's the number of its site plus one.
constexpr quintptr siteLevel = 0;

} // namespace

UnitListModel::UnitListModel(QObject* parent)
    : QAbstractItemModel(parent)
{
}

bool UnitListModel::sameUnitsAs(const std::vector<UnitLine>& lines) const
{
    return std::ranges::equal(m_lines, lines, [](const UnitLine& one, const UnitLine& other) {
        return one.unitId == other.unitId && one.siteId == other.siteId && one.siteName == other.siteName;
    });
}

void UnitListModel::setLines(std::vector<UnitLine> lines)
{
    if (!m_lines.empty() && sameUnitsAs(lines)) {
        m_lines = std::move(lines);
        for (int row = 0; row < rowCount(); ++row) {
            const QModelIndex site = index(row, 0);
            Q_EMIT dataChanged(index(0, 0, site), index(rowCount(site) - 1, 0, site));
        }
        return;
    }
    beginResetModel();
    m_lines = std::move(lines);
    m_sites.clear();
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        if (i == 0 || m_lines[i].siteId != m_lines[i - 1].siteId)
            m_sites.push_back(SiteGroup{shown(m_lines[i].siteName), i, 0});
        ++m_sites.back().count;
    }
    endResetModel();
}

QModelIndex UnitListModel::indexOf(UnitId unit) const
{
    const auto line = std::ranges::find(m_lines, unit, &UnitLine::unitId);
    if (line == m_lines.end())
        return {};
    const auto place = static_cast<std::size_t>(line - m_lines.begin());
    const auto site
        = std::ranges::find_if(m_sites, [place](const SiteGroup& one) { return place < one.first + one.count; });
    return index(static_cast<int>(place - site->first), 0, index(static_cast<int>(site - m_sites.begin()), 0));
}

std::optional<UnitId> UnitListModel::unitAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() == siteLevel)
        return std::nullopt;
    return lineAt(index).unitId;
}

QModelIndex UnitListModel::index(int row, int column, const QModelIndex& parent) const
{
    if (!hasIndex(row, column, parent))
        return {};
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : siteLevel);
}

QModelIndex UnitListModel::parent(const QModelIndex& child) const
{
    if (!child.isValid() || child.internalId() == siteLevel)
        return {};
    return createIndex(static_cast<int>(child.internalId()) - 1, 0, siteLevel);
}

int UnitListModel::rowCount(const QModelIndex& parent) const
{
    if (!parent.isValid())
        return static_cast<int>(m_sites.size());
    if (parent.internalId() != siteLevel || parent.column() != 0)
        return 0;
    return static_cast<int>(m_sites[static_cast<std::size_t>(parent.row())].count);
}

int UnitListModel::columnCount(const QModelIndex&) const
{
    return 1;
}

const UnitLine& UnitListModel::lineAt(const QModelIndex& index) const
{
    const SiteGroup& site = m_sites[static_cast<std::size_t>(index.internalId()) - 1];
    return m_lines[site.first + static_cast<std::size_t>(index.row())];
}

QVariant UnitListModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    if (index.internalId() == siteLevel)
        return siteData(m_sites[static_cast<std::size_t>(index.row())], role);
    return unitData(lineAt(index), role);
}

Qt::ItemFlags UnitListModel::flags(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() == siteLevel)
        return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

QVariant UnitListModel::siteData(const SiteGroup& site, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return site.name;
    case searchTextRole:
        return QString();
    default:
        return {};
    }
}

QVariant UnitListModel::unitData(const UnitLine& line, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
        return shown(line.tag);
    case placeRole:
        return line.retired ? tr("retired · %1").arg(shown(line.place)) : shown(line.place);
    case unitIdRole:
        return QByteArray(reinterpret_cast<const char*>(line.unitId.bytes().data()), 16);
    case worstGradeRole:
        return line.worst ? numeral(*line.worst) : 0;
    case retiredRole:
        return line.retired;
    case openVisitRole:
        return line.hasOpenVisit;
    case searchTextRole:
        return shown(line.tag + " " + line.place + " " + line.siteName);
    case Qt::AccessibleTextRole: {
        QString text = tr("%1, %2").arg(shown(line.tag), shown(line.place));
        text += line.worst ? tr(", worst grade %1").arg(numeral(*line.worst)) : tr(", nothing seen yet");
        if (line.hasOpenVisit)
            text += tr(", visit open");
        if (line.retired)
            text += tr(", retired");
        return text;
    }
    default:
        return {};
    }
}

} // namespace padside
