// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/outlook_change.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside::test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

class OutlookChanges : public ::testing::Test
{
protected:
    /// Of the last visit.
    [[nodiscard]] std::vector<OutlookChange> of(const RecordBuilder& builder) const
    {
        const UnitRecord record = builder.build();
        return outlookChanges(record, m_catalogue, m_model, record.visits.back().id);
    }

    [[nodiscard]] static RecordBuilder accumulator()
    {
        RecordBuilder builder = aUnit("HB-01");
        builder.withPart("suction-accumulator", {"crown"}, "2015-05-01");
        return builder;
    }

    Catalogue m_catalogue = smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

} // namespace

TEST_F(OutlookChanges, AZoneFoundWorseThanExpectedIsLikelierToBeSpent)
{
    RecordBuilder builder = accumulator();
    builder.visit("2022-05-01").graded("crown", 2);
    builder.visit("2023-05-01").graded("crown", 4);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_GT(changes[0].now, changes[0].before + 0.02);
    EXPECT_LT(*changes[0].datesNow.middle, *changes[0].datesBefore.middle);
    EXPECT_THAT(say(changes[0].because), HasSubstr("Found 4 poor: "));
}

TEST_F(OutlookChanges, AFastOneIsSaidToBeFasterThanItsKind)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2021-05-01");
    builder.visit("2022-05-01").graded("crown", 2);
    builder.visit("2023-05-01").graded("crown", 4);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_THAT(say(changes[0].because), HasSubstr("Found 4 poor: it gets worse faster than its kind, at about"));
}

TEST_F(OutlookChanges, AZoneThatHeldIsLessLikelyToBeSpent)
{
    RecordBuilder builder = accumulator();
    builder.visit("2018-05-01").graded("crown", 3);
    builder.visit("2023-05-01").graded("crown", 3);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_LT(changes[0].now, changes[0].before);
    EXPECT_THAT(say(changes[0].because), HasSubstr("Found 3 marked: "));
}

TEST_F(OutlookChanges, AZoneNotSeenIsLessCertainNeverBetter)
{
    RecordBuilder builder = accumulator();
    builder.visit("2020-05-01").graded("crown", 3);
    builder.visit("2023-05-01").notSeen("crown", NotSeenReason::covered);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_GT(changes[0].now, changes[0].before);
    EXPECT_EQ(say(changes[0].because), "Not seen: less certain than when it was last told.");
}

TEST_F(OutlookChanges, AZoneNobodyLookedAtIsNotTold)
{
    RecordBuilder builder = accumulator();
    builder.visit("2020-05-01").graded("crown", 3);
    builder.visit("2023-05-01");
    EXPECT_THAT(of(builder), IsEmpty());
}

TEST_F(OutlookChanges, ACleanedCoilBeginsAnew)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("fins", {"face"}, "2015-05-01");
    builder.visit("2022-05-01").graded("face", 3);
    builder.visit("2023-05-01").graded("face", 4).treated("face", TreatmentKind::clean);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_LT(changes[0].now, changes[0].before);
    EXPECT_EQ(say(changes[0].because), "Cleaned: the dirt begins anew.");
}

TEST_F(OutlookChanges, ANewPartIsHeldAgainstTheOneItReplaces)
{
    RecordBuilder builder = accumulator();
    builder.visit("2022-05-01").graded("crown", 4);
    builder.visit("2023-05-01").replacedPart("suction-accumulator", "2023-05-01");
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_GT(changes[0].before, 0.1);
    EXPECT_LT(changes[0].now, 0.02);
    EXPECT_EQ(say(changes[0].because), "A new part: its outlook begins afresh.");
}

TEST_F(OutlookChanges, APaintedZoneIsSlowerNotBetter)
{
    RecordBuilder builder = accumulator();
    builder.visit("2022-05-01").graded("crown", 3);
    builder.visit("2022-11-01").graded("crown", 3).treated("crown", TreatmentKind::brushAndCoat);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_LT(changes[0].now, changes[0].before);
    EXPECT_THAT(say(changes[0].because), HasSubstr("what lies under it is not better"));
}

TEST_F(OutlookChanges, AVisitThatIsNotThereChangesNothing)
{
    EXPECT_THAT(outlookChanges(accumulator().build(), m_catalogue, m_model, VisitId{}), IsEmpty());
}

TEST_F(OutlookChanges, TheGreatestChangeComesFirst)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "shell", "bottom"}, "2015-05-01");
    builder.visit("2022-05-01").graded("crown", 2).graded("shell", 2).graded("bottom", 2);
    builder.visit("2023-05-01").graded("crown", 3).graded("shell", 5).graded("bottom", 4);
    const auto changes = of(builder);
    ASSERT_THAT(changes, SizeIs(testing::Ge(2U)));
    EXPECT_EQ(changes[0].zoneId, builder.zone("shell"));
    EXPECT_EQ(changes[1].zoneId, builder.zone("bottom"));
}

} // namespace padside::test
