// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_geometry.h"
#include "ui/drawing/timeline_words.h"

#include <QAbstractScrollArea>

namespace padside {

struct Theme;

/// A unit's history to look at and walk through: names stay at the left, years at the top. Arrow keys go from mark to
/// mark, Enter or a click opens the visit, Ctrl and the wheel or + and - zoom, 0 shows all years.
class TimelineView : public QAbstractScrollArea
{
    Q_OBJECT
public:
    TimelineView(const Speaker& speaker, const Theme& theme, QWidget* parent = nullptr);

    /// Shows a timeline; the chosen mark, the zoom and the place stay where they still make sense.
    void setTimeline(Timeline timeline);
    /// Shows all years, from the top, with no mark chosen.
    void showAll();

    [[nodiscard]] const Timeline& timeline() const { return m_timeline; }
    [[nodiscard]] const TimelineGeometry& geometryNow() const { return m_geometry; }
    [[nodiscard]] const std::optional<MarkPlace>& selected() const { return m_selected; }
    /// Chooses a mark and brings it into view.
    void select(const MarkPlace& place);
    /// Chooses the latest mark of a zone, if it has one.
    void selectZone(ZoneId zone);
    /// Shows `factor` times as much detail around the point `x`; no more than all years, no less than about two months.
    void zoomBy(double factor, double x);

Q_SIGNALS:
    void visitActivated(const padside::VisitId& visit);
    void markSelected(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    [[nodiscard]] DaySpan visibleSpan() const;
    [[nodiscard]] double lanesWidth() const;
    [[nodiscard]] std::optional<MarkPlace> markUnder(const QPointF& point) const;
    [[nodiscard]] QString nameUnder(const QPointF& point) const;
    void measureNames();
    void updateScrollBars();
    void layOutNow();
    void ensureVisible(const MarkPlace& place);
    void activate(const MarkPlace& place);
    void describe();
    void selectBeside(int step);
    void selectAcross(int step);

    const Speaker& m_speaker;
    const Theme& m_theme;
    TimelineWords m_words;
    Timeline m_timeline;
    TimelineSizes m_sizes;
    TimelineGeometry m_geometry;
    double m_zoom = 1; ///< 1 shows all years
    std::optional<MarkPlace> m_selected;
};

} // namespace padside
