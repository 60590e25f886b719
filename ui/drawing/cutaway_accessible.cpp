// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_accessible.h"

#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/painted_items_accessible.h"

#include <algorithm>

namespace padside {

namespace {

struct CutawayParts
{
    using View = CutawayView;
    View* view;

    [[nodiscard]] std::size_t count() const { return view->content().parts.size(); }
    [[nodiscard]] QString name(std::size_t part) const { return view->content().parts[part].name; }
    [[nodiscard]] QString sentence(std::size_t part) const { return view->content().parts[part].sentence; }
    [[nodiscard]] QRectF area(std::size_t part) const
    {
        const PlacedPart& placed = view->geometryNow().parts[part];
        return placed.body.united(placed.mark);
    }
    [[nodiscard]] std::optional<std::size_t> current() const
    {
        const auto& parts = view->content().parts;
        const auto part = std::ranges::find(parts, view->current(), &CutawayPart::id);
        return part == parts.end() ? std::nullopt : std::optional(static_cast<std::size_t>(part - parts.begin()));
    }
    [[nodiscard]] std::optional<std::size_t> at(const QPoint& point) const { return view->geometryNow().partAt(point); }
    void press(std::size_t part) const { view->activate(part); }
};

} // namespace

void installCutawayAccessibility()
{
    QAccessible::installFactory(makePaintedItemsInterface<CutawayParts>); // installs the same factory once only
}

} // namespace padside
