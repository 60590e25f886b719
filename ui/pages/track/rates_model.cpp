// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/rates_model.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/track/rates_words.h"

#include <algorithm>
#include <array>
#include <functional>
#include <utility>

namespace padside {

namespace {

QVariant alignmentOf(int column)
{
    return QVariant::fromValue((column == RatesModel::kind ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
}

} // namespace

RatesModel::RatesModel(const RecordBook& book, QObject* parent)
    : QAbstractTableModel(parent)
    , m_book(book)
{
}

void RatesModel::setLessons(std::vector<KindLesson> lessons)
{
    beginResetModel();
    m_lessons = std::move(lessons);
    // Where the records say most comes first.
    std::ranges::stable_sort(m_lessons, std::greater{}, &KindLesson::dataShare);
    m_chosen.assign(m_lessons.size(), false);
    endResetModel();
    Q_EMIT choiceChanged();
}

bool RatesModel::anyLearnt() const
{
    return std::ranges::any_of(m_lessons, [](const KindLesson& one) { return one.learnt.has_value(); });
}

std::vector<KindLesson> RatesModel::chosen() const
{
    std::vector<KindLesson> all;
    for (std::size_t row = 0; row < m_lessons.size(); ++row) {
        if (m_chosen[row])
            all.push_back(m_lessons[row]);
    }
    return all;
}

void RatesModel::chooseAll(bool chosen)
{
    if (m_lessons.empty())
        return;
    m_chosen.assign(m_lessons.size(), chosen);
    Q_EMIT dataChanged(index(0, kind), index(rowCount() - 1, kind), {Qt::CheckStateRole});
    Q_EMIT choiceChanged();
}

int RatesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lessons.size());
}

int RatesModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : columns;
}

QString RatesModel::text(const KindLesson& lesson, int column) const
{
    switch (column) {
    case kind:
        return lessonName(m_book, lesson);
    case ours:
        return yearsText(m_book, lesson.prior.medianLife);
    case inUse:
        return yearsText(m_book, lesson.inUse.medianLife);
    case gradesInUse:
        return gradeYearsText(m_book, lesson.inUse);
    case inUseSince:
        return lesson.learntOn ? m_book.speaker().shownDate(*lesson.learntOn) : QStringLiteral("–");
    default:
        break;
    }
    if (!lesson.learnt)
        return QStringLiteral("–");
    switch (column) {
    case evidence:
        return tr("%1 zones, %2 grades").arg(lesson.zonesUsed).arg(lesson.sightings);
    case learnt:
        return yearsText(m_book, lesson.learntLife.medianLife);
    case spread:
        return tr("%1 to %2").arg(yearsText(m_book, lesson.lowLife), yearsText(m_book, lesson.highLife));
    case gradesLearnt:
        return gradeYearsText(m_book, lesson.learntLife);
    default:
        return shareText(m_book, lesson.dataShare);
    }
}

QVariant RatesModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    const auto row = static_cast<std::size_t>(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return text(m_lessons[row], index.column());
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole:
        return lessonText(m_book, m_lessons[row]);
    case Qt::CheckStateRole:
        return index.column() == kind ? QVariant(m_chosen[row] ? Qt::Checked : Qt::Unchecked) : QVariant();
    case Qt::TextAlignmentRole:
        return alignmentOf(index.column());
    default:
        return {};
    }
}

bool RatesModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    if (!index.isValid() || index.column() != kind || role != Qt::CheckStateRole)
        return false;
    m_chosen[static_cast<std::size_t>(index.row())] = value.toInt() == Qt::Checked;
    Q_EMIT dataChanged(index, index, {Qt::CheckStateRole});
    Q_EMIT choiceChanged();
    return true;
}

Qt::ItemFlags RatesModel::flags(const QModelIndex& index) const
{
    const Qt::ItemFlags usual = QAbstractTableModel::flags(index);
    return index.column() == kind ? usual | Qt::ItemIsUserCheckable : usual;
}

QVariant RatesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columns)
        return {};
    const std::array<QString, columns> names{
        tr("Part"),           tr("Ours, years"), tr("In use, years"),    tr("in grades 1 to 4"), tr("In use since"),
        tr("Learned, years"), tr("Between"),     tr("in grades 1 to 4"), tr("Your records"),     tr("From records")};
    const std::array<QString, columns> meanings{
        tr("The kind of part; dirt on its zones is learned by itself"),
        tr("Years from sound to spent of the middle one of many, as we assume"),
        tr("Years from sound to spent that forecasts rest on now"),
        tr("Years of one zone in grade 1, 2, 3 and 4 that forecasts rest on now"),
        tr("The day on which what is in use was learned; ours where there is none"),
        tr("Years from sound to spent that your records and our assumption together say"),
        tr("One standard error to either side of the years learned"),
        tr("Years of one zone in grade 1, 2, 3 and 4 as learned"),
        tr("How many zones taught something, and how many grades were seen of them"),
        tr("How much of what is known comes from your records; the rest is our assumption")};
    if (role == Qt::DisplayRole)
        return names[static_cast<std::size_t>(section)];
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole)
        return meanings[static_cast<std::size_t>(section)];
    return role == Qt::TextAlignmentRole ? alignmentOf(section) : QVariant();
}

} // namespace padside
