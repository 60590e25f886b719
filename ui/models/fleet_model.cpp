// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/fleet_model.h"

#include "core/quantity/date.h"
#include "ui/models/speaker.h"

#include <QFont>

#include <cmath>

namespace padside {

namespace {

/// What is one number stands in the middle of its narrow column.
QVariant alignmentOf(int column)
{
    const bool isNumber = column == FleetModel::age || column == FleetModel::grade || column == FleetModel::flags;
    return QVariant::fromValue((isNumber ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
}

} // namespace

const Flag* FleetLine::worstFlag() const
{
    return flagCount() == 0 ? nullptr : &reviewed->review.flags.front();
}

const Check* FleetLine::nextCheck() const
{
    if (unit.retired || !reviewed || reviewed->review.checks.empty())
        return nullptr;
    return &reviewed->review.checks.front();
}

bool FleetLine::isOverdue(Date today) const
{
    const Check* check = nextCheck();
    return check && check->latest < today;
}

std::string foldedForSearch(const QString& text)
{
    return text.toCaseFolded().toStdString();
}

FleetModel::FleetModel(const Catalogue& catalogue, const LocalSpeaker& speaker, Date today, QObject* parent)
    : QAbstractTableModel(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
    , m_today(today)
{
}

void FleetModel::setToday(Date today)
{
    if (today == m_today)
        return;
    m_today = today;
    if (!m_lines.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

void FleetModel::setLines(std::vector<UnitLine> lines)
{
    beginResetModel();
    m_lines.clear();
    m_searchTexts.clear();
    m_rows.clear();
    m_lines.reserve(lines.size());
    m_searchTexts.reserve(lines.size());
    for (UnitLine& unit : lines) {
        m_rows.emplace(unit.unitId, static_cast<int>(m_lines.size()));
        const UnitKind* known = m_catalogue.unitKind(unit.kind);
        const QString kindName = known ? shown(m_speaker.translate(known->name)) : shown(unit.kind);
        m_searchTexts.push_back(
            foldedForSearch(shown(unit.tag + " " + unit.siteName + " " + unit.place) + QLatin1Char(' ') + kindName));
        m_lines.push_back(FleetLine{std::move(unit), kindName, nullptr});
    }
    join();
    endResetModel();
}

void FleetModel::setReviewed(const std::shared_ptr<const ReviewedFleet>& fleet)
{
    m_fleet = fleet;
    if (m_lines.empty())
        return;
    join();
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

void FleetModel::join()
{
    if (!m_fleet)
        return;
    for (const auto& reviewed : m_fleet->units) {
        const auto row = m_rows.find(reviewed->unit.id);
        if (row != m_rows.end())
            m_lines[static_cast<std::size_t>(row->second)].reviewed = reviewed;
    }
}

int FleetModel::rowOf(UnitId unit) const
{
    const auto row = m_rows.find(unit);
    return row == m_rows.end() ? -1 : row->second;
}

int FleetModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int FleetModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columns;
}

QVariant FleetModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const FleetLine& unit = line(index.row());
    switch (role) {
    case Qt::ToolTipRole: // whole, where the column is narrow
        if (index.column() == flags && unit.reviewed && !unit.unit.retired)
            return spoken(unit, flags);
        [[fallthrough]];
    case Qt::DisplayRole:
        return text(unit, index.column());
    case Qt::AccessibleTextRole:
        return spoken(unit, index.column());
    case Qt::TextAlignmentRole:
        return alignmentOf(index.column());
    case Qt::FontRole: {
        QFont font;
        font.setBold(index.column() == tag || (index.column() == nextCheck && unit.isOverdue(m_today)));
        return font;
    }
    case gradeRole:
        return unit.unit.worst ? numeral(*unit.unit.worst) : 0;
    case retiredRole:
        return unit.unit.retired;
    default:
        return {};
    }
}

QString FleetModel::spoken(const FleetLine& line, int column) const
{
    switch (column) {
    case grade:
        return line.unit.worst ? tr("worst grade %1").arg(numeral(*line.unit.worst)) : tr("nothing seen yet");
    case flags:
        if (!line.reviewed)
            return tr("not reviewed yet");
        return (line.flagCount() == 1 ? tr("one flag") : tr("%n flags", nullptr, static_cast<int>(line.flagCount())))
            + acknowledgedWords(line);
    default:
        return text(line, column);
    }
}

QString FleetModel::acknowledgedWords(const FleetLine& line)
{
    return line.acknowledgedCount() == 0 ? QString()
                                         : tr("; acknowledged and not counted: %1").arg(line.acknowledgedCount());
}

QString FleetModel::text(const FleetLine& line, int column) const
{
    const UnitLine& unit = line.unit;
    switch (column) {
    case tag:
        return shown(unit.tag);
    case site:
        return shown(unit.siteName);
    case place:
        return unit.retired ? tr("retired · %1").arg(shown(unit.place)) : shown(unit.place);
    case kind:
        return line.kindName;
    case age:
        return unit.installedOn
            ? QString::number(static_cast<int>(std::floor(yearsBetween(*unit.installedOn, m_today))))
            : QString();
    case flags:
        if (unit.retired || !line.reviewed)
            return {};
        return line.flagCount() == 0 ? QStringLiteral("–") : QString::number(line.flagCount());
    case worstFlag:
        return line.worstFlag() ? m_speaker.said(line.worstFlag()->sentence) : QString();
    case lastVisit:
        return unit.lastVisitOn ? m_speaker.shownDate(*unit.lastVisitOn) : tr("never");
    case nextCheck: {
        const Check* check = line.nextCheck();
        if (!check)
            return {};
        return line.isOverdue(m_today) ? tr("overdue since %1").arg(m_speaker.shownDate(check->latest))
                                       : tr("by %1").arg(m_speaker.shownDate(check->latest));
    }
    default:
        return {};
    }
}

QVariant FleetModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole)
        return alignmentOf(section);
    if (orientation == Qt::Horizontal && role == Qt::ToolTipRole && section == flags)
        return tr("Flags that stand; acknowledged ones are not counted");
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case tag:
        return tr("Unit");
    case site:
        return tr("Site");
    case place:
        return tr("Place");
    case kind:
        return tr("Kind");
    case age:
        return tr("Years");
    case grade:
        return tr("Worst");
    case flags:
        return tr("Flags");
    case worstFlag:
        return tr("Gravest flag");
    case lastVisit:
        return tr("Last visit");
    case nextCheck:
        return tr("Next check");
    default:
        return {};
    }
}

} // namespace padside
