// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline.h"

#include <QRectF>
#include <QWidget>

class QPainter;

namespace padside {

struct Theme;

/// Explains the signs that occur in a timeline, in lines from left to right; returns the height used. With `paint`
/// false it only measures.
double paintTimelineLegend(QPainter& painter, const QRectF& area, const Timeline& timeline, const Speaker& speaker,
                           const Theme& theme, bool paint = true);

/// The legend under a timeline; as high as its width asks for.
class TimelineLegend : public QWidget
{
    Q_OBJECT
public:
    TimelineLegend(const Speaker& speaker, const Theme& theme, QWidget* parent = nullptr);

    void setTimeline(const Timeline& timeline);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    const Speaker& m_speaker;
    const Theme& m_theme;
    Timeline m_timeline;
};

} // namespace padside
