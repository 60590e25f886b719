// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/catalogue/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::complaint;
using test::smallCatalogue;
using test::smallCatalogueWith;

Catalogue loaded(const std::string& shipped, const std::string& own)
{
    const std::vector<std::string> texts{shipped};
    return Catalogue::load(texts, own).value();
}

constexpr auto ownSentence = R"({"part_kinds": {"pad": {"grades": {"3": "leans on the hose"}}}})";

TEST(OwnChanges, ChangeOneSentenceAndNothingElse)
{
    const Catalogue ours = loaded(smallCatalogue(), {});
    const Catalogue theirs = loaded(smallCatalogue(), ownSentence);
    EXPECT_EQ(theirs.gradeSentence("pad", "top", Grade::marked), "leans on the hose");
    for (const Grade grade : {Grade::sound, Grade::worn, Grade::poor, Grade::spent})
        EXPECT_EQ(theirs.gradeSentence("pad", "top", grade), ours.gradeSentence("pad", "top", grade));
    EXPECT_EQ(theirs.gradeSentence("pad", "drain", Grade::marked), ours.gradeSentence("pad", "drain", Grade::marked));
    EXPECT_EQ(theirs.gradeSentence("fins", "faces", Grade::marked), ours.gradeSentence("fins", "faces", Grade::marked));
    EXPECT_EQ(theirs.partKind("pad")->name, ours.partKind("pad")->name);
    EXPECT_EQ(theirs.partKinds().front().code, ours.partKinds().front().code) << "the order stays";
}

TEST(OwnChanges, OutliveAnUpdateOfTheShippedCatalogue)
{
    const std::string updated = smallCatalogueWith(
        R"({"part_kinds": {"pad": {"grades": {"3": "tilted by a hand's breadth", "4": "sunk at a corner"}}}})");
    const Catalogue catalogue = loaded(updated, ownSentence);
    EXPECT_EQ(catalogue.gradeSentence("pad", "top", Grade::marked), "leans on the hose");
    EXPECT_EQ(catalogue.gradeSentence("pad", "top", Grade::poor), "sunk at a corner")
        << "what they left alone is updated";
}

TEST(OwnChanges, CanAddAPartKindAndTakeOneAway)
{
    const Catalogue catalogue = loaded(smallCatalogue(), R"({
        "unit_kinds": {"heat-pump": {"parts": {"fins": null, "riser": {}}}},
        "part_kinds": {"fins": null, "riser": {"name": "Riser", "unit_kinds": ["heat-pump"], "zones": {"leg": {"name": "leg"}},
            "grades": {"1": "a", "2": "b", "3": "c", "4": "d", "5": "e"}, "tasks": {}, "failure_modes": [],
            "preserves": "paint", "consequences": ["looks"], "spare": "easy", "outlives_unit": true}}})");
    EXPECT_EQ(catalogue.partKind("fins"), nullptr);
    ASSERT_NE(catalogue.partKind("riser"), nullptr);
    EXPECT_EQ(catalogue.unitKind("heat-pump")->parts.back().partKind, "riser");
}

TEST(OwnChanges, ThatTakeAwayAPartStillFittedAreRefused)
{
    EXPECT_EQ(complaint({smallCatalogue()}, R"({"part_kinds": {"pad": null}})"),
              "unit_kinds/heat-pump/parts/pad: there is no part kind with this code.");
}

TEST(OwnChanges, CanChangeAnAssumptionButNotTakeItAway)
{
    EXPECT_DOUBLE_EQ(loaded(smallCatalogue(), R"({"assumptions": {"wait": {"value": 2}}})").assumption("wait"), 2);
    EXPECT_EQ(complaint({smallCatalogue()}, R"({"assumptions": {"wait": null}})"),
              "assumptions/wait: an assumption can be changed but not taken away; rules need it.");
}

TEST(OwnChanges, ThatAreNotJsonAreNamedAsTheirs)
{
    EXPECT_EQ(complaint({smallCatalogue()}, "{oops}"),
              "Your own changes to the catalogue: this is not JSON; it breaks off near character 2. Correct it there.");
    EXPECT_EQ(complaint({smallCatalogue()}, "null"),
              "Your own changes to the catalogue: a JSON object is needed here, beginning with a curly brace.");
    EXPECT_EQ(complaint({smallCatalogue()}, R"({"cautions": null})"), "cautions: this is missing.");
}

// The three examples of RFC 7396, section 1 and appendix A, that our use rests on: replace, remove, and whole lists.
TEST(OwnChanges, FollowTheMergePatchOfRfc7396)
{
    const Catalogue catalogue = loaded(smallCatalogue(), R"({"part_kinds": {"pad": {
        "median_life": null, "failure_modes": ["sinks", "floods"], "preserves": "risers"}}})");
    EXPECT_FALSE(catalogue.partKind("pad")->medianLifeYears) << "null takes a field away";
    EXPECT_THAT(catalogue.partKind("pad")->failureModes, testing::ElementsAre("sinks", "floods"))
        << "lists are replaced whole";
    EXPECT_EQ(catalogue.partKind("pad")->preserves, "risers");
    EXPECT_EQ(catalogue.partKind("pad")->spare, Spare::easy) << "what the patch does not name stays";
}

} // namespace

} // namespace padside
