// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "ui/drawing/season_board_painter.h"

#include <QAbstractScrollArea>

#include <functional>

namespace padside {

struct Theme;

/// The board of a year's trips to look at and walk through. Arrow keys go from trip to trip, Ctrl with them to the next
/// trip by date over all sites. A trip is moved with the mouse, or with Alt and the arrow keys (a week; a day with
/// Shift too), Enter puts it down, Esc gives up. K asks that the chosen trip's day be kept, or let go.
class SeasonBoardView : public QAbstractScrollArea
{
    Q_OBJECT
public:
    SeasonBoardView(const Theme& theme, const QLocale& locale, QWidget* parent = nullptr);

    /// Shows a board with this trip chosen, without scrolling. A move under way is given up.
    void setBoard(SeasonBoard board, std::optional<BoardPlace> selected = {});
    /// Says a trip in words, for those who can't see it and for the tip.
    void setWords(std::function<QString(const BoardPlace&)> words) { m_words = std::move(words); }

    [[nodiscard]] const SeasonBoard& board() const { return m_board; }
    [[nodiscard]] const BoardGeometry& geometryNow() const { return m_geometry; }
    [[nodiscard]] const std::optional<BoardPlace>& selected() const { return m_selected; }
    [[nodiscard]] const std::optional<BoardMove>& move() const { return m_move; }
    /// Where the mark of a trip is in the viewport now.
    [[nodiscard]] QRectF markNow(const BoardPlace& place) const;

    void select(const BoardPlace& place);
    /// The trip with the earliest date, of all sites.
    void selectFirst();
    /// Marks the move under way as one that costs something, and says it to those who can't see it.
    void sayCost(const QString& sentence, bool costs);

Q_SIGNALS:
    void tripSelected(const padside::BoardPlace& place);
    void tripActivated(const padside::BoardPlace& place);
    void moveProposed(const padside::BoardPlace& place, padside::Date to);
    void movePutDown(const padside::BoardPlace& place, padside::Date to);
    void moveGivenUp();
    void keepAsked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    [[nodiscard]] QFont boardFont() const;
    [[nodiscard]] QPointF onBoard(const QPointF& point) const;
    [[nodiscard]] std::optional<BoardPlace> tripUnder(const QPointF& point) const;
    void layOut();
    void describe(const QString& text);
    void ensureVisible(const BoardPlace& place, Date on);
    void propose(Date to);
    void putDown();
    void giveUp();
    bool moveByKey(const QKeyEvent& event);
    void selectBeside(int step);
    void selectInOtherRow(int step);
    void selectByDate(int step);

    const Theme& m_theme;
    QStringList m_months;
    SeasonBoard m_board;
    BoardGeometry m_geometry;
    std::function<QString(const BoardPlace&)> m_words;
    std::optional<BoardPlace> m_selected;
    std::optional<BoardMove> m_move;
    std::optional<QPointF> m_pressedAt; ///< on the board; a mark is held there
};

} // namespace padside
