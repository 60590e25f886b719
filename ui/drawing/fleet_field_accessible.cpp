// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field_accessible.h"

#include "ui/drawing/fleet_field_view.h"
#include "ui/drawing/painted_items_accessible.h"

namespace padside {

namespace {

struct FieldMarks
{
    using View = FleetFieldView;
    View* view;

    [[nodiscard]] std::size_t count() const { return view->geometryNow().marks.size(); }
    [[nodiscard]] QString name(std::size_t mark) const { return view->nameOf(mark); }
    [[nodiscard]] QString sentence(std::size_t mark) const { return view->sentenceOf(mark); }
    [[nodiscard]] QRectF area(std::size_t mark) const { return view->geometryNow().marks[mark].area; }
    [[nodiscard]] std::optional<std::size_t> current() const { return view->currentMark(); }
    [[nodiscard]] std::optional<std::size_t> at(const QPoint& point) const { return view->geometryNow().markAt(point); }
    void press(std::size_t mark) const { view->goTo(mark); }
};

} // namespace

void installFleetFieldAccessibility()
{
    QAccessible::installFactory(makePaintedItemsInterface<FieldMarks>); // installs the same factory once only
}

} // namespace padside
