// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/measure_chart.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

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

TEST(MeasureChart, LinesOfValuesStandAtRoundNumbersOfTheUnitRead)
{
    std::vector<double> inches;
    MeasureChart chart = wall();
    chart.unit = 0.0254;
    chart.shown = [&](double si) {
        inches.push_back(si / 0.0254);
        return QString::number(inches.back());
    };
    painted(chart, Theme::light());
    // 2.0 to 3.0 mm, with the room around it, is 0.07 to 0.13 in: steps of 0.02 in.
    for (const double line : {0.08, 0.10, 0.12}) {
        EXPECT_TRUE(std::ranges::any_of(inches, [&](double one) { return std::abs(one - line) < 1e-9; })) << line;
    }
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
