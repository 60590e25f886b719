// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/reliability_plot.h"

#include <QWidget>

namespace padside {

/// What was said against what came, as a widget. Its accessible description says what it shows.
class ReliabilityPlotView : public QWidget
{
    Q_OBJECT
public:
    explicit ReliabilityPlotView(const Theme& theme, QWidget* parent = nullptr);

    void setPlot(ReliabilityPlot plot);
    [[nodiscard]] const ReliabilityPlot& plot() const { return m_plot; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ReliabilityPlot m_plot;
    const Theme& m_theme;
};

} // namespace padside
