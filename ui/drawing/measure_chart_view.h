// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/measure_chart.h"

#include <QWidget>

namespace padside {

/// A measured thing through the years, as a widget. Its accessible name says what it shows.
class MeasureChartView : public QWidget
{
    Q_OBJECT
public:
    MeasureChartView(MeasureChart chart, const Theme& theme, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    MeasureChart m_chart;
    const Theme& m_theme;
};

} // namespace padside
