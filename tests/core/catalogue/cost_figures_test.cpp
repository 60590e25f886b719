// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/cost_figures.h"
#include "core/catalogue/own_changes.h"
#include "resources/resources.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside::test {

namespace {

using ::testing::HasSubstr;

CostFigures figures(const std::string& own = {})
{
    const auto read = costFigures(shippedCatalogue(), own);
    EXPECT_TRUE(read) << (read ? "" : say(read.error().what));
    return read.value_or(CostFigures{});
}

std::string complaintAboutOwn(const std::string& own)
{
    const auto loaded = Catalogue::load(shippedCatalogue(), own);
    return loaded ? std::string() : say(loaded.error().what);
}

} // namespace

TEST(CostFigures, NoMoneyIsShipped)
{
    const CostFigures ours = figures();
    EXPECT_TRUE(ours.kinds.empty());
    EXPECT_TRUE(ours.refrigerantPerKg.empty());
    EXPECT_FALSE(ours.energyPrice.has_value());
    EXPECT_FALSE(ours.upkeepAVisit.has_value());
    EXPECT_FALSE(ours.of("compressor").part.has_value());
}

TEST(CostFigures, WhatIsNoMoneyHasAStartingValueAndSaysWhereItComesFrom)
{
    const CostFigures ours = figures();
    EXPECT_DOUBLE_EQ(ours.interest, 0.05);
    EXPECT_DOUBLE_EQ(ours.yearsCompared, 10);
    EXPECT_DOUBLE_EQ(ours.yearlyLossOld, 0.02);
    EXPECT_THAT(ours.source, HasSubstr("ours"));
}

TEST(CostFigures, APersonsOwnCostsAreLaidOverThem)
{
    const CostFigures own
        = figures(R"({"costs": {"run-capacitor": {"part": 25, "labour": 60, "damage_chance_percent": 30}},
        "refrigerant_prices": {"r-410a": {"per_kg": 48.5}}, "money": {"energy_price_per_kwh": 0.21, "interest_percent": 3}})");
    EXPECT_EQ(own.of("run-capacitor").part, 25);
    EXPECT_EQ(own.of("run-capacitor").damageChance, 0.3);
    EXPECT_FALSE(own.of("run-capacitor").treatment.has_value());
    EXPECT_EQ(own.refrigerantPerKg.at("r-410a"), 48.5);
    EXPECT_EQ(own.energyPrice, 0.21);
    EXPECT_DOUBLE_EQ(own.interest, 0.03);
    EXPECT_EQ(complaintAboutOwn(R"({"costs": {"run-capacitor": {"part": 25}}})"), "");
}

TEST(CostFigures, WhatCanNotBeIsNamedWithItsPlace)
{
    EXPECT_THAT(complaintAboutOwn(R"({"costs": {"run-capacitor": {"part": -1}}})"),
                HasSubstr("costs/run-capacitor/part"));
    EXPECT_THAT(complaintAboutOwn(R"({"costs": {"run-capacitor": {"prise": 1}}})"),
                HasSubstr("costs/run-capacitor/prise"));
    EXPECT_THAT(complaintAboutOwn(R"({"costs": {"no-such-part": {"part": 1}}})"), HasSubstr("costs/no-such-part"));
    EXPECT_THAT(complaintAboutOwn(R"({"costs": {"fins": {"damage_chance_percent": 101}}})"),
                HasSubstr("damage_chance_percent"));
    EXPECT_THAT(complaintAboutOwn(R"({"refrigerant_prices": {"r-0": {"per_kg": 1}}})"),
                HasSubstr("refrigerant_prices/r-0"));
    EXPECT_THAT(complaintAboutOwn(R"({"money": {"years_compared": 0}})"), HasSubstr("money/years_compared"));
    EXPECT_THAT(complaintAboutOwn(R"({"money": {"interest_percent": null}})"), HasSubstr("money/interest_percent"));
}

TEST(CostFigures, CostsAreEditedAsOtherOwnChanges)
{
    OwnChanges own = OwnChanges::read(shippedCatalogue(), {}).value();
    const auto fields = own.fields().costs("compressor");
    ASSERT_EQ(fields.size(), costFields().size());
    for (const OwnField& field : fields)
        EXPECT_FALSE(field.ours.has_value()) << say(field.label);
    own.set(fields.front().path, 1450.0);
    EXPECT_TRUE(own.differs("compressor"));
    EXPECT_EQ(own.patch(), R"({"costs":{"compressor":{"part":1450.0}}})");
    EXPECT_EQ(figures(own.patch()).of("compressor").part, 1450);
    own.putBackPartKind("compressor");
    EXPECT_EQ(own.patch(), "");
}

TEST(CostFigures, GeneralFiguresAreEditedWithOursBesideThem)
{
    OwnChanges own = OwnChanges::read(shippedCatalogue(), {}).value();
    const auto fields = own.fields().money({{"r-22", "R-22"}});
    EXPECT_EQ(say(fields.front().label), "Price of R-22 per kg");
    const auto interest
        = std::ranges::find(fields, std::vector<std::string>{"money", "interest_percent"}, &OwnField::path);
    ASSERT_NE(interest, fields.end());
    EXPECT_EQ(say(interest->label), "Interest of a year, in %");
    EXPECT_EQ(std::get<double>(*interest->ours), 5);
    own.set(interest->path, 4.0);
    own.set(fields.front().path, 90.0);
    EXPECT_DOUBLE_EQ(figures(own.patch()).interest, 0.04);
    EXPECT_EQ(figures(own.patch()).refrigerantPerKg.at("r-22"), 90);
}

} // namespace padside::test
