// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_painter.h"

#include <QFont>
#include <QFontInfo>
#include <QImage>
#include <QPainter>

#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

constexpr int pictureWidth = 1000;

/// One lane with everything: 2 worn, not seen, 5 spent; and what was painted of it.
struct Drawn
{
    Timeline timeline;
    TimelineGeometry geometry;
    QImage image;
    const Theme& theme;

    explicit Drawn(const Theme& shownTheme)
        : theme(shownTheme)
    {
        auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
        builder.visit("2022-03-10").graded("bottom", 2);
        builder.visit("2023-03-10").notSeen("bottom", NotSeenReason::covered);
        builder.visit("2024-03-10").graded("bottom", 5);
        timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
        geometry = layOut(timeline, TimelineSizes::forText(14, 160, 90), pictureWidth, wholeSpan(timeline));
        image = QImage(pictureWidth, static_cast<int>(std::ceil(geometry.height)), QImage::Format_RGB32);
        image.fill(theme.ground);
        QPainter painter(&image);
        paintTimeline(painter, image.rect(), TimelinePicture{timeline, geometry, plainEnglish(), theme, std::nullopt});
    }

    [[nodiscard]] QRect markArea(std::size_t mark) const
    {
        return geometry.placed(MarkPlace{1, 0, mark})->found.toRect();
    }
    [[nodiscard]] QColor at(double x, double y) const
    {
        return image.pixelColor(static_cast<int>(x), static_cast<int>(y));
    }
    [[nodiscard]] int count(const QRect& area, const QColor& colour) const
    {
        int found = 0;
        for (int y = area.top(); y <= area.bottom(); ++y) {
            for (int x = area.left(); x <= area.right(); ++x)
                found += image.pixelColor(x, y) == colour ? 1 : 0;
        }
        return found;
    }
};

class TimelinePainterIn : public testing::TestWithParam<const Theme*>
{
};

} // namespace

TEST_P(TimelinePainterIn, AMarkHasTheColourOfItsGradeAndANumeralOnIt)
{
    const Drawn drawn(*GetParam());
    for (const auto& [mark, grade] : {std::pair<std::size_t, Grade>{0, Grade::worn}, {2, Grade::spent}}) {
        const QRect area = drawn.markArea(mark);
        EXPECT_EQ(drawn.at(area.left() + 3, area.center().y()), drawn.theme.fill(grade));
        EXPECT_GT(drawn.count(area, drawn.theme.fill(grade)), area.width() * area.height() / 3);
        EXPECT_GT(drawn.count(area.adjusted(3, 3, -3, -3), drawn.theme.numeralInk(grade)), 5)
            << "a numeral, grade " << numeral(grade);
    }
}

TEST_P(TimelinePainterIn, NotSeenIsHatchedAndHasNoRampColour)
{
    const Drawn drawn(*GetParam());
    const QRect area = drawn.markArea(1);
    for (const QColor& fill : drawn.theme.gradeFill)
        EXPECT_EQ(drawn.count(area.adjusted(1, 1, -1, -1), fill), 0);
    // Along a row through the mark, hatching goes from ground to line and back several times.
    int changes = 0;
    bool dark = false;
    for (int x = area.left() + 2; x < area.right() - 1; ++x) {
        const QColor colour = drawn.image.pixelColor(x, area.center().y());
        const auto distance = [&colour](const QColor& to) { return std::abs(colour.lightness() - to.lightness()); };
        const bool line = distance(drawn.theme.hatch) < distance(drawn.theme.panel);
        changes += line != dark ? 1 : 0;
        dark = line;
    }
    EXPECT_GE(changes, 4);
}

