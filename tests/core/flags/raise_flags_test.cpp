// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rule.h"
#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>
#include <set>

namespace padside {

using test::aUnit;
using test::raised;
using testing::ElementsAre;

TEST(RaiseFlags, EachRuleHasAnIdOfItsOwn)
{
    std::set<std::string_view> ids;
    for (const Rule& rule : allRules())
        EXPECT_TRUE(ids.insert(rule.id).second) << rule.id;
    for (const UnitRule& rule : allUnitRules())
        EXPECT_TRUE(ids.insert(rule.id).second) << rule.id;
}

TEST(RaiseFlags, ASoundUnitSeenLatelyRaisesNone)
{
    EXPECT_TRUE(raised(aUnit("HB-01")
                           .withPart("suction-accumulator", {"crown", "bottom"})
                           .visit("2025-05-06")
                           .graded("crown", 1)
                           .graded("bottom", 2)
                           .visit("2026-05-04")
                           .graded("crown", 1)
                           .graded("bottom", 2),
                       "2026-06-01")
                    .empty());
}

TEST(RaiseFlags, TheMostSevereComeFirstThenTheWorstGradeThenTheOrderOfParts)
{
    const auto unit = aUnit("HB-01")
                          .withPart("run-capacitor", {"case"})
                          .withPart("suction-accumulator", {"crown", "bottom"})
                          .withPart("base-pan", {"corners"})
                          .visit("2025-05-06")
                          .graded("case", 1)
                          .graded("crown", 1)
                          .graded("bottom", 2)
                          .graded("corners", 4)
                          .visit("2026-05-04")
                          .graded("case", 2)
                          .graded("crown", 2)
                          .graded("bottom", 3)
                          .graded("corners", 5);
    std::vector<std::string> told;
    for (const Flag& flag : raised(unit, "2026-06-01"))
        told.push_back(flag.rule + " " + say(flag.sentence).substr(0, 20));
    EXPECT_THAT(told,
                ElementsAre("spent Base pan, corners: 5", "end-of-unit-part-poor Base pan, corners: 5",
                            "worse-by-a-grade Base pan, corners: 5", "worse-by-a-grade Suction accumulator,",
                            "worse-by-a-grade Run capacitor, case:", "worse-by-a-grade Suction accumulator,"));
}

TEST(RaiseFlags, APartIsNamedWithItsPositionWhereThereAreSeveral)
{
    const auto two = aUnit("HB-01")
                         .withPart("run-capacitor", {"case"}, {}, "fan")
                         .withPart("run-capacitor", {"case"}, {}, "compressor")
                         .visit("2026-05-04")
                         .graded("case", 5);
    EXPECT_THAT(say(raised(two, "2026-06-01").front().sentence),
                testing::StartsWith("Run capacitor (compressor), case: 5 spent"));
    const auto one
        = aUnit("HB-01").withPart("run-capacitor", {"case"}, {}, "fan").visit("2026-05-04").graded("case", 5);
    EXPECT_THAT(say(raised(one, "2026-06-01").front().sentence), testing::StartsWith("Run capacitor, case: 5 spent"));
}

TEST(RaiseFlags, APartTheCatalogueDoesNotKnowIsNamedByItsCode)
{
    const auto unit = aUnit("HB-01").withPart("ice-guard", {"mesh"}).visit("2026-05-04").graded("mesh", 5);
    EXPECT_THAT(say(raised(unit, "2026-06-01").front().sentence),
                testing::StartsWith("ice-guard, mesh: 5 spent on 2026-05-04."));
}

TEST(RaiseFlags, PartAndZoneNamesAreWordsToTranslateUnlessThePersonGaveThem)
{
    auto record = aUnit("HB-01").withPart("run-capacitor", {"case"}).visit("2026-05-04").graded("case", 5).build();
    record.parts.front().zones.front().name = "the dented one";
    const auto flags = raiseFlags(record, test::smallCatalogue(), test::day("2026-06-01"), zoneHistories(record), {});
    EXPECT_EQ(flags.front().sentence.arguments.at(0), Argument(Word{"Run capacitor"}));
    EXPECT_EQ(flags.front().sentence.arguments.at(2), Argument(std::string("the dented one")));
}

} // namespace padside
