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

    [[nodiscard]] QSizeF size() const;
    /// Empty if the drawing has no place for it (a part kind of the person's own).
    [[nodiscard]] std::optional<CutawayPlace> placeOf(const std::string& partKind, const std::string& position) const;

    /// Shows the surfaces of graded parts in their colours.
    void tint(const CutawayContent& content);
    void paint(QPainter& painter, const QRectF& area) const;
    /// Paints one place again as pointed at; `area` is that of the whole drawing.
    void paintLit(QPainter& painter, const QRectF& area, const CutawayPlace& place) const;

private:
    [[nodiscard]] QSvgRenderer& plain() const;
    [[nodiscard]] bool has(const QString& id) const; ///< told from the text, so that it is read once, tinted
    /// The id of the element where a part belongs: a place of its own, or that of its kind (which need not be there).
    [[nodiscard]] std::string codeOf(const std::string& partKind, const std::string& position) const;

    const Theme& m_theme;
    QByteArray m_svg;
    CutawayTints m_tints;
    mutable std::unique_ptr<QSvgRenderer> m_plain; ///< in its tints; read when first asked for
    mutable std::unique_ptr<QSvgRenderer> m_lit; ///< read when a part is first pointed at
    mutable std::map<std::string, CutawayPlace, std::less<>> m_places; ///< asked for; tints move none
};

} // namespace padside
