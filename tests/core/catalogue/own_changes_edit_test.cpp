// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/own_changes.h"
#include "tests/core/catalogue/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside {

namespace {

using test::smallCatalogue;

const std::vector<std::string> gradeThree{"part_kinds", "pad", "grades", "3"};
const std::vector<std::string> years{"part_kinds", "pad", "median_life", "years"};

OwnChanges changes(const std::string& patch = {})
{
    return OwnChanges::read(std::vector{smallCatalogue()}, patch).value();
}

OwnField field(const OwnChanges& changes, const std::vector<std::string>& path)
{
    const auto fields = changes.fields().ofPartKind("pad");
    const auto found = std::ranges::find(fields, path, &OwnField::path);
    return found == fields.end() ? OwnField{} : *found;
}

} // namespace

TEST(EditingOwnChanges, BeginsWithoutAnyAndListsWhatMayBeChanged)
{
    const OwnChanges none = changes();
    EXPECT_EQ(none.patch(), "");
    EXPECT_THAT(none.partKinds(), ::testing::ElementsAre("pad", "fins"));
    std::vector<std::string> labels;
    for (const OwnField& one : none.fields().ofPartKind("pad")) {
        labels.push_back(say(one.label));
        EXPECT_TRUE(one.ours.has_value()) << labels.back();
        EXPECT_FALSE(one.own.has_value()) << labels.back();
    }
    EXPECT_THAT(labels,
                ::testing::IsSupersetOf({"Name", "Grade 3 marked", "Zone “drain”, grade 5 spent", "Task in spring",
                                         "Task in fall", "What keeps it alive", "Median life in years"}));
}

TEST(EditingOwnChanges, KeepsOnlyWhatDiffers)
{
    OwnChanges own = changes();
    own.set(gradeThree, std::string("leans on the hose"));
    EXPECT_EQ(own.patch(), R"({"part_kinds":{"pad":{"grades":{"3":"leans on the hose"}}}})");
    EXPECT_TRUE(own.differs("pad"));
    EXPECT_FALSE(own.differs("fins"));
    EXPECT_EQ(std::get<std::string>(*field(own, gradeThree).ours), "tilted");
    EXPECT_EQ(std::get<std::string>(*field(own, gradeThree).own), "leans on the hose");

    own.set(gradeThree, std::string("tilted")); // ours again
    EXPECT_EQ(own.patch(), "") << "and nothing empty is left lying about";
}

TEST(EditingOwnChanges, PutsOneOrAllOfAPartKindBack)
{
    OwnChanges own = changes();
    own.set(gradeThree, std::string("leans"));
    own.set(years, 12.5);
    own.putBack(gradeThree);
    EXPECT_EQ(own.patch(), R"({"part_kinds":{"pad":{"median_life":{"years":12.5}}}})");
    own.putBackPartKind("pad");
    EXPECT_EQ(own.patch(), "");
}

TEST(EditingOwnChanges, KnowsConsequencesInAnyOrderAndMayHaveNone)
{
    OwnChanges own = changes();
    EXPECT_THAT(own.consequences("pad"), ::testing::ElementsAre(Consequence::nuisance, Consequence::lossOfCharge));
    own.setConsequences("pad", {});
    EXPECT_TRUE(own.consequences("pad").empty());
    EXPECT_TRUE(own.catalogue().value().partKind("pad")->consequences.empty());
    own.setConsequences("pad", {Consequence::lossOfCharge, Consequence::nuisance});
    EXPECT_EQ(own.patch(), "");
}

TEST(EditingOwnChanges, LeavesAloneWhatWasChangedByHand)
{
    const std::string byHand = R"({"assumptions":{"wait":{"value":3}},"part_kinds":{"fins":{"grades":{"1":"new"}}}})";
    OwnChanges own = changes(byHand);
    own.set(gradeThree, std::string("leans"));
    own.putBack(gradeThree);
    EXPECT_EQ(own.patch(), byHand);
}

TEST(EditingOwnChanges, SaysWhatIsWrongWithItsPath)
{
    OwnChanges own = changes();
    own.set(years, -3.0);
    const auto refused = own.catalogue();
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(std::get<std::string>(refused.error().what.arguments.front()), "part_kinds/pad/median_life/years");
    EXPECT_FALSE(OwnChanges::read(std::vector{smallCatalogue()}, "{not json").has_value());
}

TEST(EditingOwnChanges, KeepsALearntLifeAndPutsOursBack)
{
    OwnChanges own = changes();
    own.setLearntLife("pad", false, {12.3456, {0.43215, 0.28765, 0.18, 0.1002}, *parseDate("2026-11-26")});
    own.setLearntLife("pad", true, {2.5, {0.25, 0.25, 0.25, 0.25}, *parseDate("2026-11-27")});
    const auto catalogue = own.catalogue();
    ASSERT_TRUE(catalogue) << say(catalogue.error().what);
    const OutlookOfKind& pad = catalogue->outlook().kinds.at("pad");
    EXPECT_NEAR(*pad.medianLifeYears, 12.3, 1e-12) << "three figures";
    EXPECT_NEAR((*pad.gradeShares)[0], 0.4321, 1e-12) << "they add up to one";
    EXPECT_EQ(pad.learntOn, parseDate("2026-11-26"));
    EXPECT_EQ(pad.soilingLifeYears, 2.5);
    EXPECT_EQ(pad.soilingLearntOn, parseDate("2026-11-27"));
    own.putBackLearntLife("pad", false);
    EXPECT_FALSE(own.catalogue()->outlook().kinds.at("pad").medianLifeYears);
    EXPECT_TRUE(own.catalogue()->outlook().kinds.at("pad").soilingLifeYears) << "the dirt was learned by itself";
    own.putBackLearntLife("pad", true);
    EXPECT_EQ(own.patch(), "");
}

TEST(EditingOwnChanges, ALearntLifeIsAlwaysOneACatalogueTakes)
{
    for (const double life : {0.0123, 0.1, 7.77777, 199.99, 12345.0}) {
        for (const std::array<double, 4>& shares :
             {std::array{0.9999, 0.00005, 0.00003, 0.00002}, std::array{1.0 / 3, 1.0 / 3, 1.0 / 6, 1.0 / 6},
              std::array{0.00001, 0.00001, 0.49999, 0.49999}}) {
            OwnChanges own = changes();
            own.setLearntLife("fins", false, {life, shares, *parseDate("2026-11-26")});
            const auto catalogue = own.catalogue();
            EXPECT_TRUE(catalogue) << life << ' ' << say(catalogue.error().what);
        }
    }
}

TEST(EditingOwnChanges, ADayOfLearningThatIsNoneIsRefusedWithItsPath)
{
    const OwnChanges own = changes(R"({"outlook": {"part_kinds": {"pad": {"learned_on": "last week"}}}})");
    const auto refused = own.catalogue();
    ASSERT_FALSE(refused);
    EXPECT_EQ(say(refused.error().what), "outlook/part_kinds/pad/learned_on: a day like 2026-05-04 is needed here.");
}

} // namespace padside
