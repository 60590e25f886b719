// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"
#include "ui/drawing/cutaway_geometry.h"

#include <QPixmap>
#include <QWidget>

#include <memory>

namespace padside {

struct Theme;

/// The opened unit with the condition of every part on it. Pointing at a part, or walking to it with the arrow keys,
/// tells what was last found of it in a line beneath; Enter, Space or a click goes there.
class CutawayView : public QWidget
{
    Q_OBJECT
public:
    explicit CutawayView(const Theme& theme, QWidget* parent = nullptr);
    ~CutawayView() override;

    /// Shows a unit; the current part stays where it is still fitted.
    void setContent(CutawayContent content);
    /// Puts a part in front, without activating it; a null id puts none in front.
    void setCurrent(padside::PartId part);
    /// The part the keyboard is at; null if none.
    [[nodiscard]] PartId current() const;

    /// Goes to a part, by its number in the content.
    void activate(std::size_t part);

    [[nodiscard]] const CutawayContent& content() const { return m_content; }
    [[nodiscard]] const CutawayGeometry& geometryNow() const { return m_geometry; }
    /// The line beneath the drawing: what was last found of the part pointed at or walked to.
    [[nodiscard]] QString caption() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void partActivated(padside::PartId part, padside::ZoneId zone);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    [[nodiscard]] std::optional<std::size_t> told() const; ///< pointed at, else walked to
    [[nodiscard]] double captionHeight() const;
    [[nodiscard]] QRectF captionArea() const;
    void layOutNow();
    void paintDrawing(QPainter& painter);
    void goTo(std::optional<std::size_t> part);
    void pointAt(std::optional<std::size_t> part);
    void describe();

    const Theme& m_theme;
    CutawayContent m_content;
    std::unique_ptr<CutawayDrawing> m_drawing;
    CutawayGeometry m_geometry;
    QPixmap m_drawn; ///< the drawing without marks, in the pixels of the screen
    std::optional<std::size_t> m_current;
    std::optional<std::size_t> m_pointedAt;
};

} // namespace padside
