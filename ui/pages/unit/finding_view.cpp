// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/finding_view.h"

#include "ui/drawing/theme.h"
#include "ui/pages/unit/finding_tree_model.h"
#include "ui/pages/unit/grade_delegate.h"

#include <QHeaderView>
#include <QPainter>

#include <algorithm>
#include <array>

namespace padside {

namespace {

constexpr int leastName = 130;
constexpr int leastText = 70;
constexpr int leastForWords = 300; ///< for name, reason and note together

} // namespace

FindingView::FindingView(const Theme& theme, QWidget* parent)
    : QTreeView(parent)
    , m_theme(theme)
{
    setItemDelegateForColumn(FindingTreeModel::gradeColumn, new GradeDelegate(theme, this));
    setUniformRowHeights(true);
    setAllColumnsShowFocus(true);
    setIndentation(14);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setExpandsOnDoubleClick(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff); // the columns share what there is
    header()->setStretchLastSection(true);
    header()->setSectionsMovable(false);
    header()->setMinimumSectionSize(40);
    setMinimumWidth(300);
}

void FindingView::shareWidth()
{
    if (!model() || model()->columnCount() < FindingTreeModel::columnsEnd)
        return;
    // Where there is little room the least needed columns go first; a row's tooltip tells everything.
    constexpr std::array inOrderOfNeed{FindingTreeModel::gradeColumn, FindingTreeModel::sinceColumn,
                                       FindingTreeModel::changeColumn, FindingTreeModel::wetnessColumn};
    int rest = viewport()->width();
    for (const FindingTreeModel::Column column : inOrderOfNeed) {
        setColumnHidden(column, false);
        const int width = std::max(sizeHintForColumn(column), header()->sectionSizeHint(column));
        const bool fits = column == FindingTreeModel::gradeColumn || rest - width >= leastForWords;
        setColumnHidden(column, !fits);
        setColumnWidth(column, width);
        rest -= fits ? width : 0;
    }
    const int nameNeed = sizeHintForColumn(FindingTreeModel::nameColumn);
    const int name = std::clamp(rest * 45 / 100, leastName, std::max(leastName, nameNeed));
    rest -= name;
    const int reasonNeed = std::max(sizeHintForColumn(FindingTreeModel::notSeenColumn),
                                    header()->sectionSizeHint(FindingTreeModel::notSeenColumn));
    setColumnWidth(FindingTreeModel::nameColumn, name);
    setColumnWidth(FindingTreeModel::notSeenColumn, std::clamp(rest / 2, leastText, std::max(leastText, reasonNeed)));
}

void FindingView::resizeEvent(QResizeEvent* event)
{
    QTreeView::resizeEvent(event);
    shareWidth();
}

void FindingView::paintEvent(QPaintEvent* event)
{
    QTreeView::paintEvent(event);
    if (!model() || model()->rowCount() > 0)
        return;
    QPainter painter(viewport());
    painter.setPen(m_theme.softInk);
    painter.drawText(viewport()->rect().adjusted(16, 0, -16, 0), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("No parts have been written down for this unit."));
}

} // namespace padside
