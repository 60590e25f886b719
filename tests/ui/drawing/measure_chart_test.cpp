// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/measure_chart.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>
#include <limits>

namespace padside::test {

namespace {

using namespace Qt::Literals::StringLiterals;

MeasureChart wall()
{
    MeasureChart chart;
    for (int year = 0; year < 5; ++year)
        chart.points.push_back({18000 + 365.25 * year, (3.0 - 0.1 * year) * 1e-3});
    chart.limit = 2.0e-3;
    chart.limitName = u"must be left"_s;
    chart.fan = MeasureFan{-0.1e-3 / 365.25, -0.2e-3 / 365.25, -0.05e-3 / 365.25};
    chart.shown = [](double si) { return QString::number(si * 1e3, 'f', 2) + u" mm"_s; };
    return chart;
}

QImage painted(const MeasureChart& chart, const Theme& theme, QSize size = {520, 170})
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(theme.panel);
    QPainter painter(&image);
    paintMeasureChart(painter, QRectF(QPointF(), QSizeF(size)), chart, theme);
    return image;
}

int pixelsOf(const QImage& image, const QColor& colour)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    }
    return count;
}

} // namespace

TEST(MeasureChart, TheLimitIsALineAcrossTheChart)
{
    for (const ThemeKind kind : {ThemeKind::light, ThemeKind::dark, ThemeKind::sunlight, ThemeKind::paper}) {
        const Theme& theme = Theme::of(kind);
        EXPECT_GT(pixelsOf(painted(wall(), theme), theme.fill(Grade::spent)), 300) << "a line of most of 520 pixels";
        MeasureChart without = wall();
        without.limit.reset();
        EXPECT_LT(pixelsOf(painted(without, theme), theme.fill(Grade::spent)), 20);
    }
}

TEST(MeasureChart, TheForecastFadesBehindTheLastPoint)
{
    MeasureChart without = wall();
    without.fan.reset();
    EXPECT_NE(painted(wall(), Theme::light()), painted(without, Theme::light()));
}

TEST(MeasureChart, OnePointIsDrawnAndNoneDrawsNothing)
{
    MeasureChart chart = wall();
    chart.fan.reset();
    chart.points.resize(1);
    EXPECT_GT(pixelsOf(painted(chart, Theme::light()), Theme::light().ink), 0);
    chart.points.clear();
    EXPECT_EQ(pixelsOf(painted(chart, Theme::light()), Theme::light().panel), 520 * 170);
}

TEST(MeasureChart, EqualValuesStillHaveAScale)
{
    MeasureChart chart = wall();
    chart.limit.reset();
    chart.fan.reset();
    for (TrendPoint& point : chart.points)
        point.value = 0;
    EXPECT_GT(pixelsOf(painted(chart, Theme::light()), Theme::light().ink), 0);
}

} // namespace padside::test
