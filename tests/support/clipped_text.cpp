// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/clipped_text.h"

#include <QAbstractButton>
#include <QAbstractItemModel>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

/// Text, the room it needs and the room it has.
struct Fit
{
    QString text;
    QSize needed;
    QSize room;

    [[nodiscard]] bool isCut() const { return needed.width() > room.width() || needed.height() > room.height(); }
};

Fit fitOf(const QLabel& label)
{
    const QSize room = label.size();
    if (label.text().isEmpty())
        return {};
    if (label.wordWrap())
        return {label.text(), {0, label.heightForWidth(room.width())}, room};
    return {label.text(), label.sizeHint(), room};
}

Fit fitOf(const QAbstractButton& button)
{
    if (button.hasHeightForWidth())
        return {button.accessibleName(), {0, button.heightForWidth(button.width())}, button.size()};
    if (button.text().isEmpty())
        return {};
    return {button.text(), button.minimumSizeHint(), button.size()};
}

Fit fitOf(const QLineEdit& edit)
{
    const QString text = edit.placeholderText();
    const int margins = 8; // the style's and the cursor's
    return {text, {edit.fontMetrics().horizontalAdvance(text) + margins, 0}, edit.contentsRect().size()};
}

class Search
{
public:
    QStringList found;

    void lookAt(const QWidget& widget)
    {
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            report(widget, fitOf(*label));
        else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
            report(widget, fitOf(*button));
        else if (const auto* edit = qobject_cast<const QLineEdit*>(&widget))
            report(widget, fitOf(*edit));
        else if (const auto* box = qobject_cast<const QComboBox*>(&widget))
            report(widget, {box->currentText(), box->minimumSizeHint(), box->size()});
        else if (const auto* group = qobject_cast<const QGroupBox*>(&widget))
            report(widget, {group->title(), {group->minimumSizeHint().width(), 0}, group->size()});
        else if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
            lookAtTabs(*tabs);
        else if (const auto* header = qobject_cast<const QHeaderView*>(&widget))
            lookAtHeader(*header);
        else if (const auto* area = qobject_cast<const QScrollArea*>(&widget))
            lookAtArea(*area);
    }

private:
    void report(const QWidget& widget, const Fit& fit)
    {
        if (!fit.isCut() || (!widget.toolTip().isEmpty() && widget.toolTip().contains(fit.text)))
            return;
        found << u"%1 %2 “%3” needs %4x%5, has %6x%7"_s
                     .arg(QLatin1String(widget.metaObject()->className()), widget.objectName(), fit.text)
                     .arg(fit.needed.width())
                     .arg(fit.needed.height())
                     .arg(fit.room.width())
                     .arg(fit.room.height());
    }

    void lookAtTabs(const QTabBar& tabs)
    {
        for (int tab = 0; tab < tabs.count(); ++tab) {
            const QRect place = tabs.tabRect(tab);
            const QString text = QString(tabs.tabText(tab)).remove(u'&');
            const QSize needed(tabs.fontMetrics().horizontalAdvance(text), 0);
            const bool outside = place.right() > tabs.width();
            if (tabs.tabToolTip(tab).contains(text) && !text.isEmpty())
                continue;
            report(tabs, {text, outside ? QSize(place.right(), 0) : needed, outside ? tabs.size() : place.size()});
        }
    }

    void lookAtHeader(const QHeaderView& header)
    {
        if (header.orientation() != Qt::Horizontal || !header.model())
            return;
        for (int section = 0; section < header.count(); ++section) {
            const QString text = header.model()->headerData(section, Qt::Horizontal).toString();
            if (header.isSectionHidden(section) || text.isEmpty()
                || header.model()->headerData(section, Qt::Horizontal, Qt::ToolTipRole).toString().contains(text))
                continue;
            const QSize needed(header.fontMetrics().horizontalAdvance(text), 0);
            report(header, {text, needed, {header.sectionSize(section), header.height()}});
        }
    }

    void lookAtArea(const QScrollArea& area)
    {
        if (area.widget() && area.widget()->width() > area.viewport()->width())
            report(area, {u"(what it scrolls)"_s, area.widget()->size(), {area.viewport()->width(), 1 << 20}});
    }
};

} // namespace

QStringList clippedTexts(const QWidget& window)
{
    Search search;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (widget->isVisible())
            search.lookAt(*widget);
    }
    return search.found;
}

} // namespace padside::test
