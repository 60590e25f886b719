// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/counted_tags.h"

#include <gtest/gtest.h>

namespace padside::test {

using Tags = std::vector<std::string>;

TEST(CountedTags, CountUpFromTheLastNumber)
{
    EXPECT_EQ(countedTags("RT-8", 3), (Tags{"RT-8", "RT-9", "RT-10"}));
    EXPECT_EQ(countedTags("B2 unit 9 west", 2), (Tags{"B2 unit 9 west", "B2 unit 10 west"}));
}

TEST(CountedTags, KeepNoughtsInFront)
{
    EXPECT_EQ(countedTags("RT-08", 3), (Tags{"RT-08", "RT-09", "RT-10"}));
}

TEST(CountedTags, OneNeedsNoNumber)
{
    EXPECT_EQ(countedTags("Dryer room", 1), Tags{"Dryer room"});
    EXPECT_FALSE(countedTags("Dryer room", 2).has_value());
    EXPECT_FALSE(countedTags("  ", 1).has_value());
}

TEST(CountedTags, ALongNumberCountsInItsLastDigits)
{
    EXPECT_EQ(countedTags("202611250000008", 2), (Tags{"202611250000008", "202611250000009"}));
}

} // namespace padside::test
