// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/fleet_field.h"

#include <QStringList>

#include <functional>

class QPainter;

namespace padside {

struct Theme;

/// Everything a field is painted from. References: the picture lives only while it is painted.
struct FleetFieldPicture
{
    const std::vector<FieldUnit>& units;
    const FleetFieldGeometry& geometry;
    const Theme& theme;
    const QStringList& tollNames; ///< one for each toll
    std::function<QString(double)> shownChance; ///< "25 %"
    std::optional<std::size_t> chosen; ///< unit
    std::optional<std::size_t> pointed; ///< mark
};

/// Lines of equal chance, columns of equal toll with their names below, and the units as marks: the grade of the part
/// that speaks for each, and its tag; those gathered as their count above a strip of their grades.
void paintFleetField(QPainter& painter, const FleetFieldPicture& picture);

} // namespace padside
