// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/finding_tree_model.h"

#include "ui/models/speaker.h"

#include <QFont>
#include <QStringList>

#include <algorithm>
#include <limits>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

/// Index data of a part; a zone carries its part's row.
constexpr quintptr noParent = std::numeric_limits<quintptr>::max();

QString changeText(int delta)
{
    if (delta == 0)
        return FindingTreeModel::tr("same");
    return delta > 0 ? FindingTreeModel::tr("%1 worse").arg(delta) : FindingTreeModel::tr("%1 better").arg(-delta);
}

} // namespace

FindingTreeModel::FindingTreeModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent)
    : QAbstractItemModel(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
{
}

QString FindingTreeModel::noteOf(const std::vector<Finding>& findings, const ZoneHistory& history) const
{
    const Finding* last = nullptr;
    const Finding* noted = nullptr;
    for (const Finding& finding : findings) {
        if (finding.zoneId != history.zoneId)
            continue;
        last = &finding;
        if (!finding.note.empty())
            noted = &finding;
    }
    if (!noted)
        return {};
    // A note from an earlier visit says so.
    const QString note = shown(noted->note);
    return noted->on == last->on ? note : tr("%1: %2", "date, note").arg(m_speaker.shownDate(noted->on), note);
}

FindingTreeModel::ZoneRow FindingTreeModel::zoneRow(const std::vector<Finding>& findings, const Part& part,
                                                    const ZoneHistory& history) const
{
    ZoneRow row{history.zoneId, &history, {}, {}, noteOf(findings, history)};
    const auto zone = std::ranges::find(part.zones, history.zoneId, &Zone::id);
    if (zone != part.zones.end()) {
        row.name = shown(m_speaker.translate(zone->name));
        if (history.lastSeen)
            row.meaning
                = shown(m_speaker.translate(m_catalogue.gradeSentence(part.kind, zone->kind, history.lastSeen->grade)));
    }
    return row;
}

std::vector<FindingTreeModel::PartRow> FindingTreeModel::rowsOf(const UnitSnapshot& snapshot) const
{
    std::vector<PartRow> parts;
    const std::vector<Finding> findings = standing(snapshot.record.findings);
    for (const ZoneHistory& history : snapshot.review.zones) {
        const Part* part = findPart(snapshot.record, history.partId);
        if (!part)
            continue;
        if (parts.empty() || parts.back().partId != part->id) {
            const PartKind* kind = m_catalogue.partKind(part->kind);
            PartRow row{part->id, shown(kind ? m_speaker.translate(kind->name) : part->kind), {}, {}, {}};
            if (!part->position.empty())
                row.name = tr("%1, %2", "part, position").arg(row.name, shown(m_speaker.translate(part->position)));
            if (part->replaces && part->fittedOn)
                row.fitted = tr("fitted %1").arg(m_speaker.shownDate(*part->fittedOn));
            parts.push_back(row);
        }
        PartRow& row = parts.back();
        row.zones.push_back(zoneRow(findings, *part, history));
        if (history.lastSeen && (!row.worst || history.lastSeen->grade > *row.worst))
            row.worst = history.lastSeen->grade;
    }
    return parts;
}

void FindingTreeModel::setSnapshot(UnitSnapshotPtr snapshot)
{
    std::vector<PartRow> parts = rowsOf(*snapshot);
    const bool sameRows = std::ranges::equal(parts, m_parts, [](const PartRow& one, const PartRow& other) {
        return one.partId == other.partId
            && std::ranges::equal(one.zones, other.zones, {}, &ZoneRow::zoneId, &ZoneRow::zoneId);
    });
    if (!sameRows)
        beginResetModel();
    m_parts = std::move(parts);
    m_snapshot = std::move(snapshot);
    if (!sameRows) {
        endResetModel();
        return;
    }
    for (int part = 0; part < rowCount(); ++part) {
        const QModelIndex parentIndex = index(part, 0);
        Q_EMIT dataChanged(parentIndex, index(part, noteColumn));
        const int last = rowCount(parentIndex) - 1;
        if (last >= 0)
            Q_EMIT dataChanged(index(0, 0, parentIndex), index(last, noteColumn, parentIndex));
    }
}

std::optional<ZoneId> FindingTreeModel::zoneAt(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() == noParent)
        return std::nullopt;
    return m_parts[index.internalId()].zones[static_cast<std::size_t>(index.row())].zoneId;
}

QModelIndex FindingTreeModel::indexOf(ZoneId zone) const
{
    for (int part = 0; part < rowCount(); ++part) {
        const auto& zones = m_parts[static_cast<std::size_t>(part)].zones;
        const auto row = std::ranges::find(zones, zone, &ZoneRow::zoneId);
        if (row != zones.end())
            return index(static_cast<int>(row - zones.begin()), 0, index(part, 0));
    }
    return {};
}

VisitId FindingTreeModel::lastVisitOf(ZoneId zone) const
{
    if (!m_snapshot)
        return {};
    VisitId last;
    for (const Finding& finding : m_snapshot->record.findings) { // in order of date
        if (finding.zoneId == zone)
            last = finding.visitId;
    }
    return last;
}

QModelIndex FindingTreeModel::index(int row, int column, const QModelIndex& parent) const
{
    if (!hasIndex(row, column, parent))
        return {};
    return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row()) : noParent);
}

