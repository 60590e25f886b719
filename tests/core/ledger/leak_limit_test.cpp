// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/leak_rate.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::day;

constexpr double poundKg = 0.45359237;

class ShippedLeakLimits : public testing::Test
{
protected:
    void SetUp() override
    {
        const auto loaded = Catalogue::load(shippedCatalogue());
        ASSERT_TRUE(loaded) << say(loaded.error().what);
        m_catalogue = *loaded;
    }

    [[nodiscard]] LeakLimit limit(LeakUse use, const char* refrigerant, double lb, const char* on = "2026-06-01") const
    {
        const LeakLimit* found = leakLimitFor(m_catalogue, use, refrigerant, lb * poundKg, day(on));
        return found != nullptr ? *found : LeakLimit{};
    }

    Catalogue m_catalogue;
};

// 40 CFR 82.157: 10 % for comfort cooling, 20 % for commercial refrigeration, 30 % for industrial process
// refrigeration.
TEST_F(ShippedLeakLimits, AreThoseOf40Cfr82p157)
{
    EXPECT_DOUBLE_EQ(limit(LeakUse::comfortCooling, "R-22", 60).rate, 0.10);
    EXPECT_DOUBLE_EQ(limit(LeakUse::commercialRefrigeration, "R-22", 60).rate, 0.20);
    EXPECT_DOUBLE_EQ(limit(LeakUse::industrialProcess, "R-22", 60).rate, 0.30);
    for (const LeakUse use : {LeakUse::comfortCooling, LeakUse::commercialRefrigeration, LeakUse::industrialProcess})
        EXPECT_EQ(limit(use, "R-22", 60).force, LeakForce::regulatory);
}

// 40 CFR 82.157 since 2020-04-10: class I and II substances, full charge of 50 lb or more.
TEST_F(ShippedLeakLimits, ForOzoneDepletingRefrigerantsBindFrom50PoundsOn)
{
    EXPECT_EQ(limit(LeakUse::comfortCooling, "R-22", 50).force, LeakForce::regulatory);
    EXPECT_EQ(limit(LeakUse::comfortCooling, "R-22", 49.9).force, LeakForce::advisory);
}

// 40 CFR part 84 subpart C: HFC, 15 lb or more, from 2026-01-01.
TEST_F(ShippedLeakLimits, ForHfcBeginAt15PoundsIn2026)
{
    EXPECT_EQ(limit(LeakUse::commercialRefrigeration, "R-404A", 15).force, LeakForce::regulatory);
    EXPECT_EQ(limit(LeakUse::commercialRefrigeration, "R-404A", 14.9).force, LeakForce::advisory);
    EXPECT_EQ(limit(LeakUse::commercialRefrigeration, "R-404A", 15, "2025-12-31").force, LeakForce::advisory);
    EXPECT_EQ(limit(LeakUse::commercialRefrigeration, "R-404A", 15, "2026-01-01").force, LeakForce::regulatory);
}

// The exemption of residential and light commercial units in 40 CFR 84.106: from memory (Federal Register 2024-21967).
TEST_F(ShippedLeakLimits, ForAirConditionersWithHfcAreAdvice)
{
    EXPECT_EQ(limit(LeakUse::comfortCooling, "R-410A", 20).code, "comfort-cooling-hfc");
    EXPECT_EQ(limit(LeakUse::comfortCooling, "R-410A", 20).force, LeakForce::advisory);
    EXPECT_DOUBLE_EQ(limit(LeakUse::comfortCooling, "R-410A", 20).rate, 0.10);
}

TEST_F(ShippedLeakLimits, ForASmallUnitAreAdviceWhateverItHolds)
{
    for (const char* refrigerant : {"R-22", "R-410A", "R-290", ""}) {
        EXPECT_EQ(limit(LeakUse::comfortCooling, refrigerant, 8).code, "comfort-cooling-small") << refrigerant;
        EXPECT_EQ(limit(LeakUse::comfortCooling, refrigerant, 8).force, LeakForce::advisory) << refrigerant;
    }
}

// 40 CFR 82.157: repair in 30 days, 120 with an industrial process shutdown; records for 3 years; 125 % of the full
// charge lost in a calendar year is reported by 1 March.
TEST_F(ShippedLeakLimits, SayWhatARuleAsksFor)
{
    for (const LeakLimit& one : m_catalogue.leakLimits()) {
        ASSERT_EQ(one.duties.has_value(), one.force == LeakForce::regulatory) << one.code;
        if (!one.duties)
            continue;
        EXPECT_EQ(one.duties->repairDays, 30);
        EXPECT_EQ(one.duties->repairDaysWithShutdown, 120);
        EXPECT_EQ(one.duties->recordYears, 3);
        EXPECT_DOUBLE_EQ(one.duties->reportedLoss, 1.25);
    }
}

TEST(LeakLimit, ThatFitsNothingIsNoLimit)
{
    EXPECT_EQ(leakLimitFor(Catalogue(), LeakUse::comfortCooling, "R-22", 60 * poundKg, day("2026-06-01")), nullptr);
}

} // namespace

} // namespace padside
