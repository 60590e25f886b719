// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/unit_plan_model.h"

#include "ui/models/speaker.h"

#include <QFont>
#include <QStringList>

#include <algorithm>

namespace padside {

UnitPlanModel::UnitPlanModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent)
    : QAbstractTableModel(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
{
}

void UnitPlanModel::setPlan(std::shared_ptr<const UnitPlan> plan)
{
    beginResetModel();
    m_plan = std::move(plan);
    choose();
    endResetModel();
}

void UnitPlanModel::setOnlyBad(bool only)
{
    beginResetModel();
    m_onlyBad = only;
    choose();
    endResetModel();
}

void UnitPlanModel::choose()
{
    m_shown.clear();
    for (std::size_t i = 0; i < m_plan->rows.size(); ++i) {
        if (!m_onlyBad || !m_plan->rows[i].good())
            m_shown.push_back(i);
    }
}

std::optional<int> UnitPlanModel::firstSkipped() const
{
    const auto bad = std::ranges::find_if(m_shown, [this](std::size_t line) { return !m_plan->rows[line].good(); });
    if (bad == m_shown.end())
        return std::nullopt;
    return static_cast<int>(bad - m_shown.begin());
}

int UnitPlanModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int UnitPlanModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columns;
}

QVariant UnitPlanModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const PlannedUnit& unit = m_plan->rows[m_shown[static_cast<std::size_t>(index.row())]];
    switch (role) {
    case Qt::DisplayRole:
        return text(unit, index.column());
    case Qt::ToolTipRole:
        return outcomeOf(unit);
    case Qt::FontRole:
        if (!unit.good() && index.column() == outcome) {
            QFont bold;
            bold.setBold(true);
            return bold;
        }
        return {};
    default:
        return {};
    }
}

QString UnitPlanModel::outcomeOf(const PlannedUnit& unit) const
{
    if (unit.good())
        return unit.newSite ? tr("New unit, new site") : tr("New unit");
    QStringList problems;
    for (const Sentence& problem : unit.problems)
        problems << m_speaker.said(problem);
    return tr("Skipped. %1").arg(problems.join(QLatin1Char(' ')));
}

QString UnitPlanModel::text(const PlannedUnit& unit, int column) const
{
    switch (column) {
    case row:
        return QString::number(unit.line);
    case outcome:
        return outcomeOf(unit);
    case tag:
        return shown(unit.unit.tag);
    case site:
        return shown(unit.site);
    case kind: {
        const UnitKind* known = m_catalogue.unitKind(unit.unit.kind);
        return known ? shown(m_speaker.translate(known->name)) : QString();
    }
    case place:
        return shown(unit.unit.place);
    case maker:
        return shown(unit.unit.maker);
    case model:
        return shown(unit.unit.model);
    case serial:
        return shown(unit.unit.serial);
    case refrigerant:
        return shown(unit.unit.refrigerant);
    case installed:
        return unit.unit.installedOn ? m_speaker.shownDate(*unit.unit.installedOn) : QString();
    default:
        return {};
    }
}

QVariant UnitPlanModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case row:
        return tr("Row");
    case outcome:
        return tr("What will be made, or why not");
    case tag:
        return tr("Tag");
    case site:
        return tr("Site");
    case kind:
        return tr("Kind");
    case place:
        return tr("Place");
    case maker:
        return tr("Maker");
    case model:
        return tr("Model");
    case serial:
        return tr("Serial number");
    case refrigerant:
        return tr("Refrigerant");
    case installed:
        return tr("Installed");
    default:
        return {};
    }
}

} // namespace padside
