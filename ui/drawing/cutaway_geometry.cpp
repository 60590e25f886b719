// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_geometry.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace padside {

namespace {

constexpr double markShare = 0.036; ///< of the drawing's width
constexpr double smallestMark = 15;
constexpr double largestMark = 30;
constexpr double tailShare = 0.55; ///< the hatched tail of a grade that is not up to date
constexpr int directions = 24;

QRectF around(const QPointF& centre, const QSizeF& size)
{
    return {centre.x() - size.width() / 2, centre.y() - size.height() / 2, size.width(), size.height()};
}

QPointF nearestOn(const QRectF& area, const QPointF& point)
{
    return {std::clamp(point.x(), area.left(), area.right()), std::clamp(point.y(), area.top(), area.bottom())};
}

bool isFree(const QRectF& mark, std::span<const QRectF> taken, double gap)
{
    const QRectF wide = mark.adjusted(-gap, -gap, gap, gap);
    return std::ranges::none_of(taken, [&wide](const QRectF& one) { return one.intersects(wide); });
}

/// The free place nearest to the anchor, on growing rings around it.
std::optional<QRectF> nearestFree(const MarkWish& wish, const QRectF& within, std::span<const QRectF> taken, double gap)
{
    const double reach = std::hypot(within.width(), within.height());
    const double step = wish.size.height() / 3;
    for (double radius = 0; radius < reach; radius += step) {
        for (int i = 0; i < (radius > 0 ? directions : 1); ++i) {
            const double angle = 2 * std::numbers::pi * i / directions;
            const QRectF mark = around(wish.anchor + radius * QPointF(std::cos(angle), std::sin(angle)), wish.size);
            if (within.contains(mark) && isFree(mark, taken, gap))
                return mark;
        }
    }
    return std::nullopt;
}

/// From the edge of the mark to the nearest point of the part; none if they touch.
std::optional<QLineF> leaderOf(const QRectF& mark, const QRectF& body)
{
    if (mark.intersects(body))
        return std::nullopt;
    const QPointF to = nearestOn(body, mark.center());
    return QLineF(nearestOn(mark, to), to);
}

QRectF scaled(const QRectF& area, double scale, const QPointF& origin)
{
    return {origin + area.topLeft() * scale, area.size() * scale};
}

} // namespace

std::vector<QRectF> placeMarks(std::span<const MarkWish> wishes, const QRectF& within, double gap)
{
    std::vector<std::size_t> order(wishes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {},
                             [&wishes](std::size_t i) { return wishes[i].body.width() * wishes[i].body.height(); });
    std::vector<QRectF> marks(wishes.size());
    std::vector<QRectF> taken;
    for (const std::size_t i : order) {
        const MarkWish& wish = wishes[i];
        marks[i] = nearestFree(wish, within, taken, gap).value_or(around(wish.anchor, wish.size));
        taken.push_back(marks[i]);
    }
    return marks;
}

CutawayGeometry layOutCutaway(const CutawayContent& content, const CutawayDrawing& drawing, const QRectF& area)
{
    CutawayGeometry geometry;
    const QSizeF size = drawing.size();
    std::vector<std::optional<CutawayPlace>> places;
    bool strip = false; // a row beneath for what the drawing does not know
    for (const CutawayPart& part : content.parts) {
        places.push_back(drawing.placeOf(part.kind, part.position));
        strip = strip || !places.back();
    }
    const auto markFor = [](double width) { return std::clamp(width * markShare, smallestMark, largestMark); };
    const double foot = strip ? markFor(area.width()) * 1.6 : 0;
    const double scale = std::max(0.01, std::min(area.width() / size.width(), (area.height() - foot) / size.height()));
    const QSizeF shown = size * scale;
    geometry.drawing = QRectF(area.left() + (area.width() - shown.width()) / 2,
                              area.top() + (area.height() - foot - shown.height()) / 2, shown.width(), shown.height());
    geometry.whole = geometry.drawing.adjusted(0, 0, 0, foot);
    geometry.markHeight = markFor(shown.width());

    const double high = geometry.markHeight;
    std::vector<MarkWish> wishes;
    double next = geometry.drawing.left() + high;
    for (std::size_t i = 0; i < content.parts.size(); ++i) {
        const bool tail = content.parts[i].grade && content.parts[i].notSeen;
        MarkWish wish{{}, {}, QSizeF(high * (tail ? 1.1 + tailShare : 1.1), high)};
        if (places[i]) {
            wish.body = scaled(places[i]->body, scale, geometry.drawing.topLeft());
            wish.anchor = geometry.drawing.topLeft() + places[i]->anchor * scale;
        } else {
            wish.anchor = QPointF(next, geometry.drawing.bottom() + foot / 2);
            wish.body = around(wish.anchor, wish.size);
            next += high * 2.2;
        }
        wishes.push_back(wish);
    }
    const auto marks = placeMarks(wishes, geometry.whole.adjusted(1, 1, -1, -1), 2);
    for (std::size_t i = 0; i < content.parts.size(); ++i)
        geometry.parts.push_back(
            PlacedPart{i, places[i], wishes[i].body, marks[i], leaderOf(marks[i], wishes[i].body)});
    return geometry;
}

std::optional<std::size_t> CutawayGeometry::partAt(const QPointF& point) const
{
    const auto onMark = std::ranges::find_if(
        parts, [&point](const PlacedPart& one) { return one.mark.adjusted(-2, -2, 2, 2).contains(point); });
    if (onMark != parts.end())
        return onMark->part;
    std::optional<std::size_t> smallest;
    double least = std::numeric_limits<double>::max();
    for (const PlacedPart& one : parts) {
        const double surface = one.body.width() * one.body.height();
        if (one.body.contains(point) && surface < least) {
            least = surface;
            smallest = one.part;
        }
    }
    return smallest;
}

std::optional<std::size_t> partBeside(const CutawayGeometry& geometry, std::size_t from, Direction direction)
{
    const QPointF here = geometry.parts[from].mark.center();
    std::optional<std::size_t> best;
    double least = std::numeric_limits<double>::max();
    for (const PlacedPart& one : geometry.parts) {
        const QPointF away = one.mark.center() - here;
        const bool level = direction == Direction::left || direction == Direction::right;
        const bool forward = direction == Direction::right || direction == Direction::down;
        const double ahead = (level ? away.x() : away.y()) * (forward ? 1 : -1);
        const double aside = std::abs(level ? away.y() : away.x());
        if (one.part == from || ahead <= 0.5)
            continue;
        const double cost = ahead + 2.5 * aside;
        if (cost < least) {
            least = cost;
            best = one.part;
        }
    }
    return best;
}

std::optional<std::size_t> firstPart(const CutawayGeometry& geometry, bool last)
{
    if (geometry.parts.empty())
        return std::nullopt;
    const auto reading = [](const PlacedPart& one) { return one.mark.center().x() + 2 * one.mark.center().y(); };
    const auto found = last ? std::ranges::max_element(geometry.parts, {}, reading)
                            : std::ranges::min_element(geometry.parts, {}, reading);
    return found->part;
}

} // namespace padside
