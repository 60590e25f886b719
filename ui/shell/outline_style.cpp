// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/outline_style.h"

#include "ui/drawing/focus_outline.h"

#include <QAbstractScrollArea>
#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

#include <algorithm>

namespace padside {

namespace {

constexpr int tabPadding = 14; ///< left and right of a tab's word together: five stand side by side on a small screen

bool hasFocus(const QStyleOption& option)
{
    return option.state.testFlag(QStyle::State_HasFocus);
}

/// A button that is one of several choices, and chosen.
QStyleOptionButton chosen(QStyleOptionButton option)
{
    if (option.state.testFlag(QStyle::State_On)) {
        option.palette.setColor(QPalette::Button, option.palette.color(QPalette::Highlight));
        option.palette.setColor(QPalette::ButtonText, option.palette.color(QPalette::HighlightedText));
    }
    option.state.setFlag(QStyle::State_HasFocus, false); // the outline below says it better
    return option;
}

bool isPressed(QStyle::ContentsType type)
{
    switch (type) {
    case QStyle::CT_PushButton:
    case QStyle::CT_ToolButton:
    case QStyle::CT_CheckBox:
    case QStyle::CT_RadioButton:
    case QStyle::CT_ComboBox:
    case QStyle::CT_LineEdit:
    case QStyle::CT_SpinBox:
    case QStyle::CT_TabBarTab:
    case QStyle::CT_MenuBarItem:
    case QStyle::CT_MenuItem:
    case QStyle::CT_ItemViewItem:
        return true;
    default:
        return false;
    }
}

/// An empty box of Qt's is told from its ground by a darker line only, which a dark ground swallows.
void paintBox(QPainter& painter, const QStyleOption& option)
{
    painter.save();
    painter.setPen(
        option.palette.color(option.state.testFlag(QStyle::State_Enabled) ? QPalette::Normal : QPalette::Disabled,
                             QPalette::PlaceholderText));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(option.rect.adjusted(0, 0, -1, -1));
    painter.restore();
}

bool isDark(const QStyleOption& option)
{
    constexpr int middle = 128;
    return option.palette.color(QPalette::Window).lightness() < middle;
}

bool isSeparator(const QStyleOption* option)
{
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    return item && item->menuItemType == QStyleOptionMenuItem::Separator;
}

} // namespace

OutlineStyle::OutlineStyle(const Size& size)
    : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion")))
    , m_size(size)
{
}

void OutlineStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                 const QWidget* widget) const
{
    if (element == PE_FrameFocusRect) {
        paintFocusOutline(*painter, option->rect, option->palette);
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
    const bool isField = element == PE_PanelLineEdit && frame && frame->lineWidth > 0;
    if (isField && hasFocus(*option))
        paintFocusOutline(*painter, option->rect, option->palette);
    else if (element == PE_IndicatorCheckBox || (isField && isDark(*option)))
        paintBox(*painter, *option);
}

void OutlineStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const
{
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
    if (button && (element == CE_PushButton || element == CE_CheckBox || element == CE_RadioButton)) {
        QStyleOptionButton quiet = element == CE_PushButton ? chosen(*button) : *button;
        quiet.state.setFlag(State_HasFocus, false);
        QProxyStyle::drawControl(element, &quiet, painter, widget);
    } else {
        QProxyStyle::drawControl(element, option, painter, widget);
    }
    const bool field = element == CE_ShapedFrame && qobject_cast<const QAbstractScrollArea*>(widget);
    if (hasFocus(*option) && (button || field))
        paintFocusOutline(*painter, option->rect, option->palette);
}

void OutlineStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                                      const QWidget* widget) const
{
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (hasFocus(*option) && (control == CC_ComboBox || control == CC_SpinBox || control == CC_ToolButton))
        paintFocusOutline(*painter, option->rect, option->palette);
}

QSize OutlineStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                     const QWidget* widget) const
{
    const QSize usual = QProxyStyle::sizeFromContents(type, option, contents, widget);
    if (!isPressed(type) || isSeparator(option))
        return usual;
    const bool wide = type == CT_PushButton || type == CT_ToolButton || type == CT_TabBarTab;
    return {wide ? std::max(usual.width(), m_size.entry) : usual.width(), std::max(usual.height(), m_size.entry)};
}

int OutlineStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    if (metric == PM_TabBarTabHSpace)
        return tabPadding;
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    return metric == PM_ScrollBarExtent ? std::max(usual, m_size.scrollBar) : usual;
}

int OutlineStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                            QStyleHintReturn* answer) const
{
    if (hint == SH_DialogButtonBox_ButtonsHaveIcons)
        return 0; // words say it, without green and red
    return QProxyStyle::styleHint(hint, option, widget, answer);
}

} // namespace padside
