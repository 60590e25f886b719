// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/horizon_model.h"

#include "core/track/track_words.h"
#include "ui/models/speaker.h"

namespace padside {

namespace {

constexpr double worstShown = -1; ///< twice as bad; beyond it a number says nothing more

QString nothing()
{
    return QStringLiteral("–");
}

QVariant alignment(int column)
{
    return QVariant::fromValue((column == HorizonModel::within ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
}

} // namespace

HorizonModel::HorizonModel(const LocalSpeaker& speaker, QObject* parent)
    : QAbstractTableModel(parent)
    , m_speaker(speaker)
{
}

void HorizonModel::setHorizons(const std::array<Scores, horizonCount>& horizons)
{
    m_horizons = horizons;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

int HorizonModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(horizonCount);
}

int HorizonModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columns;
}

QString HorizonModel::number(double value, int decimals) const
{
    return shown(m_speaker.number(value, decimals));
}

QString HorizonModel::better(const std::optional<double>& skill) const
{
    if (!skill)
        return nothing();
    if (*skill < worstShown)
        return tr("far worse");
    return tr("%1 %").arg(number(*skill * 100, 0));
}

QString HorizonModel::text(std::size_t horizon, int column) const
{
    const Scores& scores = m_horizons[horizon];
    switch (column) {
    case within:
        return shown(m_speaker.translate(horizonWord(horizon).english));
    case told:
        return number(static_cast<double>(scores.settled), 0);
    case zones:
        return number(static_cast<double>(scores.zones), 0);
    case waiting:
        return number(static_cast<double>(scores.waiting), 0);
    case untold:
        return number(static_cast<double>(scores.untold), 0);
    default:
        break;
    }
    if (scores.settled == 0)
        return nothing();
    switch (column) {
    case spent:
        return number(static_cast<double>(scores.spent), 0);
    case expected:
        return number(scores.expected, 1);
    case brier:
        return number(scores.brier, 4);
    case brierOfShare:
        return number(scores.baseBrier, 4);
    case brierBetter:
        return better(scores.brierSkill);
    case logScore:
        return number(scores.logScore, 3);
    case logOfShare:
        return number(scores.baseLog, 3);
    default:
        return better(scores.logSkill);
    }
}

QVariant HorizonModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return text(static_cast<std::size_t>(index.row()), index.column());
    if (role == Qt::TextAlignmentRole)
        return alignment(index.column());
    return {};
}

QVariant HorizonModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columns)
        return {};
    const std::array<QString, columns> names{
        tr("Spent within"), tr("Settled"),      tr("Zones"),        tr("Found spent"), tr("Expected"),
        tr("Brier score"),  tr("of the share"), tr("better by"),    tr("Log score"),   tr("of the share"),
        tr("better by"),    tr("Waiting"),      tr("Never settled")};
    const std::array<QString, columns> meanings{
        tr("How far ahead it was said, from the day of the visit"),
        tr("Forecasts whose day is past and that a later visit has settled"),
        tr("So many zones they are about"),
        tr("Of those settled"),
        tr("The sum of the chances of those settled"),
        tr("Mean square of the chance said less what came; 0 is best"),
        tr("The Brier score of always saying the share that was found spent"),
        tr("How much better the Brier score is than that of the share; below 0 it is worse"),
        tr("Mean of minus the logarithm of the chance given to what came; 0 is best"),
        tr("The log score of always saying the share that was found spent"),
        tr("How much better the log score is than that of the share; below 0 it is worse"),
        tr("Their day is to come, or nobody has looked since"),
        tr("Replaced, made good, cleaned or retired in time, or the day lies between two visits that found it "
           "otherwise")};
    if (role == Qt::DisplayRole)
        return names[static_cast<std::size_t>(section)];
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole)
        return meanings[static_cast<std::size_t>(section)];
    return role == Qt::TextAlignmentRole ? alignment(section) : QVariant();
}

} // namespace padside
