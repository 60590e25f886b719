// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_accessible.h"

#include "ui/drawing/cutaway_view.h"

#include <QAccessibleWidget>

#include <algorithm>
#include <vector>

namespace padside {

namespace {

/// One part of the drawing. Parts have no objects of their own: it looks its number up in the view's content.
class PartAccessible final : public QAccessibleInterface, public QAccessibleActionInterface
{
public:
    PartAccessible(CutawayView* view, std::size_t index)
        : m_view(view)
        , m_index(index)
    {
    }

    bool isValid() const override { return m_index < m_view->content().parts.size(); }
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
        const CutawayPart& part = m_view->content().parts[m_index];
        if (which == QAccessible::Name)
            return part.name;
        return which == QAccessible::Description ? part.sentence : QString();
    }

    QRect rect() const override
    {
        if (!isValid())
            return {};
        const PlacedPart& placed = m_view->geometryNow().parts[m_index];
        return placed.body.united(placed.mark).toAlignedRect().translated(m_view->mapToGlobal(QPoint()));
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        state.invalid = !isValid();
        state.selected = isValid() && m_view->content().parts[m_index].id == m_view->current();
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
            m_view->activate(m_index);
    }

private:
    CutawayView* m_view;
    std::size_t m_index;
};

class CutawayAccessible final : public QAccessibleWidget
{
public:
    explicit CutawayAccessible(CutawayView* view)
        : QAccessibleWidget(view, QAccessible::List)
    {
    }

    ~CutawayAccessible() override
    {
        for (const QAccessible::Id id : m_children)
            QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(view().content().parts.size()); }

    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount())
            return nullptr;
        while (m_children.size() <= static_cast<std::size_t>(index))
            m_children.push_back(QAccessible::registerAccessibleInterface(
                new PartAccessible(qobject_cast<CutawayView*>(widget()), m_children.size())));
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
        const auto& parts = view().content().parts;
        const auto part = std::ranges::find(parts, view().current(), &CutawayPart::id);
        return part == parts.end() || !view().hasFocus() ? nullptr : child(static_cast<int>(part - parts.begin()));
    }

    QAccessibleInterface* childAt(int x, int y) const override
    {
        const auto part = view().geometryNow().partAt(view().mapFromGlobal(QPoint(x, y)));
        return part ? child(static_cast<int>(*part)) : nullptr;
    }

private:
    [[nodiscard]] const CutawayView& view() const { return *qobject_cast<CutawayView*>(widget()); }

    mutable std::vector<QAccessible::Id> m_children; ///< made when first asked for
};

QAccessibleInterface* makeInterface(const QString&, QObject* object)
{
    auto* view = qobject_cast<CutawayView*>(object);
    return view ? new CutawayAccessible(view) : nullptr;
}

} // namespace

void installCutawayAccessibility()
{
    QAccessible::installFactory(makeInterface); // installs the same factory once only
}

} // namespace padside
