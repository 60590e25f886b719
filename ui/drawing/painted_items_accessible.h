// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAccessibleWidget>
#include <QRectF>

#include <vector>

namespace padside {

/// One thing in a painted view, told to assistive technology as an item of a list. Such things have no objects of their
/// own: an item has its number and looks in the view. `Items` tells it of the view:
///
///     using View = …; View* view;
///     count(), name(index), sentence(index), area(index) in the view, current() (empty: none),
///     at(point in the view) (empty: nothing there), press(index)
template <typename Items>
class PaintedItemAccessible final : public QAccessibleInterface, public QAccessibleActionInterface
{
public:
    PaintedItemAccessible(Items items, std::size_t index)
        : m_items(items)
        , m_index(index)
    {
    }

    bool isValid() const override { return m_index < m_items.count(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_items.view); }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text, const QString&) override { }

    QString text(QAccessible::Text which) const override
    {
        if (!isValid())
            return {};
        if (which == QAccessible::Name)
            return m_items.name(m_index);
        return which == QAccessible::Description ? m_items.sentence(m_index) : QString();
    }

    QRect rect() const override
    {
        if (!isValid())
            return {};
        return m_items.area(m_index).toAlignedRect().translated(m_items.view->mapToGlobal(QPoint()));
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        state.invalid = !isValid();
        state.selected = isValid() && m_items.current() == m_index;
        state.focused = state.selected && m_items.view->hasFocus();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    QStringList actionNames() const override { return {pressAction()}; }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }
    void doAction(const QString& name) override
    {
        if (name == pressAction() && isValid())
            m_items.press(m_index);
    }

private:
    Items m_items;
    std::size_t m_index;
};

/// A painted view as a list of its things.
template <typename Items> class PaintedItemsAccessible final : public QAccessibleWidget
{
public:
    explicit PaintedItemsAccessible(typename Items::View* view)
        : QAccessibleWidget(view, QAccessible::List)
    {
    }

    ~PaintedItemsAccessible() override
    {
        for (const QAccessible::Id id : m_children)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(items().count()); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (m_children.size() <= static_cast<std::size_t>(index))
            m_children.push_back(
                QAccessible::registerAccessibleInterface(new PaintedItemAccessible<Items>(items(), m_children.size())));
        return QAccessible::accessibleInterface(m_children[static_cast<std::size_t>(index)]);
    }

    int indexOfChild(const QAccessibleInterface* one) const override
    {
        for (int index = 0; index < childCount(); ++index) {
            if (child(index) == one)
                return index;
        }
        return -1;
    }

    QAccessibleInterface* focusChild() const override
    {
        const auto current = items().current();
        return current && widget()->hasFocus() ? child(static_cast<int>(*current)) : nullptr;
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        const auto at = items().at(widget()->mapFromGlobal(QPoint(x, y)));
        return at ? child(static_cast<int>(*at)) : nullptr;
    }

private:
    [[nodiscard]] Items items() const { return Items{qobject_cast<typename Items::View*>(widget())}; }

    mutable std::vector<QAccessible::Id> m_children; ///< made when first asked for
};

/// A factory for QAccessible::installFactory.
template <typename Items> QAccessibleInterface* makePaintedItemsInterface(const QString&, QObject* object)
{
    auto* view = qobject_cast<typename Items::View*>(object);
    return view ? new PaintedItemsAccessible<Items>(view) : nullptr;
}

} // namespace padside
