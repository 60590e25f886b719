// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace padside {

namespace {

constexpr double gap = 4; ///< between marks
constexpr std::array writtenChances{0.0, 0.02, 0.1, 0.25, 0.5, 0.75, 1.0};

/// Those that stand at one height of one column, set side by side in its middle, or gathered.
void placeRow(FleetFieldGeometry& geometry, std::size_t column, double y, std::vector<std::size_t> units)
{
    const QRectF& room = geometry.columns[column];
    const double step = geometry.sizes.markWidth + gap;
    const auto fitting = static_cast<std::size_t>(std::max(1.0, std::floor((room.width() - gap) / step)));
    const auto toll = static_cast<Toll>(column);
    const double height = geometry.sizes.mark;
    const auto at = [&](double x, double width) { return QRectF(std::round(x), std::round(y), width, height); };
    if (units.size() > fitting) {
        const double width = std::min(geometry.sizes.markWidth, room.width() - 2 * gap);
        geometry.marks.push_back({at(room.center().x() - width / 2, width), std::move(units), toll});
        return;
    }
    const double width = std::min(geometry.sizes.markWidth, room.width() - 2 * gap);
    double x = room.center().x() - (static_cast<double>(units.size()) * step - gap) / 2;
    if (units.size() == 1)
        x = room.center().x() - width / 2;
    for (const std::size_t unit : units) {
        geometry.marks.push_back({at(x, width), {unit}, toll});
        x += step;
    }
}

} // namespace

FieldSizes FieldSizes::forText(double pixels, double tagWidth, double axisWidth, double names)
{
    FieldSizes sizes;
    sizes.text = pixels;
    sizes.mark = std::round(pixels * 1.7);
    sizes.markWidth = std::round(sizes.mark + tagWidth + 10);
    sizes.axis = std::round(axisWidth + 10);
    sizes.names = std::round(names);
    return sizes;
}

double heightOfChance(double chance)
{
    return std::sqrt(std::clamp(chance, 0.0, 1.0));
}

std::optional<std::size_t> FleetFieldGeometry::markAt(const QPointF& point) const
{
    const auto mark = std::ranges::find_if(
        marks, [&point](const FieldMark& one) { return one.area.adjusted(-1, -1, 1, 1).contains(point); });
    return mark == marks.end() ? std::nullopt : std::optional(static_cast<std::size_t>(mark - marks.begin()));
}

std::optional<std::size_t> FleetFieldGeometry::markOf(std::size_t unit) const
{
    const auto mark = std::ranges::find_if(
        marks, [unit](const FieldMark& one) { return std::ranges::find(one.units, unit) != one.units.end(); });
    return mark == marks.end() ? std::nullopt : std::optional(static_cast<std::size_t>(mark - marks.begin()));
}

FleetFieldGeometry layOutFleetField(const std::vector<FieldUnit>& units, const FieldSizes& sizes, const QRectF& area)
{
    FleetFieldGeometry geometry;
    geometry.sizes = sizes;
    geometry.plot = area.adjusted(sizes.axis, sizes.mark * 0.6, 0, -sizes.names);
    if (geometry.plot.width() < tollCount || geometry.plot.height() < sizes.mark) // no room for anything
        return geometry;
    const double width = geometry.plot.width() / static_cast<double>(tollCount);
    for (std::size_t column = 0; column < tollCount; ++column) {
        geometry.columns[column] = QRectF(geometry.plot.left() + width * static_cast<double>(column),
                                          geometry.plot.top(), width, geometry.plot.height());
    }
    // Marks have their height: the lowest chance stands half a mark above the ground, the highest half below the top.
    const double reach = geometry.plot.height() - sizes.mark;
    const auto middle
        = [&](double chance) { return geometry.plot.bottom() - sizes.mark / 2 - heightOfChance(chance) * reach; };
    for (const double chance : writtenChances)
        geometry.lines.push_back({chance, std::round(middle(chance))});

    const double rowHeight = sizes.mark + gap;
    const int rows = std::max(1, static_cast<int>(std::floor((reach + sizes.mark) / rowHeight)));
    const double between = rows > 1 ? reach / (rows - 1) : 0;
    std::map<std::pair<std::size_t, int>, std::vector<std::size_t>> cells; // by column, then from above
    for (std::size_t unit = 0; unit < units.size(); ++unit) {
        const int row = rows - 1 - static_cast<int>(std::lround(heightOfChance(units[unit].chance) * (rows - 1)));
        cells[{static_cast<std::size_t>(units[unit].toll), row}].push_back(unit);
    }
    for (auto& [cell, inCell] : cells) {
        std::ranges::stable_sort(inCell, std::greater{}, [&](std::size_t unit) { return units[unit].chance; });
        placeRow(geometry, cell.first, geometry.plot.top() + between * cell.second, std::move(inCell));
    }
    return geometry;
}

std::size_t markBeside(const FleetFieldGeometry& geometry, std::size_t mark, FieldStep step)
{
    const QPointF here = geometry.marks[mark].area.center();
    const bool across = step == FieldStep::left || step == FieldStep::right;
    const double sign = step == FieldStep::left || step == FieldStep::up ? -1 : 1;
    std::size_t best = mark;
    double least = 0;
    for (std::size_t other = 0; other < geometry.marks.size(); ++other) {
        const QPointF to = geometry.marks[other].area.center() - here;
        const double ahead = sign * (across ? to.x() : to.y());
        const double aside = std::abs(across ? to.y() : to.x());
        if (other == mark || ahead < 1)
            continue;
        // What lies straight ahead comes before what is near but aside.
        const double distance = ahead + 4 * aside;
        if (best == mark || distance < least) {
            best = other;
            least = distance;
        }
    }
    return best;
}

} // namespace padside
