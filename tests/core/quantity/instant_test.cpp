// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/date.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

Instant instantOf(const char* text)
{
    const auto instant = parseInstant(text);
    EXPECT_TRUE(instant) << text;
    return instant.value_or(Instant{});
}

} // namespace

// RFC 3339, section 5.8: 1996-12-19T16:39:57-08:00 "is equivalent to 1996-12-20T00:39:57Z in UTC".
TEST(InstantText, TheExampleOfRfc3339MeansTheSameMomentInUtc)
{
    const Instant west = instantOf("1996-12-19T16:39:57-08:00");
    const Instant utc = instantOf("1996-12-20T00:39:57+00:00");
    EXPECT_EQ(west.utc, utc.utc);
    EXPECT_NE(west, utc);
    EXPECT_EQ(isoText(localDate(west)), "1996-12-19");
    EXPECT_EQ(isoText(localDate(utc)), "1996-12-20");
}

TEST(InstantText, IsWrittenBackAsItWasRead)
{
    for (const char* text : {"2026-05-04T14:03:11+02:00", "1937-01-01T12:00:27+00:20", "2026-01-01T00:00:00+00:00",
                             "2026-12-31T23:59:59-09:30", "2026-06-01T00:30:00+05:45", "1969-12-31T23:59:59-00:30"})
        EXPECT_EQ(instantText(instantOf(text)), text);
}

TEST(InstantText, AnythingElseIsRefused)
{
    for (const char* text : {"", "2026-05-04", "2026-05-04T14:03:11", "2026-05-04T14:03:11Z",
                             "2026-05-04 14:03:11+02:00", "2026-05-04T24:00:00+02:00", "2026-05-04T14:60:00+02:00",
                             "2026-05-04T14:03:61+02:00", "2026-02-30T14:03:11+02:00", "2026-05-04T14:03:11+02.00",
                             "2026-05-04T14:03:11+19:00", "2026-05-04T14:03:11+02:60", "2026-05-04T14:03:11 02:00",
                             "2026-05-04T1a:03:11+02:00", "2026-05-04T14:03:11+02:00x"})
        EXPECT_FALSE(parseInstant(text)) << text;
}

TEST(InstantText, TheLocalDateFollowsTheOffsetNotUtc)
{
    EXPECT_EQ(isoText(localDate(instantOf("2026-05-04T00:30:00+02:00"))), "2026-05-04");
    EXPECT_EQ(isoText(localDate(instantOf("2026-05-04T23:30:00-05:00"))), "2026-05-04");
    EXPECT_EQ(isoText(localDate(instantOf("1969-12-31T23:30:00-05:00"))), "1969-12-31");
}

} // namespace padside
