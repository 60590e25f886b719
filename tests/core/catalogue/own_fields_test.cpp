// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/own_changes.h"
#include "tests/core/catalogue/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside {

namespace {

using testing::HasSubstr;
using testing::IsEmpty;

OwnChanges shippedChanges(const std::string& patch = {})
{
    return OwnChanges::read(shippedCatalogue(), patch).value();
}

OwnField at(const std::vector<OwnField>& fields, const JsonPath& path)
{
    const auto found = std::ranges::find(fields, path, &OwnField::path);
    if (found == fields.end()) {
        ADD_FAILURE() << "no field " << path.back();
        return {};
    }
    return *found;
}

/// What is said of this value in this field; empty if it is taken.
std::string saidOf(const OwnField& field, const CatalogueValue& value)
{
    OwnChanges own = shippedChanges();
    own.set(field.path, value);
    const auto catalogue = own.catalogue();
    return catalogue ? "" : say(troubleWith(field, say(field.label), catalogue.error().what));
}

const JsonPath tolerance{"assumptions", "spent-tolerance-looks", "value"};

} // namespace

TEST(OwnFields, EveryAssumptionHasOneWithItsSentenceAndSource)
{
    const OwnChanges own = shippedChanges();
    std::size_t count = 0;
    for (const auto topic : {AssumptionTopic::checks, AssumptionTopic::flags, AssumptionTopic::forecasts}) {
        for (const OwnField& field : own.fields().assumptions(topic)) {
            EXPECT_TRUE(field.ours.has_value()) << say(field.label);
            EXPECT_FALSE(field.own.has_value()) << say(field.label);
            EXPECT_FALSE(field.sentence.empty()) << say(field.label);
            EXPECT_FALSE(field.source.empty()) << say(field.label);
            ++count;
        }
    }
    EXPECT_EQ(count, own.catalogue()->assumptions().size());
}

TEST(OwnFields, NamesCarryTheirUnitAndSharesAreShownInPerCent)
{
    const OwnChanges own = shippedChanges();
    const OwnField looks = at(own.fields().assumptions(AssumptionTopic::checks), tolerance);
    EXPECT_EQ(say(looks.label), "Tolerated chance of spent unseen: looks, in %");
    EXPECT_EQ(looks.shownTimes, 100);
    const auto flags = own.fields().assumptions(AssumptionTopic::flags);
    EXPECT_EQ(say(at(flags, {"assumptions", "not-seen-months", "value"}).label),
              "Longest time without a look, in months");
    EXPECT_EQ(say(at(flags, {"assumptions", "faster-factor", "value"}).label), "Worse faster: times the pace before");
}

TEST(OwnFields, WhatAnAssumptionCantBeIsSaidInTheFiguresShown)
{
    const OwnChanges own = shippedChanges();
    const OwnField looks = at(own.fields().assumptions(AssumptionTopic::checks), tolerance);
    EXPECT_EQ(saidOf(looks, 0.5), "");
    EXPECT_EQ(saidOf(looks, 0.6), "Tolerated chance of spent unseen: looks, in %: must lie between 0.01 and 50.");
    const OwnField seen
        = at(own.fields().assumptions(AssumptionTopic::flags), {"assumptions", "not-seen-months", "value"});
    EXPECT_EQ(saidOf(seen, 6.5), "Longest time without a look, in months: a whole number is needed here.");
    EXPECT_EQ(saidOf(seen, -1.0), "Longest time without a look, in months: must lie between 0 and 600.");
}

TEST(OwnFields, OursOfEveryFieldIsOneThatMayBeEntered)
{
    OwnChanges own = shippedChanges();
    std::vector<OwnField> all = own.fields().outlook();
    for (const auto topic : {AssumptionTopic::checks, AssumptionTopic::flags, AssumptionTopic::forecasts}) {
        const auto more = own.fields().assumptions(topic);
        all.insert(all.end(), more.begin(), more.end());
    }
    for (const std::string& kind : own.partKinds()) {
        const auto more = own.fields().supply(kind);
        all.insert(all.end(), more.begin(), more.end());
    }
    for (const OwnField& field : all)
        own.set(field.path, *field.ours);
    EXPECT_EQ(own.patch(), "") << "the same as ours is no change";
}

