// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

using test::anAccumulator;
using test::aUnit;
using test::gradesOfEvidence;
using test::raisedBy;
using testing::ElementsAre;

namespace {
const std::string treatedButWorseAgainRule = "treated-but-worse-again";
}

TEST(TreatedButWorseAgain, ComparesWithTheGradeTheWorkLeft)
{
    const auto unit = anAccumulator()
                          .visit("2025-05-06")
                          .graded("bottom", 3)
                          .treated("bottom", TreatmentKind::brushAndCoat)
                          .graded("bottom", 2, Phase::asLeft)
                          .visit("2026-05-04")
                          .graded("bottom", 3);
    const auto flag = raisedBy(treatedButWorseAgainRule, unit);
    ASSERT_TRUE(flag) << "as found it is the same as a year ago, but not as it was left";
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: 2 worn after the work of 2025-05-06 (brush and coat), but 3 marked on "
              "2026-05-04; worse again within 12 months.");
    EXPECT_EQ(say(flag->clears), "Worked on again and left at 2 worn or better, or seen so at a later visit.");
    EXPECT_EQ(flag->severity, Severity::plan);
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(2, 3));
}

TEST(TreatedButWorseAgain, ComparesWithTheGradeFoundWhereNoneWasLeft)
{
    EXPECT_TRUE(raisedBy(treatedButWorseAgainRule,
                         anAccumulator()
                             .visit("2025-05-06")
                             .graded("bottom", 3)
                             .treated("bottom", TreatmentKind::brushAndCoat)
                             .visit("2026-05-04")
                             .graded("bottom", 4)));
    EXPECT_FALSE(raisedBy(treatedButWorseAgainRule,
                          anAccumulator()
                              .visit("2025-05-06")
                              .graded("bottom", 3)
                              .treated("bottom", TreatmentKind::brushAndCoat)
                              .visit("2026-05-04")
                              .graded("bottom", 3)))
        << "rust under fresh paint is still there: no worse";
}

TEST(TreatedButWorseAgain, IsSilentWhereTheWorkHeldForThreeYears)
{
    const auto worse = [](const char* firstSeenWorse) {
        return raisedBy(treatedButWorseAgainRule,
                        anAccumulator()
                            .visit("2021-05-06")
                            .graded("bottom", 3)
                            .treated("bottom", TreatmentKind::brushAndCoat)
                            .graded("bottom", 2, Phase::asLeft)
                            .visit(firstSeenWorse)
                            .graded("bottom", 3)
                            .visit("2026-05-04")
                            .graded("bottom", 3));
    };
    EXPECT_FALSE(worse("2024-05-07"));
    EXPECT_TRUE(worse("2024-05-06")) << "it was worse in time, and still is";
}

TEST(TreatedButWorseAgain, IsActFromPoor)
{
    const auto flag = raisedBy(treatedButWorseAgainRule,
                               anAccumulator()
                                   .visit("2025-05-06")
                                   .graded("bottom", 3)
                                   .treated("bottom", TreatmentKind::brushAndCoat)
                                   .visit("2026-05-04")
                                   .graded("bottom", 4));
    EXPECT_EQ(flag->severity, Severity::act);
}

TEST(TreatedButWorseAgain, IsSilentWithoutWorkOrWithWorkOnlyAtTheLastVisit)
{
    EXPECT_FALSE(
        raisedBy(treatedButWorseAgainRule,
                 anAccumulator().visit("2025-05-06").graded("bottom", 2).visit("2026-05-04").graded("bottom", 3)));
    EXPECT_FALSE(raisedBy(treatedButWorseAgainRule,
                          anAccumulator()
                              .visit("2025-05-06")
                              .graded("bottom", 2)
                              .visit("2026-05-04")
                              .graded("bottom", 3)
                              .treated("bottom", TreatmentKind::brushAndCoat)));
}

TEST(TreatedButWorseAgain, ClearsWhenItIsWorkedOnAgainAndLeftAsGood)
{
    EXPECT_FALSE(raisedBy(treatedButWorseAgainRule,
                          anAccumulator()
                              .visit("2025-05-06")
                              .graded("bottom", 3)
                              .treated("bottom", TreatmentKind::brushAndCoat)
                              .graded("bottom", 2, Phase::asLeft)
                              .visit("2026-05-04")
                              .graded("bottom", 3)
                              .treated("bottom", TreatmentKind::brushAndCoat)
                              .graded("bottom", 2, Phase::asLeft)));
}

TEST(TreatedButWorseAgain, DirtThatComesBackAfterWashingIsNoWorryUntilItIsPoor)
{
    const auto washed = [](int now) {
        return aUnit("HB-01")
            .withPart("fins", {"face"})
            .visit("2025-05-06")
            .graded("face", 3)
            .treated("face", TreatmentKind::clean)
            .graded("face", 1, Phase::asLeft)
            .visit("2026-05-04")
            .graded("face", now);
    };
    EXPECT_FALSE(raisedBy(treatedButWorseAgainRule, washed(3)));
    EXPECT_TRUE(raisedBy(treatedButWorseAgainRule, washed(4)));
}

} // namespace padside
