// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/overdue_checks.h"
#include "tests/core/review/planned_check.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::check;
using test::day;
using testing::ElementsAre;
using testing::IsEmpty;

class OverdueChecks : public testing::Test
{
protected:
    static ZoneId zone(std::uint8_t number) { return ZoneId(UuidBytes{number}); }

    /// A zone whose chance of being spent is the same on every day.
    [[nodiscard]] ZoneRisk risk(std::uint8_t number, double chance, double tolerance) const
    {
        ZoneRisk made;
        made.zoneId = zone(number);
        made.tolerance = tolerance;
        made.course = {{m_today, chance}, {day("2027-03-01"), chance}};
        return made;
    }

    static Check of(Check one, std::vector<ZoneId> zones)
    {
        one.zones = std::move(zones);
        return one;
    }

    static std::shared_ptr<const ReviewedUnit> unitWith(const std::string& tag, std::vector<Check> checks,
                                                        std::vector<ZoneRisk> risks = {})
    {
        auto unit = std::make_shared<ReviewedUnit>();
        unit->unit.tag = tag;
        unit->review.checks = std::move(checks);
        unit->review.risks = std::move(risks);
        return unit;
    }

    /// "A: a b".
    [[nodiscard]] std::vector<std::string> told(const std::vector<std::shared_ptr<const ReviewedUnit>>& units) const
    {
        std::vector<std::string> lines;
        for (const OverdueUnit& one : overdueUnits(units, m_today)) {
            std::string line = one.unit->unit.tag + ":";
            for (const SeasonCheck& each : one.checks)
                line += " " + say(each.check().what);
            lines.push_back(line);
        }
        return lines;
    }

    Date m_today = day("2026-03-01");
};

} // namespace

TEST_F(OverdueChecks, AreThoseWhoseLatestDayIsOver)
{
    const auto unit
        = unitWith("A",
                   {check("yesterday", "2026-01-01", "2026-02-28"), check("today", "2026-01-01", "2026-03-01"),
                    check("later", "2026-02-01", "2026-05-01")});
    EXPECT_THAT(told({unit}), ElementsAre("A: yesterday"));
    EXPECT_THAT(told({unitWith("B", {check("later", "2026-02-01", "2026-05-01")})}), IsEmpty());
}

TEST_F(OverdueChecks, OfOneUnitComeByHowFarTheyArePastWhatIsTolerated)
{
    const auto unit = unitWith("A",
                               {check("long overdue, no zone", "2025-01-01", "2025-02-01"),
                                of(check("looks", "2025-06-01", "2025-07-01"), {zone(1)}),
                                of(check("charge", "2026-01-01", "2026-02-01"), {zone(2), zone(3)})},
                               {risk(1, 0.30, 0.20), risk(2, 0.01, 0.02), risk(3, 0.06, 0.02)});
    EXPECT_THAT(told({unit}), ElementsAre("A: charge looks long overdue, no zone"));
}

TEST_F(OverdueChecks, WhatPressesAlikeComesByTheDayItWasDue)
{
    const auto unit
        = unitWith("A", {check("second", "2025-01-01", "2025-05-01"), check("first", "2025-01-01", "2025-04-01")});
    EXPECT_THAT(told({unit}), ElementsAre("A: first second"));
}

TEST_F(OverdueChecks, TheUnitWithWhatPressesMostComesFirst)
{
    const auto mild = unitWith("A", {of(check("a", "2025-01-01", "2025-05-01"), {zone(1)})}, {risk(1, 0.02, 0.02)});
    const auto grave = unitWith("B", {of(check("b", "2026-01-01", "2026-02-01"), {zone(1)})}, {risk(1, 0.5, 0.02)});
    EXPECT_THAT(told({mild, grave}), ElementsAre("B: b", "A: a"));
}

} // namespace padside
