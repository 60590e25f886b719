// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/next_model.h"

#include "core/catalogue/subject.h"
#include "core/flags/acknowledge.h"
#include "ui/models/speaker.h"

#include <QStringList>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr std::size_t mostOutlooks = 4; // flags and checks are to stay in sight
constexpr double leastChanceTold = 0.02;
constexpr double likely = 0.1;
constexpr double gravelyLikely = 0.3;

} // namespace

NextModel::NextModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent)
    : QAbstractListModel(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
{
}

QString NextModel::placeOf(const UnitRecord& record, ZoneId zone) const
{
    const Part* part = partOfZone(record, zone);
    return part != nullptr ? m_speaker.said(
               Sentence{PADSIDE_SAY("{0}{1}, {2}"), subjectOf(record, m_catalogue, *part, findZone(record, zone))})
                           : QString();
}

NextModel::Row NextModel::outlookRow(const UnitSnapshot& snapshot, const LeadingOutlook& zone) const
{
    const double chance = zone.spent[static_cast<std::size_t>(Horizon::oneYear)].chance;
    Row row;
    row.kind = Kind::outlook;
    row.lead = m_speaker.shownChance(chance);
    row.main
        = tr("%1: %2", "place, when it is spent").arg(placeOf(snapshot.record, zone.zoneId), m_speaker.said(zone.when));
    QStringList reasons;
    for (const Sentence& because : zone.because)
        reasons << m_speaker.said(because);
    row.reason = reasons.join(u' ');
    row.weight = chance >= gravelyLikely ? 3 : chance >= likely ? 2 : 1;
    row.zone = zone.zoneId;
    return row;
}

std::vector<NextModel::Row> NextModel::outlookRows(const UnitSnapshot& snapshot) const
{
    std::vector<Row> rows;
    for (const LeadingOutlook& zone : snapshot.forecast.leading) {
        if (rows.size() == mostOutlooks
            || zone.spent[static_cast<std::size_t>(Horizon::oneYear)].chance < leastChanceTold)
            break; // the likeliest come first
        rows.push_back(outlookRow(snapshot, zone));
    }
    return rows;
}

NextModel::Row NextModel::flagRow(const UnitReview& review, std::size_t index) const
{
    const Flag& flag = review.flags[index];
    Row row;
    row.flag = index;
    row.kind = Kind::flag;
    row.lead = shown(m_speaker.translate(std::string(wordOf(flag.severity))));
    row.main = m_speaker.said(flag.sentence);
    row.reason = flag.clears.pattern.empty() ? QString() : tr("Cleared by: %1").arg(m_speaker.said(flag.clears));
    row.weight = 1 + static_cast<int>(flag.severity);
    row.zone = flag.zoneId;
    if (flag.acknowledged) {
        const FlagAcknowledged& said = *flag.acknowledged;
        const QString day = m_speaker.shownDate(said.on);
        row.reason = said.by.empty()
            ? tr("Acknowledged on %1: %2", "day, reason").arg(day, shown(said.reason))
            : tr("Acknowledged on %1 by %3: %2", "day, reason, person").arg(day, shown(said.reason), shown(said.by));
        row.weight = 0;
    }
    return row;
}

void NextModel::addFlagRows(std::vector<Row>& rows, const UnitSnapshot& snapshot) const
{
    const std::vector<Flag>& flags = snapshot.review.flags;
    const std::size_t standing = standingFlags(flags);
    rows.push_back(Row{Kind::heading, {}, tr("Flags: %1").arg(standing), {}, 0, {}});
    for (std::size_t i = 0; i < standing; ++i) // acknowledged ones stand last
        rows.push_back(flagRow(snapshot.review, i));
    if (flags.empty()) {
        const QString text = snapshot.record.visits.empty()
            ? tr("Nothing is known of this unit yet: the first visit will tell.")
            : tr("Nothing in the record gives a reason to worry.");
        rows.push_back(Row{Kind::nothing, {}, text, {}, 0, {}});
    }
    if (standing == flags.size())
        return;
    const std::size_t acknowledged = flags.size() - standing;
    rows.push_back(Row{Kind::fold,
                       {},
                       m_acknowledgedShown ? tr("▾ Acknowledged, not counted: %1").arg(acknowledged)
                                           : tr("▸ Acknowledged, not counted: %1").arg(acknowledged),
                       {},
                       0,
                       {}});
    for (std::size_t i = standing; m_acknowledgedShown && i < flags.size(); ++i)
        rows.push_back(flagRow(snapshot.review, i));
}

NextModel::Row NextModel::checkRow(const Check& check, Date today) const
{
    Row row;
    row.kind = Kind::check;
    const QString earliest = m_speaker.shownDate(check.earliest);
    const QString latest = m_speaker.shownDate(check.latest);
    if (check.latest < today)
        row.lead = tr("overdue since %1").arg(latest);
    else if (check.earliest <= today)
        row.lead = tr("by %1").arg(latest);
    else
        row.lead = tr("%1 to %2", "first and last day").arg(earliest, latest);
    row.main = m_speaker.said(check.what);
    QStringList needs;
    for (const Condition condition : check.conditions)
        needs << shown(m_speaker.translate(std::string(wordOf(condition))));
    row.reason = m_speaker.said(check.why);
    if (!needs.isEmpty())
        row.reason = tr("Needs: %1. %2", "conditions, reason").arg(needs.join(u", "_s), row.reason);
    row.weight = check.latest < today ? 3 : 0;
    row.zone = check.zoneId;
    return row;
}

std::vector<NextModel::Row> NextModel::rowsOf(const UnitSnapshot& snapshot) const
{
    const UnitReview& review = snapshot.review;
    std::vector<Row> rows;
    const auto heading = [&rows](const QString& text) { rows.push_back(Row{Kind::heading, {}, text, {}, 0, {}}); };
    const auto nothing = [&rows](const QString& text) { rows.push_back(Row{Kind::nothing, {}, text, {}, 0, {}}); };
    const std::vector<Row> outlooks = outlookRows(snapshot);
    if (!outlooks.empty()) {
        heading(tr("Likeliest to be spent within a year"));
        rows.insert(rows.end(), outlooks.begin(), outlooks.end());
    }
    addFlagRows(rows, snapshot);
    heading(tr("Next checks: %1").arg(review.checks.size()));
    for (const Check& check : review.checks)
        rows.push_back(checkRow(check, review.today));
    if (review.checks.empty())
        nothing(tr("No check is due."));
    return rows;
}

void NextModel::setSnapshot(const UnitSnapshotPtr& snapshot)
{
    if (!m_snapshot || m_snapshot->record.unit.id != snapshot->record.unit.id)
        m_acknowledgedShown = false;
    m_snapshot = snapshot;
    showRows(rowsOf(*snapshot));
}

void NextModel::showAcknowledged(bool shown)
{
    m_acknowledgedShown = shown;
    if (m_snapshot)
        showRows(rowsOf(*m_snapshot));
}

const Flag* NextModel::flagAt(const QModelIndex& index) const
{
    if (!index.isValid())
        return nullptr;
    const auto flag = m_rows[static_cast<std::size_t>(index.row())].flag;
    return flag ? &m_snapshot->review.flags[*flag] : nullptr;
}

bool NextModel::isFold(const QModelIndex& index) const
{
    return index.isValid() && m_rows[static_cast<std::size_t>(index.row())].kind == Kind::fold;
}

void NextModel::showRows(std::vector<Row> rows)
{
    if (rows == m_rows)
        return;
    if (rows.size() == m_rows.size()) {
        m_rows = std::move(rows);
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

std::optional<ZoneId> NextModel::zoneAt(const QModelIndex& index) const
{
    return index.isValid() ? m_rows[static_cast<std::size_t>(index.row())].zone : std::nullopt;
}

int NextModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant NextModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.main;
    case Qt::AccessibleTextRole:
        return QStringList{row.lead, row.main, row.reason}.join(u" "_s).trimmed();
    case kindRole:
        return static_cast<int>(row.kind);
    case leadRole:
        return row.lead;
    case reasonRole:
        return row.reason;
    case weightRole:
        return row.weight;
    default:
        return {};
    }
}

Qt::ItemFlags NextModel::flags(const QModelIndex& index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Kind kind = m_rows[static_cast<std::size_t>(index.row())].kind;
    const bool chosen = kind == Kind::outlook || kind == Kind::flag || kind == Kind::check || kind == Kind::fold;
    return chosen ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren
                  : Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
}

} // namespace padside