TEST_P(TimelinePainterIn, ABandHoldsItsGradeAndIsBrokenUpOnceNotSeen)
{
    const Drawn drawn(*GetParam());
    const double middle = drawn.markArea(0).center().y();
    const double sureX = (drawn.geometry.axis.x(day("2022-03-10")) + drawn.geometry.axis.x(day("2023-03-10"))) / 2;
    EXPECT_EQ(drawn.at(sureX, middle), drawn.theme.fill(Grade::worn));
    // Hatched: some of the pixels between the sightings are ground, some are not.
    const double from = drawn.geometry.axis.x(day("2023-06-01"));
    std::set<QRgb> colours;
    int ground = 0;
    for (int x = 0; x < 40; ++x) {
        colours.insert(drawn.at(from + x, middle).rgb());
        ground += drawn.at(from + x, middle) == drawn.theme.panel ? 1 : 0;
    }
    EXPECT_GT(colours.size(), 2U);
    EXPECT_GT(ground, 5);
    EXPECT_LT(ground, 40);
}

TEST_P(TimelinePainterIn, NothingIsPaintedAfterToday)
{
    const Drawn drawn(*GetParam());
    const double middle = drawn.markArea(0).center().y();
    EXPECT_EQ(drawn.at(drawn.geometry.todayX + 8, middle), drawn.theme.panel);
    EXPECT_EQ(drawn.at(drawn.geometry.todayX, drawn.geometry.height - 3), drawn.theme.accent) << "the line of today";
}

INSTANTIATE_TEST_SUITE_P(Themes, TimelinePainterIn,
                         testing::Values(&Theme::light(), &Theme::darkTheme(), &Theme::print()));

TEST(TimelinePainter, TheTestsHaveAFontForTheirNumerals)
{
    EXPECT_FALSE(QFontInfo(QFont()).family().isEmpty());
}

TEST(TimelinePainter, AnAmountIsOnlyWrittenWhereItDoesNotRunIntoTheNextSign)
{
    const auto inkAfterFirst = [](const std::string& second) {
        auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
        builder.visit("2022-03-10").visit(second, VisitReason::callOut);
        UnitRecord record = builder.build();
        for (const Visit& visit : record.visits) {
            ChargeEntry charge;
            charge.id = ChargeId(UuidBytes{static_cast<std::uint8_t>(record.charges.size() + 1)});
            charge.visitId = visit.id;
            charge.on = visit.on;
            charge.mass = Measure{0.45, QuantityKind::mass, "kg", "0.45 kg"};
            record.charges.push_back(charge);
        }
        const Timeline timeline = timelineOf(record, smallCatalogue(), day("2024-12-31"));
        const TimelineGeometry geometry
            = layOut(timeline, TimelineSizes::forText(12, 160, 90), pictureWidth, wholeSpan(timeline));
        QImage image(pictureWidth, static_cast<int>(std::ceil(geometry.height)), QImage::Format_RGB32);
        QPainter painter(&image);
        paintTimeline(painter, image.rect(),
                      TimelinePicture{timeline, geometry, plainEnglish(), Theme::light(), std::nullopt});
        const QRect first = geometry.placed(MarkPlace{0, 1, 0})->found.toRect();
        int ink = 0;
        for (int x = first.right() + 1; x < first.right() + 10; ++x) {
            for (int y = first.top(); y < first.bottom(); ++y)
                ink += image.pixelColor(x, y).lightness() < 100 ? 1 : 0;
        }
        return ink;
    };
    EXPECT_GT(inkAfterFirst("2023-06-10"), 3) << "room enough for the amount";
    EXPECT_EQ(inkAfterFirst("2022-04-20"), 0) << "the next sign stands close by";
}

TEST(TimelinePainter, KeepsWithinItsArea)
{
    const Drawn drawn(Theme::print());
    QImage image(pictureWidth, 200, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paintTimeline(painter, QRectF(100, 50, 300, 60),
                  TimelinePicture{drawn.timeline, drawn.geometry, plainEnglish(), Theme::print(), std::nullopt});
    EXPECT_EQ(image.pixelColor(99, 70), QColor(Qt::magenta));
    EXPECT_EQ(image.pixelColor(401, 70), QColor(Qt::magenta));
    EXPECT_EQ(image.pixelColor(200, 49), QColor(Qt::magenta));
    EXPECT_EQ(image.pixelColor(200, 111), QColor(Qt::magenta));
    EXPECT_NE(image.pixelColor(200, 70), QColor(Qt::magenta));
}

} // namespace padside
