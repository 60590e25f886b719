// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/cutaway.h"
#include "ui/drawing/cutaway_style.h"

#include <QByteArray>
#include <QPointF>
#include <QRectF>

#include <map>
#include <memory>
#include <optional>
#include <string>

class QPainter;
class QSvgRenderer;

namespace padside {

struct Theme;

/// Where a part stands in a drawing, in the drawing's own units.
struct CutawayPlace
{
    std::string code; ///< id of the element
    QRectF body;
    QPointF anchor; ///< where its mark goes by preference
};

/// One of our drawings of an opened unit, in a theme's inks.
class CutawayDrawing
{
public:
    /// The drawing of a unit kind; of a kind we have no drawing of, that of the split air conditioner.
    CutawayDrawing(const std::string& unitKind, const Theme& theme);
    ~CutawayDrawing();
    CutawayDrawing(const CutawayDrawing&) = delete;
    CutawayDrawing& operator=(const CutawayDrawing&) = delete;

    [[nodiscard]] QSizeF size() const { return m_size; }
    /// Empty if the drawing has no place for it (a part kind of the person's own).
    [[nodiscard]] std::optional<CutawayPlace> placeOf(const std::string& partKind, const std::string& position) const;

    /// Shows the surfaces of graded parts in their colours.
    void tint(const CutawayContent& content);
    void paint(QPainter& painter, const QRectF& area) const;
    /// Paints one place again as pointed at; `area` is that of the whole drawing.
    void paintLit(QPainter& painter, const QRectF& area, const CutawayPlace& place) const;

private:
    const Theme& m_theme;
    QByteArray m_svg;
    std::unique_ptr<QSvgRenderer> m_plain;
    mutable std::unique_ptr<QSvgRenderer> m_lit; ///< read when a part is first pointed at
    QPointF m_origin;
    QSizeF m_size;
    CutawayTints m_tints;
};

} // namespace padside
