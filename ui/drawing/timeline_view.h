// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_measure.h"
#include "ui/drawing/timeline_painter.h"
#include "ui/drawing/timeline_words.h"

#include <QAbstractScrollArea>

#include <functional>

namespace padside {

struct Theme;

/// The sentences of the flags that a mark raised.
using RaisedSource = std::function<std::vector<Sentence>(const TimelineMark&)>;

/// A unit's history to look at and walk through: names stay at the left, years at the top. Arrow keys go from mark to
/// mark and, left of the first, to the names; Enter or a click opens the visit, shows a zone's photographs, or folds a
/// part. Ctrl and the wheel or + and - zoom, 0 shows all years; dragging moves the picture; F folds the part, Shift+F
/// all parts.
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
    [[nodiscard]] const FoldedGroups& folded() const { return m_folded; }
    [[nodiscard]] const QString& sentenceNow() const { return m_said; }
    void setRaisedSource(RaisedSource source) { m_raised = std::move(source); }
    /// Where small pictures come from; picturesChanged() when more of them are there.
    void setPictures(PictureSource pictures) { m_pictures = std::move(pictures); }
    void picturesChanged() { viewport()->update(); }
    /// Folds a part's lanes into one or shows them again; what was chosen stays chosen as far as it can be seen.
    void fold(std::size_t group, bool folded);
    void foldAll(bool folded);
    /// Chooses a mark, or the name of a lane or part, and brings it into view.
    void select(const MarkPlace& place);
    /// Chooses the latest mark of a zone, if it has one.
    void selectZone(ZoneId zone);
    /// Shows `factor` times as much detail around the point `x`; no more than all years, no less than about two months.
    void zoomBy(double factor, double x);

Q_SIGNALS:
    void visitActivated(const padside::VisitId& visit);
    void sentenceChanged(const QString& sentence); ///< of what is pointed at, else of what is chosen
    void zoneChosen(const padside::ZoneId& zone); ///< its name was pressed: the zone of the part fitted last

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    [[nodiscard]] DaySpan visibleSpan() const;
    [[nodiscard]] double lanesWidth() const;
    [[nodiscard]] std::optional<MarkPlace> markUnder(const QPointF& point) const;
    [[nodiscard]] std::optional<MarkPlace> nameUnder(const QPointF& point) const;
    [[nodiscard]] QString sentenceOf(const MarkPlace& place) const;
    void pointAt(const std::optional<MarkPlace>& place);
    void tell();
    void measureNames();
    void fitNames(); ///< into the width there is
    void updateScrollBars();
    void layOutNow();
    void ensureVisible(const MarkPlace& place);
    void activate(const MarkPlace& place);
    void describe();
    void selectBeside(int step);
    void selectAcross(int step);
    void selectLane(std::size_t row);
    void selectEnd(bool last);
    [[nodiscard]] bool zoomKey(const QKeyEvent& event);
    [[nodiscard]] bool walkKey(const QKeyEvent& event);

    const Speaker& m_speaker;
    const Theme& m_theme;
    TimelineWords m_words;
    Timeline m_timeline;
    NameWidths m_names;
    TimelineSizes m_sizes;
    TimelineGeometry m_geometry;
    double m_zoom = 1; ///< 1 shows all years
    std::optional<MarkPlace> m_selected;
    std::optional<MarkPlace> m_pointed;
    FoldedGroups m_folded;
    QString m_said;
    RaisedSource m_raised;
    PictureSource m_pictures;
    std::optional<QPointF> m_pressedAt; ///< while the left button is down
    QPoint m_scrolledAtPress;
    bool m_panning = false;
};

} // namespace padside
