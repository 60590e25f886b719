// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/id.h"

#include <gtest/gtest.h>
#include <set>
#include <type_traits>
#include <unordered_set>

namespace padside {

namespace {

/// A clock that a test sets by hand.
struct HandClock
{
    std::int64_t millisecond = 1'700'000'000'000;
    [[nodiscard]] IdMaker maker(std::uint64_t seed = 1)
    {
        return {[this] { return millisecond; }, seed};
    }
};

std::int64_t millisecondOf(const UuidBytes& bytes)
{
    std::int64_t value = 0;
    for (std::size_t i = 0; i < 6; ++i)
        value = value << 8 | bytes[i];
    return value;
}

int versionOf(const UuidBytes& bytes)
{
    return bytes[6] >> 4;
}

int variantOf(const UuidBytes& bytes)
{
    return bytes[8] >> 6;
}

} // namespace

// RFC 9562, Appendix A.6: the UUIDv7 of Tuesday, 22 February 2022, 14:22:22.00 GMT-05:00.
TEST(UuidText, TheExampleOfRfc9562IsReadAndWritten)
{
    const auto bytes = parseUuid("017F22E2-79B0-7CC3-98C4-DC0C0C07398F");
    ASSERT_TRUE(bytes);
    EXPECT_EQ(uuidText(*bytes), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
    EXPECT_EQ(millisecondOf(*bytes), 0x017F22E279B0);
    EXPECT_EQ(versionOf(*bytes), 7);
    EXPECT_EQ(variantOf(*bytes), 2);
}

TEST(UuidText, AnythingElseIsRefused)
{
    for (const char* text :
         {"", "017f22e2", "017f22e279b07cc398c4dc0c0c07398f", "{017f22e2-79b0-7cc3-98c4-dc0c0c07398f}",
          "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398g",
          "017f22e2-79b0-7cc3-98c4-dc0c0c07398f ", "017f22e279b0--7cc3-98c4-dc0c0c07398f",
          "017f22e2-79b0-7cc3-98c4adc0c0c07398f", "017f22e2-79b0-7cc3-98c4-dc0c0c-7398f"})
        EXPECT_FALSE(parseUuid(text)) << text;
}

// RFC 9562, 5.7: 48 bits of Unix milliseconds, version 0b0111, variant 0b10.
TEST(IdMaker, KeysCarryTheTimeTheVersionAndTheVariant)
{
    HandClock clock;
    IdMaker maker = clock.maker();
    for (int i = 0; i < 1000; ++i) {
        clock.millisecond += i % 3;
        const UuidBytes bytes = maker.next();
        EXPECT_EQ(versionOf(bytes), 7);
        EXPECT_EQ(variantOf(bytes), 2);
        EXPECT_EQ(millisecondOf(bytes), clock.millisecond);
        EXPECT_EQ(parseUuid(uuidText(bytes)), bytes);
    }
}

TEST(IdMaker, KeysOfOneMillisecondStayInOrder)
{
    HandClock clock;
    IdMaker maker = clock.maker();
    UuidBytes before = maker.next();
    for (int i = 0; i < 20'000; ++i) { // more than the 4096 that one millisecond can number
        const UuidBytes now = maker.next();
        ASSERT_LT(before, now) << i;
        before = now;
    }
}

TEST(IdMaker, AClockThatStepsBackDoesNotBreakTheOrder)
{
    HandClock clock;
    IdMaker maker = clock.maker();
    UuidBytes before = maker.next();
    for (const int step : {5, -3'600'000, 1, 0, -1, 3'600'000, 10, -86'400'000, 2}) {
        clock.millisecond += step;
        for (int i = 0; i < 100; ++i) {
            const UuidBytes now = maker.next();
            ASSERT_LT(before, now) << "after a step of " << step;
            before = now;
        }
    }
}

TEST(IdMaker, TheTextKeepsTheOrderOfTheBytes)
{
    HandClock clock;
    IdMaker maker = clock.maker();
    std::string before = uuidText(maker.next());
    for (int i = 0; i < 500; ++i) {
        clock.millisecond += i % 2;
        const std::string now = uuidText(maker.next());
        EXPECT_LT(before, now);
        before = now;
    }
}

TEST(IdMaker, KeysAreRepeatedBySeedAndDifferOtherwise)
{
    HandClock clock;
    IdMaker one = clock.maker(1);
    IdMaker same = clock.maker(1);
    IdMaker other = clock.maker(2);
    std::set<UuidBytes> keys;
    for (int i = 0; i < 100; ++i) {
        const UuidBytes key = one.next();
        EXPECT_EQ(same.next(), key);
        EXPECT_TRUE(keys.insert(key).second);
        EXPECT_TRUE(keys.insert(other.next()).second) << "two laptops in the same millisecond";
    }
}

TEST(TypedId, AKeyOfOneSortIsNoKeyOfAnother)
{
    static_assert(!std::is_convertible_v<SiteId, UnitId>);
    static_assert(!std::is_constructible_v<SiteId, UnitId>);
    static_assert(!std::is_convertible_v<UuidBytes, SiteId>);
    EXPECT_TRUE(SiteId().isNull());
    EXPECT_EQ(SiteId().text(), "00000000-0000-0000-0000-000000000000");
    HandClock clock;
    IdMaker maker = clock.maker();
    std::unordered_set<UnitId> ids;
    for (int i = 0; i < 1000; ++i)
        ids.insert(maker.make<UnitId>());
    EXPECT_EQ(ids.size(), 1000U);
    EXPECT_FALSE(ids.contains(UnitId()));
}

} // namespace padside
