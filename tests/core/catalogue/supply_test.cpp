// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/catalogue/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside {

namespace {

using test::complaint;
using test::smallCatalogueWith;
using testing::HasSubstr;

Catalogue shippedWith(const std::string& own)
{
    return Catalogue::load(shippedCatalogue(), own).value();
}

} // namespace

TEST(Supply, EachPartKindWithASpareSaysHowLongItTakesToCome)
{
    const Catalogue catalogue = shippedWith({});
    for (const PartKind& kind : catalogue.partKinds()) {
        if (!kind.outlivesUnit || kind.spare != Spare::easy) {
            EXPECT_TRUE(catalogue.supply().contains(kind.code)) << kind.code;
        }
        const Supply supply = catalogue.supplyOf(kind.code);
        if (kind.spare == Spare::none) {
            EXPECT_FALSE(supply.made) << kind.code;
        }
        if (catalogue.supply().contains(kind.code)) {
            EXPECT_THAT(supply.source, HasSubstr("no source")) << "an assumption, and it says so";
        }
    }
}

TEST(Supply, APersonsOwnLeadTimeTakesThePlaceOfOurs)
{
    const Catalogue catalogue
        = shippedWith(R"({"supply": {"compressor": {"lead_days": 30}, "fan-motor": {"made": false}}})");
    EXPECT_EQ(catalogue.supplyOf("compressor").leadDays, 30);
    EXPECT_TRUE(catalogue.supplyOf("compressor").made);
    EXPECT_FALSE(catalogue.supplyOf("fan-motor").made);
}

TEST(Supply, AKindWithoutAWordHasTheUsual)
{
    const Supply supply = shippedWith({}).supplyOf("no-such-kind");
    EXPECT_EQ(supply.leadDays, 14);
    EXPECT_TRUE(supply.made);
    EXPECT_EQ(complaint({test::smallCatalogue()}), "") << "a catalogue without the section loads";
}

TEST(Supply, WhatCantBeIsRefusedWithItsPlace)
{
    const auto said
        = [](const std::string& supply) { return complaint({smallCatalogueWith(R"({"supply": )" + supply + "}")}); };
    EXPECT_THAT(said(R"({"pad": {"lead_days": -1, "made": true, "source": "s"}})"), HasSubstr("supply/pad/lead_days"));
    EXPECT_THAT(said(R"({"pad": {"lead_days": 7, "source": "s"}})"), HasSubstr("supply/pad"));
    EXPECT_THAT(said(R"({"rotor": {"lead_days": 7, "made": true, "source": "s"}})"), HasSubstr("supply/rotor"));
    EXPECT_EQ(said(R"({"pad": {"lead_days": 7, "made": true, "source": "s"}})"), "");
}

TEST(ToleratedAs, AZonesOwnConsequenceIsReadAndOneThatIsNoneIsRefused)
{
    const auto zone = [](const std::string& as) {
        return smallCatalogueWith(R"({"part_kinds": {"pad": {"zones": {"drain": {"tolerated_as": ")" + as
                                  + R"("}}}}})");
    };
    EXPECT_EQ(complaint({zone("looks")}), "");
    EXPECT_THAT(complaint({zone("grief")}), HasSubstr("part_kinds/pad/zones/drain/tolerated_as"));
    const Catalogue catalogue = shippedWith({});
    EXPECT_EQ(catalogue.toleratedAs("base-pan", "drain-holes"), Consequence::nuisance);
    EXPECT_EQ(catalogue.toleratedAs("base-pan", "pan"), Consequence::lossOfCharge);
    EXPECT_EQ(catalogue.toleratedAs("no-such-kind", "zone"), Consequence::looks);
}

TEST(ToleratedAs, TheShippedTolerancesAreThoseStated)
{
    const Catalogue catalogue = shippedWith({});
    EXPECT_EQ(catalogue.spentTolerance(Consequence::lossOfCharge), 0.02);
    EXPECT_EQ(catalogue.spentTolerance(Consequence::compressorAtRisk), 0.02);
    EXPECT_EQ(catalogue.spentTolerance(Consequence::lossOfCooling), 0.05);
    EXPECT_EQ(catalogue.spentTolerance(Consequence::nuisance), 0.1);
    EXPECT_EQ(catalogue.spentTolerance(Consequence::looks), 0.2);
}

} // namespace padside
