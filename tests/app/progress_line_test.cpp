// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/command_line.h"
#include "app/progress_line.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <sstream>

namespace padside::test {

namespace {

std::string shown(bool terminal, const std::vector<double>& steps)
{
    std::ostringstream out;
    std::ostringstream err;
    {
        ProgressLine line({out, err, [] { return Instant{}; }, [] {}, terminal}, "Making x");
        const auto tell = line.teller();
        for (const double done : steps)
            EXPECT_TRUE(tell(done)) << "watching never cancels";
    }
    EXPECT_EQ(out.str(), "");
    return err.str();
}

} // namespace

TEST(ProgressLine, IsWrittenOverAndWipedAtTheEnd)
{
    const std::string blank(sizeof "Making x 100 %", ' ');
    EXPECT_EQ(shown(true, {0, 0.5, 1}), "\rMaking x 0 %\rMaking x 50 %\rMaking x 100 %\r" + blank + "\r");
}

TEST(ProgressLine, IsWrittenOncePerPercent)
{
    const std::string text = shown(true, {0.100, 0.101, 0.102, 0.11});
    EXPECT_EQ(std::count(text.begin(), text.end(), '%'), 2);
}

TEST(ProgressLine, SaysNothingWhereNobodyIsWatching)
{
    EXPECT_EQ(shown(false, {0, 0.5, 1}), "");
}

TEST(ProgressLine, LeavesNoTraceWithoutSteps)
{
    EXPECT_EQ(shown(true, {}), "");
}

} // namespace padside::test
