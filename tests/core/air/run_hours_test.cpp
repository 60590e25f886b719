// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/run_hours.h"

#include <gtest/gtest.h>

namespace padside {

TEST(RunHours, AreReadAsPeopleWriteThem)
{
    const RunHours night{22 * 60, 6 * 60};
    for (const char* text : {"22:00-6:00", "22-6", " 22:00 \u2013 06:00 ", "22.00-6", "22\u20146:00"})
        EXPECT_EQ(parseRunHours(text).value_or(RunHours{}), night) << text;
    EXPECT_EQ(parseRunHours("8:30-24").value_or(night), (RunHours{8 * 60 + 30, 0}));
}

TEST(RunHours, ThatCannotBeAreRefusedWithAnExample)
{
    for (const char* text : {"", "22", "22-", "-6", "25-6", "22:60-6", "24:30-6", "ten-six", "22:00:00-6", "1-2-3"}) {
        const auto hours = parseRunHours(text);
        ASSERT_FALSE(hours) << text;
        EXPECT_NE(say(hours.error().what).find("22:00-6:00"), std::string::npos);
    }
}

} // namespace padside
