// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"
#include "core/record/unit.h"
#include "core/review/toll.h"

#include <QRectF>
#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace padside {

/// One unit in the field: what a failure would cost, and how likely it is.
struct FieldUnit
{
    UnitId id;
    QString tag;
    Toll toll = Toll::looks;
    double chance = 0; ///< 0..1
    std::optional<Grade> grade; ///< worst known of the part that speaks for it

    friend bool operator==(const FieldUnit&, const FieldUnit&) = default;
};

/// Sizes in pixels; all follow from the letters.
struct FieldSizes
{
    double text = 12; ///< height of the letters
    double mark = 20; ///< height of a mark
    double markWidth = 80; ///< of the widest mark, tag and grade
    double axis = 44; ///< room for the chances at the left
    double names = 34; ///< room for the names of the tolls below

    [[nodiscard]] static FieldSizes forText(double pixels, double tagWidth, double axisWidth, double names);
};

/// Where a mark lies: one unit, or several that have no room side by side.
struct FieldMark
{
    QRectF area;
    std::vector<std::size_t> units; ///< into the units laid out, the likeliest first; never empty
    Toll toll = Toll::looks;

    [[nodiscard]] bool gathered() const { return units.size() > 1; }
};

/// A chance that is written at the left.
struct FieldLine
{
    double chance = 0;
    double y = 0;
};

/// The field laid out. Worse to the right, likelier above.
struct FleetFieldGeometry
{
    FieldSizes sizes;
    QRectF plot; ///< where marks may stand
    std::array<QRectF, tollCount> columns; ///< of the plot, from left to right
    std::vector<FieldLine> lines;
    std::vector<FieldMark> marks; ///< from left to right, the likeliest first

    [[nodiscard]] std::optional<std::size_t> markAt(const QPointF& point) const;
    [[nodiscard]] std::optional<std::size_t> markOf(std::size_t unit) const; ///< the mark a unit is in
};

/// How high a chance stands, 0..1 of the plot: its square root, so that small chances can be told apart.
[[nodiscard]] double heightOfChance(double chance);

/// Lays out the field over `area`. Units of one toll and about one chance stand side by side; where there is no room
/// for all of them they are gathered into one mark. Time grows with the units, not with their pairs.
[[nodiscard]] FleetFieldGeometry layOutFleetField(const std::vector<FieldUnit>& units, const FieldSizes& sizes,
                                                  const QRectF& area);

enum class FieldStep { left, right, up, down };

/// The next mark in a direction, what lies straight ahead before what is nearer but aside; the same if there is none.
[[nodiscard]] std::size_t markBeside(const FleetFieldGeometry& geometry, std::size_t mark, FieldStep step);

} // namespace padside
