// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field_accessible.h"

#include "ui/drawing/fleet_field_view.h"

#include <QAccessibleWidget>

#include <vector>

namespace padside {

namespace {

/// One mark of the field. Marks have no objects of their own: it looks its number up in the view's geometry.
class FieldMarkAccessible final : public QAccessibleInterface, public QAccessibleActionInterface
{
public:
    FieldMarkAccessible(FleetFieldView* view, std::size_t index)
        : m_view(view)
        , m_index(index)
    {
    }

    bool isValid() const override { return m_index < m_view->geometryNow().marks.size(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_view); }
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
            return m_view->nameOf(m_index);
        return which == QAccessible::Description ? m_view->sentenceOf(m_index) : QString();
    }

    QRect rect() const override
    {
        if (!isValid())
            return {};
        return m_view->geometryNow().marks[m_index].area.toAlignedRect().translated(m_view->mapToGlobal(QPoint()));
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        state.invalid = !isValid();
        state.selected = isValid() && m_view->currentMark() == m_index;
        state.focused = state.selected && m_view->hasFocus();
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
            m_view->goTo(m_index);
    }

private:
    FleetFieldView* m_view;
    std::size_t m_index;
};

class FleetFieldAccessible final : public QAccessibleWidget
{
public:
    explicit FleetFieldAccessible(FleetFieldView* view)
        : QAccessibleWidget(view, QAccessible::List)
    {
    }

    ~FleetFieldAccessible() override
    {
        for (const QAccessible::Id id : m_children)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(view().geometryNow().marks.size()); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (m_children.size() <= static_cast<std::size_t>(index))
            m_children.push_back(QAccessible::registerAccessibleInterface(
                new FieldMarkAccessible(qobject_cast<FleetFieldView*>(widget()), m_children.size())));
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
        const auto mark = view().currentMark();
        return mark && view().hasFocus() ? child(static_cast<int>(*mark)) : nullptr;
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        const auto mark = view().geometryNow().markAt(view().mapFromGlobal(QPoint(x, y)));
        return mark ? child(static_cast<int>(*mark)) : nullptr;
    }

private:
    [[nodiscard]] const FleetFieldView& view() const { return *qobject_cast<FleetFieldView*>(widget()); }

    mutable std::vector<QAccessible::Id> m_children; ///< made when first asked for
};

QAccessibleInterface* makeFieldInterface(const QString&, QObject* object)
{
    auto* view = qobject_cast<FleetFieldView*>(object);
    return view ? new FleetFieldAccessible(view) : nullptr;
}

} // namespace

void installFleetFieldAccessibility()
{
    QAccessible::installFactory(makeFieldInterface); // installs the same factory once only
}

} // namespace padside
