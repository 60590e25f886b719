// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/forecast.h"
#include "core/review/zone_course.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>
#include <numeric>

namespace padside::test {

namespace {

class ZoneCourses : public ::testing::Test
{
protected:
    [[nodiscard]] std::vector<ZoneCourse> of(const UnitRecord& record, const std::string& today, int years = 5) const
    {
        return zoneCourses(record, m_catalogue, m_model, day(today), years);
    }

    Catalogue m_catalogue = smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

RecordBuilder seenOnce(int grade)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2015-05-01");
    builder.visit("2023-05-01").graded("crown", grade);
    return builder;
}

} // namespace

TEST_F(ZoneCourses, BeginTodayAndRunOnEveryTwoMonths)
{
    const auto courses = of(seenOnce(3).build(), "2023-06-01", 3);
    ASSERT_EQ(courses.size(), 1U);
    ASSERT_EQ(courses[0].grades.size(), 19U);
    EXPECT_EQ(courses[0].grades.front().by, day("2023-06-01"));
    EXPECT_EQ(courses[0].grades.back().by, day("2026-06-01"));
}

TEST_F(ZoneCourses, AreChancesThatOnlyGetWorse)
{
    const auto courses = of(seenOnce(2).build(), "2023-06-01");
    for (std::size_t at = 0; at < courses[0].grades.size(); ++at) {
        const GradeChances& chances = courses[0].grades[at].chances;
        EXPECT_NEAR(std::accumulate(chances.begin(), chances.end(), 0.0), 1, 1e-9);
        if (at == 0)
            continue;
        double above = 0;
        double aboveBefore = 0;
        for (std::size_t grade = gradeCount; grade-- > 0;) { // the chance of this grade or worse
            above += chances[grade];
            aboveBefore += courses[0].grades[at - 1].chances[grade];
            EXPECT_GE(above, aboveBefore - 1e-12);
        }
    }
}

TEST_F(ZoneCourses, TheirLastGradeIsTheForecastsChanceOfSpent)
{
    const RecordBuilder builder = seenOnce(3);
    const auto courses = of(builder.build(), "2023-06-01");
    const auto belief = zoneBelief(builder.build(), m_catalogue, m_model, builder.zone("crown"), day("2023-06-01"));
    for (const GradesBy& one : courses[0].grades)
        EXPECT_NEAR(one.chances[4], chanceSpentBy(*belief, one.by), 1e-12);
}

TEST_F(ZoneCourses, ARetiredUnitHasNone)
{
    UnitRecord retired = seenOnce(3).build();
    retired.unit.retiredOn = day("2023-05-20");
    EXPECT_TRUE(of(retired, "2023-06-01").empty());
}

TEST(YearsAhead, AreHalfOfThoseSeenWithinBounds)
{
    EXPECT_EQ(yearsAhead(day("2023-01-01"), day("2024-01-01")), 2);
    EXPECT_EQ(yearsAhead(day("2016-01-01"), day("2024-01-01")), 4);
    EXPECT_EQ(yearsAhead(day("2004-01-01"), day("2024-01-01")), 5);
}

} // namespace padside::test