QModelIndex FindingTreeModel::parent(const QModelIndex& index) const
{
    if (!index.isValid() || index.internalId() == noParent)
        return {};
    return createIndex(static_cast<int>(index.internalId()), 0, noParent);
}

int FindingTreeModel::rowCount(const QModelIndex& parent) const
{
    if (!parent.isValid())
        return static_cast<int>(m_parts.size());
    if (parent.column() != 0 || parent.internalId() != noParent)
        return 0;
    return static_cast<int>(m_parts[static_cast<std::size_t>(parent.row())].zones.size());
}

int FindingTreeModel::columnCount(const QModelIndex&) const
{
    return columnsEnd;
}

QString FindingTreeModel::zoneText(const ZoneRow& zone, int column) const
{
    const ZoneHistory& history = *zone.history;
    switch (static_cast<Column>(column)) {
    case nameColumn:
        return zone.name;
    case gradeColumn:
        return {};
    case sinceColumn:
        return history.atGradeSince ? m_speaker.shownDate(*history.atGradeSince) : QString();
    case changeColumn:
        return history.delta ? changeText(*history.delta) : QString();
    case wetnessColumn:
        return history.lastWetness ? shown(m_speaker.translate(std::string(wordOf(*history.lastWetness)))) : QString();
    case notSeenColumn: {
        if (!history.notSeenSince)
            return history.lastSeen ? QString() : tr("never looked at");
        const QString since = history.timesNotSeen > 1
            ? tr("%n times since %1", nullptr, history.timesNotSeen).arg(m_speaker.shownDate(*history.notSeenSince))
            : tr("on %1").arg(m_speaker.shownDate(*history.notSeenSince));
        return history.lastNotSeenReason
            ? tr("%1: %2", "since when, reason")
                  .arg(since, shown(m_speaker.translate(std::string(wordOf(*history.lastNotSeenReason)))))
            : since;
    }
    case noteColumn:
        return zone.note;
    case columnsEnd:
        break;
    }
    return {};
}

QString FindingTreeModel::sentence(const PartRow& part, const ZoneRow& zone) const
{
    const ZoneHistory& history = *zone.history;
    QStringList said{tr("%1, %2", "part, zone").arg(part.name, zone.name)};
    if (history.lastSeen)
        said << tr("%1 %2 since %3", "numeral, word, date")
                    .arg(numeral(history.lastSeen->grade))
                    .arg(shown(m_speaker.translate(std::string(wordOf(history.lastSeen->grade)))),
                         m_speaker.shownDate(history.atGradeSince.value_or(history.lastSeen->on)));
    if (history.delta)
        said << changeText(*history.delta);
    if (!zoneText(zone, wetnessColumn).isEmpty())
        said << zoneText(zone, wetnessColumn);
    if (history.notSeenSince)
        said << tr("not seen %1").arg(zoneText(zone, notSeenColumn));
    if (!history.lastSeen && !history.notSeenSince)
        said << zoneText(zone, notSeenColumn);
    if (!zone.note.isEmpty())
        said << zone.note;
    return said.join(u", "_s);
}

QVariant FindingTreeModel::partData(const PartRow& part, int column, int role) const
{
    if (role == Qt::DisplayRole && column == nameColumn)
        return part.name;
    if (role == Qt::DisplayRole && column == noteColumn)
        return part.fitted;
    if (role == gradeRole && column == gradeColumn && part.worst)
        return numeral(*part.worst);
    if (role == Qt::FontRole && column == nameColumn) {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    if (role == Qt::AccessibleTextRole && column == nameColumn)
        return part.worst ? tr("%1, worst grade %2").arg(part.name).arg(numeral(*part.worst)) : part.name;
    return {};
}

QVariant FindingTreeModel::zoneData(const PartRow& part, const ZoneRow& zone, int column, int role) const
{
    switch (role) {
    case Qt::DisplayRole:
        return zoneText(zone, column);
    case Qt::AccessibleTextRole:
        return column == nameColumn ? sentence(part, zone) : zoneText(zone, column);
    case Qt::ToolTipRole:
        if (column == gradeColumn)
            return zone.meaning;
        return column == nameColumn ? sentence(part, zone) : zoneText(zone, column);
    case gradeRole:
        return zone.history->lastSeen ? QVariant(numeral(zone.history->lastSeen->grade)) : QVariant();
    case notSeenRole:
        return zone.history->notSeenSince.has_value();
    case worseRole:
        return zone.history->delta.value_or(0) > 0;
    default:
        return {};
    }
}

QVariant FindingTreeModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (index.internalId() == noParent)
        return partData(m_parts[static_cast<std::size_t>(index.row())], index.column(), role);
    const PartRow& part = m_parts[index.internalId()];
    return zoneData(part, part.zones[static_cast<std::size_t>(index.row())], index.column(), role);
}

QVariant FindingTreeModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (static_cast<Column>(section)) {
    case nameColumn:
        return tr("Part and zone");
    case gradeColumn:
        return tr("Grade");
    case sinceColumn:
        return tr("Since");
    case changeColumn:
        return tr("Change");
    case wetnessColumn:
        return tr("Wet or dry");
    case notSeenColumn:
        return tr("Not seen");
    case noteColumn:
        return tr("Last note");
    case columnsEnd:
        break;
    }
    return {};
}

} // namespace padside