TEST(OwnFields, TheSpareOfAPartKindHasItsLeadTimeAndWhetherItIsMade)
{
    OwnChanges own = shippedChanges();
    const auto fields = own.fields().supply("compressor");
    ASSERT_EQ(fields.size(), 2U);
    EXPECT_EQ(say(fields[0].label), "Lead time of a spare, in days");
    EXPECT_EQ(fields[0].ours, CatalogueValue(10.0));
    EXPECT_EQ(fields[1].form, OwnField::Form::yesNo);
    EXPECT_EQ(fields[1].ours, CatalogueValue(true));
    EXPECT_THAT(fields[0].source, HasSubstr("no source"));
    own.set(fields[0].path, 45.0);
    own.set(fields[1].path, false);
    EXPECT_TRUE(own.differs("compressor"));
    EXPECT_EQ(own.catalogue()->supplyOf("compressor").leadDays, 45);
    EXPECT_FALSE(own.catalogue()->supplyOf("compressor").made);
    EXPECT_EQ(own.fields().supply("compressor")[1].own, CatalogueValue(false));
    EXPECT_EQ(saidOf(fields[0], -1.0), "Lead time of a spare, in days: must lie between 0 and 1000.");
    own.putBackPartKind("compressor");
    EXPECT_EQ(own.patch(), "");
    EXPECT_THAT(own.fields().supply("clearances"), IsEmpty()) << "no spare is thought of";
}

TEST(OwnFields, WhatTheOutlookAssumesCanBeChanged)
{
    OwnChanges own = shippedChanges();
    const auto fields = own.fields().outlook();
    for (const OwnField& field : fields) {
        EXPECT_TRUE(field.ours.has_value()) << say(field.label);
        EXPECT_FALSE(field.sentence.empty()) << say(field.label);
        EXPECT_FALSE(field.source.empty()) << say(field.label);
    }
    own.set({"outlook", "pace_sigma"}, 0.4);
    own.set({"outlook", "grade_shares"}, std::vector{0.25, 0.25, 0.25, 0.25});
    own.set({"outlook", "protections", "grease", "effect"}, 0.6);
    const auto catalogue = own.catalogue();
    ASSERT_TRUE(catalogue) << say(catalogue.error().what);
    EXPECT_EQ(catalogue->outlook().paceSigma, 0.4);
    EXPECT_EQ(catalogue->outlook().gradeShares[3], 0.25);
    EXPECT_EQ(catalogue->outlook().protections.at(TreatmentKind::grease).effect, 0.6);

    EXPECT_EQ(saidOf(at(fields, {"outlook", "protections", "grease", "effect"}), 0.95),
              "How much “grease” slows decay, in %: must lie between 0 and 90.");
    EXPECT_THAT(saidOf(at(fields, {"outlook", "grade_shares"}), std::vector{0.5, 0.5}), HasSubstr("four shares"));
    EXPECT_THAT(saidOf(at(fields, {"outlook", "wet_factor"}), 0.5), HasSubstr("must lie between 1 and 20."));
}

TEST(OwnFields, WhatIsNoValueOfTheCatalogueCountsAsNotThere)
{
    const OwnChanges own = shippedChanges(R"({"supply": {"compressor": {"lead_days": 30}}})");
    EXPECT_EQ(own.fields().supply("compressor")[0].own, CatalogueValue(30.0));
    EXPECT_FALSE(own.fields().supply("compressor")[1].own.has_value());
    EXPECT_THAT(own.fields().supply("no-such-kind"), IsEmpty());
}

} // namespace padside
