// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/next_delegate.h"

#include "ui/drawing/theme.h"
#include "ui/pages/unit/next_model.h"

#include <QAbstractItemView>
#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr int rowInset = 8;
constexpr int wordGap = 4; ///< right of the widest word
constexpr int rowGap = 3; ///< above and below a paragraph
constexpr int endless = 100'000;

QRect broken(const QFontMetrics& metrics, int width, const QString& text)
{
    return metrics.boundingRect(QRect(0, 0, width, endless), Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, text);
}

/// A percent sign stays on the line of its number.
QString shownText(const QModelIndex& index, int role)
{
    return index.data(role).toString().replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"));
}

bool hasWord(NextModel::Kind kind)
{
    return kind == NextModel::Kind::flag || kind == NextModel::Kind::outlook;
}

/// How wide the words of flags and the chances are in this language: all of them stand in one column.
int widestWord(const QFontMetrics& metrics, const QAbstractItemModel& model)
{
    int widest = metrics.horizontalAdvance(QStringLiteral("plan  ."));
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex index = model.index(row, 0);
        if (hasWord(static_cast<NextModel::Kind>(index.data(NextModel::kindRole).toInt())))
            widest = std::max(widest, metrics.horizontalAdvance(index.data(NextModel::leadRole).toString()) + wordGap);
    }
    return widest;
}

} // namespace

/// Where the texts of one row go; tops are counted from the row's top.
struct NextDelegate::Setting
{
    NextModel::Kind kind = NextModel::Kind::heading;
    QFont leadFont;
    QRect lead;
    QRect main;
    QRect reason;
    int height = 0;
};

NextDelegate::NextDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

NextDelegate::Setting NextDelegate::set(const QStyleOptionViewItem& option, const QModelIndex& index, int width) const
{
    Setting setting;
    setting.kind = static_cast<NextModel::Kind>(index.data(NextModel::kindRole).toInt());
    setting.leadFont = option.font;
    setting.leadFont.setBold(true);
    const QFontMetrics metrics(option.font);
    const QFontMetrics leadMetrics(setting.leadFont);
    const bool paragraph = setting.kind == NextModel::Kind::outlook || setting.kind == NextModel::Kind::flag
        || setting.kind == NextModel::Kind::check;
    // One column for the words of flags, one for the dates of checks.
    const int leadWidth = hasWord(setting.kind) ? widestWord(leadMetrics, *index.model())
        : paragraph                             ? leadMetrics.horizontalAdvance(QStringLiteral("to 0000-00-00 ."))
                                                : 0;
    const int left = rowInset + (paragraph ? leadWidth + rowInset : 0);
    const int textWidth = std::max(60, width - left - rowInset);
    const int top = setting.kind == NextModel::Kind::heading ? 2 * rowGap + 2 : rowGap + 2;
    const QFontMetrics& mainMetrics = setting.kind == NextModel::Kind::heading ? leadMetrics : metrics;
    setting.main = broken(mainMetrics, textWidth, shownText(index, Qt::DisplayRole)).translated(left, top);
    setting.lead
        = broken(leadMetrics, leadWidth, index.data(NextModel::leadRole).toString()).translated(rowInset + 4, top);
    const QString reason = shownText(index, NextModel::reasonRole);
    if (!reason.isEmpty())
        setting.reason = broken(metrics, textWidth, reason).translated(left, setting.main.bottom() + 2);
    int bottom = std::max(setting.main.bottom(), setting.reason.bottom());
    if (paragraph)
        bottom = std::max(bottom, setting.lead.bottom());
    setting.height = bottom + rowGap + 4;
    return setting;
}

void NextDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Setting setting = set(option, index, option.rect.width());
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const bool heading = setting.kind == NextModel::Kind::heading;
    const QRect row = option.rect;
    const QPoint origin = row.topLeft();
    painter->save();
    painter->setClipRect(row);
    painter->fillRect(row, chosen ? mixed(m_theme.accent, m_theme.panel, 0.16) : m_theme.panel);
    if (heading) {
        painter->setPen(QPen(m_theme.line, 1));
        painter->drawLine(row.bottomLeft() + QPoint(rowInset, 0), row.bottomRight() - QPoint(rowInset, 0));
    }
    const int weight = index.data(NextModel::weightRole).toInt();
    if (weight > 0)
        painter->fillRect(QRect(row.left(), row.top() + rowGap, 2 * weight - 1, row.height() - 2 * rowGap),
                          m_theme.ink);
    constexpr int flow = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
    painter->setFont(setting.leadFont);
    painter->setPen(weight == 1 ? m_theme.softInk : m_theme.ink);
    painter->drawText(setting.lead.translated(origin).adjusted(0, 0, 4, 0), flow,
                      index.data(NextModel::leadRole).toString());
    painter->setFont(heading ? setting.leadFont : option.font);
    painter->setPen(heading || setting.kind == NextModel::Kind::nothing ? m_theme.softInk : m_theme.ink);
    painter->drawText(setting.main.translated(origin).adjusted(0, 0, 4, 0), flow, shownText(index, Qt::DisplayRole));
    painter->setPen(m_theme.softInk);
    painter->setFont(option.font);
    painter->drawText(setting.reason.translated(origin).adjusted(0, 0, 4, 0), flow,
                      shownText(index, NextModel::reasonRole));
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(m_theme.accent, 1));
        painter->drawRect(row.adjusted(0, 0, -1, -1));
    }
    painter->restore();
}

QSize NextDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const int width = view ? view->viewport()->width() : option.rect.width();
    return {width, set(option, index, width).height};
}

} // namespace padside
