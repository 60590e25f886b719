// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/paper/summary_fixture.h"
#include "ui/paper/outlook_setter.h"
#include "ui/paper/page_maker.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace padside::test {

namespace {

const OutlookBlock& expectedIn(const PaperContent& content)
{
    const auto* block = blockCalled<OutlookBlock>(content, QStringLiteral("What to expect"));
    EXPECT_NE(block, nullptr);
    static const OutlookBlock none;
    return block ? *block : none;
}

/// Light where the paper is white, dark where the part has surely given out; at a share of the strip's width.
std::vector<double> darkness(const SetItem& item, const std::vector<double>& shares)
{
    for (const Run& run : item.runs) {
        const auto* strip = std::get_if<DrawingRun>(&run);
        if (!strip)
            continue;
        QImage image(strip->box.size().toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        strip->paint(painter);
        painter.end();
        std::vector<double> dark;
        for (const double share : shares)
            dark.push_back(
                1 - image.pixelColor(static_cast<int>(share * image.width()), image.height() / 2).lightnessF());
        return dark;
    }
    return {};
}

} // namespace

TEST(SummaryExpected, NamesTheLikeliestPartsWithRangesOfYears)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 1, 1));
    const OutlookBlock& block = expectedIn(content);
    ASSERT_FALSE(block.parts.empty());
    EXPECT_LE(block.parts.size(), 3U);
    EXPECT_TRUE(block.text.contains(QStringLiteral("within a year"))) << block.text.toStdString();
    std::set<QString> names;
    for (const ExpectedPart& part : block.parts) {
        EXPECT_TRUE(part.chance.contains(QChar(u'%')));
        EXPECT_TRUE(names.insert(part.name).second) << "each part once";
        EXPECT_FALSE(part.dates.isEmpty());
        for (std::size_t at = 1; at < part.chances.size(); ++at) {
            EXPECT_GE(part.chances[at].first, part.chances[at - 1].first);
            EXPECT_GE(part.chances[at].second, part.chances[at - 1].second);
        }
    }
    EXPECT_EQ(block.firstYear, 2026);
    EXPECT_NEAR(block.yearGone, 0.34, 0.01); // 4 May
}

TEST(SummaryExpected, StandsBeforeThePhotographsAndTheNextChecks)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 1, 1));
    const auto placeOf
        = [&content](const auto& isIt) { return std::ranges::find_if(content.blocks, isIt) - content.blocks.begin(); };
    const auto expected = placeOf([](const PaperBlock& one) { return std::holds_alternative<OutlookBlock>(one); });
    const auto photos = placeOf([](const PaperBlock& one) { return std::holds_alternative<PhotoBlock>(one); });
    const auto checks = placeOf([](const PaperBlock& one) {
        const auto* table = std::get_if<TableBlock>(&one);
        return table && table->heading == QStringLiteral("Next checks");
    });
    EXPECT_GT(expected, 0);
    EXPECT_EQ(photos, expected + 1);
    EXPECT_LT(photos, checks);
}

TEST(SummaryExpected, AStripGetsDarkerWithTheYears)
{
    OutlookBlock block;
    block.heading = QStringLiteral("What to expect");
    block.firstYear = 2026;
    block.parts.push_back({QStringLiteral("Fan motor"),
                           QStringLiteral("3 %"),
                           QStringLiteral("2028 to 2033"),
                           {{0, 0}, {5, 0.5}, {10, 1}},
                           5.0});
    const auto dark = darkness(setOutlook(block, 1800).front(), {0.05, 0.3, 0.6, 0.9});
    ASSERT_EQ(dark.size(), 4U);
    for (std::size_t at = 1; at < dark.size(); ++at)
        EXPECT_GT(dark[at], dark[at - 1]);
}

TEST(SummaryExpected, ASoundUnitIsToldSoWithoutAFigure)
{
    RecordBuilder unit = aUnit("HB-09");
    unit.installed("2026-04-01").withPart("suction-accumulator", {"crown", "bottom"}, "2026-04-01");
    unit.visit("2026-05-04").graded("crown", 1).graded("bottom", 1);
    const PaperContent content = visitSummaryContent(summaryOf(unit.build()));
    const OutlookBlock& block = expectedIn(content);
    EXPECT_TRUE(block.parts.empty());
    EXPECT_TRUE(block.text.contains(QStringLiteral("No part is likely to give out"))) << block.text.toStdString();
}

TEST(SummaryExpected, WithoutAForecastNothingIsSaid)
{
    SummaryInput input = summaryOf(ordinaryRecord());
    input.forecast = {};
    EXPECT_EQ(blockCalled<OutlookBlock>(visitSummaryContent(input), QStringLiteral("What to expect")), nullptr);
}

TEST(SummaryExpected, WhatIsSpentIsSaidToBeNow)
{
    RecordBuilder unit = aUnit("HB-09");
    unit.installed("2010-04-01").withPart("suction-accumulator", {"crown"}, "2010-04-01");
    unit.visit("2026-05-04").graded("crown", 5);
    const PaperContent content = visitSummaryContent(summaryOf(unit.build()));
    ASSERT_EQ(expectedIn(content).parts.size(), 1U);
    EXPECT_EQ(expectedIn(content).parts.front().dates, QStringLiteral("now"));
}

} // namespace padside::test
