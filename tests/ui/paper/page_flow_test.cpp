// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/page_flow.h"

#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

constexpr double pageHeight = 100;

/// A random document: sections of a kept heading and rows that repeat the section's head.
struct RandomDocument
{
    std::vector<FlowItem> items;
    std::vector<double> heads;

    explicit RandomDocument(unsigned seed)
    {
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> heights(1, 30);
        std::uniform_int_distribution<int> counts(1, 12);
        for (int section = 0; section < 8; ++section) {
            heads.push_back(heights(random) / 3);
            items.push_back({heads.back(), 6, true, std::nullopt});
            for (int row = counts(random); row > 0; --row)
                items.push_back({heights(random), 2, false, heads.size() - 1});
        }
    }

    [[nodiscard]] double height(const PlacedItem& placed) const
    {
        return placed.repeatedHead ? heads[placed.index] : items[placed.index].height;
    }
};

} // namespace

TEST(PageFlow, NothingToPlaceMakesNoPage)
{
    EXPECT_TRUE(flowPages({}, {}, pageHeight).empty());
}

TEST(PageFlow, EveryItemStandsOnceAndInOrder)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        const RandomDocument document(seed);
        std::size_t expected = 0;
        for (const FlowPage& page : flowPages(document.items, document.heads, pageHeight)) {
            for (const PlacedItem& placed : page) {
                if (placed.repeatedHead)
                    continue;
                ASSERT_EQ(placed.index, expected) << "seed " << seed;
                ++expected;
            }
        }
        EXPECT_EQ(expected, document.items.size()) << "seed " << seed;
    }
}

TEST(PageFlow, NothingOverlapsOrLeavesThePage)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        const RandomDocument document(seed);
        for (const FlowPage& page : flowPages(document.items, document.heads, pageHeight)) {
            double bottom = 0;
            for (const PlacedItem& placed : page) {
                EXPECT_GE(placed.top, bottom - 1e-9) << "seed " << seed;
                bottom = placed.top + document.height(placed);
            }
            EXPECT_LE(bottom, pageHeight + 1e-5) << "seed " << seed;
        }
    }
}

TEST(PageFlow, AHeadingIsNeverTheLastOnItsPage)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        const RandomDocument document(seed);
        for (const FlowPage& page : flowPages(document.items, document.heads, pageHeight)) {
            ASSERT_FALSE(page.empty());
            EXPECT_FALSE(page.back().repeatedHead) << "seed " << seed;
            EXPECT_FALSE(document.items[page.back().index].keepWithNext) << "seed " << seed;
        }
    }
}

TEST(PageFlow, ARowThatBeginsAPageHasItsTableHeadAboveIt)
{
    const std::vector<double> heads{10};
    const std::vector<FlowItem> items{{10, 0, true, std::nullopt}, {50, 0, false, 0}, {50, 0, false, 0}};
    const auto pages = flowPages(items, heads, pageHeight);
    ASSERT_EQ(pages.size(), 2U);
    const FlowPage second{{0, true, 0}, {2, false, 10}};
    EXPECT_EQ(pages[1], second);
}

TEST(PageFlow, SpaceBeforeIsLeftOutAtTheTopOfAPage)
{
    const std::vector<FlowItem> items{{60, 8, false, std::nullopt}, {60, 8, false, std::nullopt}};
    const auto pages = flowPages(items, {}, pageHeight);
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(pages[0][0].top, 0);
    EXPECT_EQ(pages[1][0].top, 0);
}

TEST(PageFlow, AChainLongerThanAPageIsBrokenRatherThanLost)
{
    const std::vector<FlowItem> items{
        {60, 0, true, std::nullopt}, {60, 0, true, std::nullopt}, {60, 0, false, std::nullopt}};
    const auto pages = flowPages(items, {}, pageHeight);
    ASSERT_EQ(pages.size(), 3U);
    for (const FlowPage& page : pages)
        EXPECT_EQ(page.size(), 1U);
}

TEST(PageFlow, AnItemThatJustFitsStays)
{
    const std::vector<FlowItem> items{{50, 0, false, std::nullopt}, {40, 10, false, std::nullopt}};
    EXPECT_EQ(flowPages(items, {}, pageHeight).size(), 1U);
}

} // namespace padside
