// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/catalogue/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::complaint;
using test::smallCatalogue;
using test::smallCatalogueWith;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

Catalogue small()
{
    const std::vector<std::string> texts{smallCatalogue()};
    return Catalogue::load(texts).value();
}

TEST(CatalogueLoad, ReadsEveryFieldOfAPartKind)
{
    const Catalogue catalogue = small();
    const PartKind* pad = catalogue.partKind("pad");
    ASSERT_NE(pad, nullptr);
    EXPECT_EQ(pad->name, "Pad");
    EXPECT_THAT(pad->unitKinds, ElementsAre("heat-pump"));
    ASSERT_EQ(pad->zones.size(), 2U);
    EXPECT_FALSE(pad->zones[0].soiling);
    EXPECT_FALSE(pad->zones[0].gradeSentences);
    EXPECT_TRUE(pad->zones[1].soiling);
    EXPECT_THAT(pad->gradeSentences, ElementsAre("level", "nearly level", "tilted", "sunk", "leaning"));
    ASSERT_EQ(pad->tasks.size(), 2U);
    EXPECT_EQ(pad->tasks[0].code, "spring-pad");
    EXPECT_EQ(pad->tasks[0].season, VisitReason::spring);
    EXPECT_TRUE(pad->tasks[0].required);
    EXPECT_THAT(pad->tasks[0].needs, ElementsAre(Condition::dry, Condition::hotEnoughForCharge));
    EXPECT_EQ(pad->tasks[1].season, VisitReason::fall);
    EXPECT_FALSE(pad->tasks[1].required);
    EXPECT_THAT(pad->failureModes, ElementsAre("tilt"));
    EXPECT_EQ(pad->preserves, "gravel");
    EXPECT_THAT(pad->consequences, ElementsAre(Consequence::nuisance, Consequence::lossOfCharge));
    EXPECT_EQ(pad->spare, Spare::easy);
    EXPECT_TRUE(pad->outlivesUnit);
    ASSERT_TRUE(pad->medianLifeYears);
    EXPECT_DOUBLE_EQ(pad->medianLifeYears->value, 20);
    EXPECT_EQ(pad->medianLifeYears->source, "common practice, no source");
    EXPECT_THAT(pad->cautions, ElementsAre("sharp"));
}

TEST(CatalogueLoad, APartWithoutAMedianLifeLastsAsLongAsTheUnit)
{
    EXPECT_FALSE(small().partKind("fins")->medianLifeYears);
}

TEST(CatalogueLoad, APartStandsOncePerNamedPosition)
{
    const Catalogue catalogue = small();
    const auto& parts = catalogue.unitKind("heat-pump")->parts;
    ASSERT_EQ(parts.size(), 3U);
    EXPECT_EQ(parts[0].partKind + "/" + parts[0].position, "pad/");
    EXPECT_EQ(parts[1].partKind + "/" + parts[1].position, "fins/left");
    EXPECT_EQ(parts[2].partKind + "/" + parts[2].position, "fins/right");
}

TEST(CatalogueLoad, BoundsOfReadingsAreWrittenInTheMetricUnitAndKeptInSi)
{
    const Catalogue catalogue = small();
    const ReadingKind* height = catalogue.readingKind("pad-height");
    ASSERT_NE(height, nullptr);
    EXPECT_EQ(height->quantity, QuantityKind::length);
    EXPECT_DOUBLE_EQ(height->lowest, 0.010);
    EXPECT_DOUBLE_EQ(height->highest, 1.5);
    EXPECT_THAT(height->seasons, ElementsAre(VisitReason::fall));
    EXPECT_EQ(height->partKind, "pad");
}

TEST(CatalogueLoad, ReadsNameplateCautionsAndAssumptions)
{
    const Catalogue catalogue = small();
    EXPECT_EQ(catalogue.nameplateItem("charge")->customaryUnit, "lb");
    EXPECT_FALSE(catalogue.caution("sharp")->always);
    EXPECT_TRUE(catalogue.caution("advice")->always);
    EXPECT_DOUBLE_EQ(catalogue.leakLimit("law")->smallestChargeKg, 22.6796185); // 50 lb
    EXPECT_DOUBLE_EQ(catalogue.leakLimit("law")->rate, 0.1);
    EXPECT_EQ(catalogue.leakLimit("law")->force, LeakForce::regulatory);
    EXPECT_EQ(catalogue.leakLimit("law")->duties->repairDays, 30);
    EXPECT_DOUBLE_EQ(catalogue.coating("primer")->dryTimeS, 4 * 3600);
    EXPECT_DOUBLE_EQ(catalogue.coating("primer")->lowestTemperatureK, 278.15);
    EXPECT_DOUBLE_EQ(catalogue.coating("primer")->highestHumidity, 0.85);
    EXPECT_DOUBLE_EQ(catalogue.assumption("wait"), 1.5);
}

TEST(CatalogueLoad, AZoneWithItsOwnSentencesUsesThemAndTheOthersUseThePartS)
{
    const Catalogue catalogue = small();
    EXPECT_EQ(catalogue.gradeSentence("pad", "top", Grade::poor), "sunk");
    EXPECT_EQ(catalogue.gradeSentence("pad", "drain", Grade::poor), "d");
    EXPECT_THAT(catalogue.gradeSentence("pad", "nowhere", Grade::poor), IsEmpty());
    EXPECT_THAT(catalogue.gradeSentence("nothing", "top", Grade::poor), IsEmpty());
}

TEST(CatalogueLoad, UnknownCodesAnswerNull)
{
    const Catalogue catalogue = small();
    EXPECT_EQ(catalogue.unitKind("x"), nullptr);
    EXPECT_EQ(catalogue.partKind("x"), nullptr);
    EXPECT_EQ(catalogue.zoneKind("pad", "x"), nullptr);
    EXPECT_EQ(catalogue.zoneKind("x", "top"), nullptr);
    EXPECT_EQ(catalogue.readingKind("x"), nullptr);
    EXPECT_EQ(catalogue.nameplateItem("x"), nullptr);
    EXPECT_EQ(catalogue.caution("x"), nullptr);
    EXPECT_EQ(catalogue.leakLimit("x"), nullptr);
    EXPECT_EQ(catalogue.coating("x"), nullptr);
}

TEST(CatalogueLoad, SeveralTextsAreReadAsOne)
{
    auto json = test::Json::parse(smallCatalogue());
    const test::Json cautions{{"cautions", json.at("cautions")}};
    json.erase("cautions");
    EXPECT_EQ(complaint({cautions.dump(), json.dump()}), "");
    EXPECT_EQ(complaint({json.dump()}), "cautions: this is missing.");
}

struct Misfit
{
    const char* patch;
    const char* sentence;
};

class CatalogueMisfit : public testing::TestWithParam<Misfit>
{
};

TEST_P(CatalogueMisfit, IsNamedWithItsPath)
{
    EXPECT_EQ(complaint({smallCatalogueWith(GetParam().patch)}), GetParam().sentence);
}

INSTANTIATE_TEST_SUITE_P(
    Fields, CatalogueMisfit,
    testing::Values(
        Misfit{R"({"part_kinds": {"pad": {"grades": {"4": null}}}})",
               "part_kinds/pad/grades: five sentences are needed, there are 4."},
        Misfit{R"({"part_kinds": {"pad": {"grades": {"6": "more"}}}})",
               "part_kinds/pad/grades/6: the catalogue knows no such field here."},
        Misfit{R"({"part_kinds": {"pad": {"grades": ["a", "b", "c", "d", "e"]}}})",
               "part_kinds/pad/grades: fields in curly braces are needed here."},
        Misfit{R"({"part_kinds": {"pad": {"grades": {"2": "  "}}}})",
               "part_kinds/pad/grades/2: words in quotation marks are needed here."},
        Misfit{R"({"part_kinds": {"pad": {"zones": {"drain": {"grades": {"1": null, "2": null}}}}}})",
               "part_kinds/pad/zones/drain/grades: five sentences are needed, there are 3."},
        Misfit{R"({"part_kinds": {"pad": {"name": null}}})", "part_kinds/pad/name: this is missing."},
        Misfit{R"({"part_kinds": {"pad": {"name": 7}}})",
               "part_kinds/pad/name: words in quotation marks are needed here."},
        Misfit{R"({"part_kinds": {"pad": {"colour": "grey"}}})",
               "part_kinds/pad/colour: the catalogue knows no such field here."},
        Misfit{R"({"part_kinds": {"pad": {"zones": {"top": null, "drain": null}}}})",
               "part_kinds/pad/zones: at least one is needed."},
        Misfit{R"({"part_kinds": {"pad": {"zones": {"Top side": {"name": "top"}}}}})",
               "part_kinds/pad/zones/Top side: a code has only small letters a to z, digits and hyphens."},
        Misfit{R"({"part_kinds": {"pad": {"spare": "rare"}}})",
               "part_kinds/pad/spare: \"rare\" is not known here. It can be: easy, fair, scarce, none."},
        Misfit{R"({"part_kinds": {"pad": {"consequences": ["doom"]}}})",
               "part_kinds/pad/consequences: \"doom\" is not known here. It can be: looks, nuisance, loss-of-cooling, "
               "loss-of-charge, compressor-at-risk, ends-unit, safety."},
        Misfit{R"({"part_kinds": {"pad": {"consequences": "nuisance"}}})",
               "part_kinds/pad/consequences: a list of words in square brackets is needed here."},
        Misfit{R"({"part_kinds": {"pad": {"outlives_unit": "yes"}}})",
               "part_kinds/pad/outlives_unit: true or false is needed here, without quotation marks."},
        Misfit{R"({"part_kinds": {"pad": {"median_life": {"years": "20"}}}})",
               "part_kinds/pad/median_life/years: a number without quotation marks is needed here."},
        Misfit{R"({"part_kinds": {"pad": {"median_life": {"years": 0}}}})",
               "part_kinds/pad/median_life/years: a number above zero is needed here."},
        Misfit{R"({"part_kinds": {"pad": {"median_life": {"source": null}}}})",
               "part_kinds/pad/median_life/source: this is missing."},
        Misfit{
            R"({"part_kinds": {"pad": {"tasks": {"spring-pad": {"season": "winter"}}}}})",
            "part_kinds/pad/tasks/spring-pad/season: \"winter\" is not known here. It can be: spring, fall, call-out."},
        Misfit{R"({"part_kinds": {"pad": {"tasks": {"spring-pad": {"season": "call-out"}}}}})",
               "part_kinds/pad/tasks/spring-pad/season: a task belongs to spring or to fall."}));

INSTANTIATE_TEST_SUITE_P(
    References, CatalogueMisfit,
    testing::Values(
        Misfit{R"({"part_kinds": {"fins": {"tasks": {"fall-pad": {"season": "fall", "sentence": "Look."}}}}})",
               "part_kinds/fins/tasks/fall-pad: this task code is used already, in part_kinds/pad. Give one of them "
               "another."},
        Misfit{R"({"part_kinds": {"pad": {"cautions": ["hot"]}}})",
               "part_kinds/pad/cautions: there is no caution \"hot\"."},
        Misfit{R"({"part_kinds": {"pad": {"unit_kinds": ["heat-pump", "boiler"]}}})",
               "part_kinds/pad/unit_kinds: there is no unit kind \"boiler\"."},
        Misfit{R"({"part_kinds": {"pad": {"unit_kinds": []}}})",
               "unit_kinds/heat-pump/parts/pad: this part kind does not name \"heat-pump\" in its unit_kinds."},
        Misfit{R"({"unit_kinds": {"heat-pump": {"parts": {"wheel": {}}}}})",
               "unit_kinds/heat-pump/parts/wheel: there is no part kind with this code."},
        Misfit{R"({"unit_kinds": {"heat-pump": {"parts": {"pad": {"positions": []}}}}})",
               "unit_kinds/heat-pump/parts/pad/positions: at least one is needed."},
        Misfit{R"({"reading_kinds": {"pad-height": {"part_kind": "roof"}}})",
               "reading_kinds/pad-height/part_kind: there is no part kind \"roof\"."},
        Misfit{R"({"reading_kinds": {"pad-height": {"metric_unit": "furlong"}}})",
               "reading_kinds/pad-height/metric_unit: \"furlong\" is not a unit of this quantity."},
        Misfit{R"({"nameplate_items": {"charge": {"customary_unit": "psig"}}})",
               "nameplate_items/charge/customary_unit: \"psig\" is not a unit of this quantity."},
        Misfit{R"({"reading_kinds": {"pad-height": {"lowest": 1500}}})",
               "reading_kinds/pad-height: the lowest value must be below the highest."},
        Misfit{R"({"cautions": {"sharp": {"sentence": null}}})", "cautions/sharp/sentence: this is missing."},
        Misfit{R"({"cautions": {"sharp": "Fins cut."}})", "cautions/sharp: fields in curly braces are needed here."},
        Misfit{R"({"leak_limits": {"law": {"limit_percent": 0}}})", "leak_limits/law/limit_percent: must be above 0."},
        Misfit{R"({"leak_limits": {"law": {"smallest_charge_lb": -1}}})",
               "leak_limits/law/smallest_charge_lb: must lie between 0 and 1000000."},
        Misfit{R"({"leak_limits": {"law": {"since": "1 January 2026"}}})",
               "leak_limits/law/since: \"1 January 2026\" is not a date. Write it like 2026-01-01."},
        Misfit{R"({"coatings": {"primer": {"lowest_celsius": 500}}})",
               "coatings/primer/lowest_celsius: must lie between -40 and 60."},
        Misfit{R"({"coatings": {"primer": {"dry_hours": 0}}})", "coatings/primer/dry_hours: must be above 0."},
        Misfit{R"({"outlook": {"pace_sigma": 2.5}})", "outlook/pace_sigma: must lie between 0 and 2."},
        Misfit{R"({"outlook": {"grade_shares": [0.5, 0.5, 0.5, 0.5]}})",
               "outlook/grade_shares: four shares of at least 0.001 that add up to 1 are needed here."},
        Misfit{R"({"outlook": {"protections": {"varnish": {"effect": 0.5, "years": 1}}}})",
               "outlook/protections/varnish: there is no treatment of this kind."},
        Misfit{R"({"outlook": {"protections": {"brush-and-coat": {"effect": 1}}}})",
               "outlook/protections/brush-and-coat/effect: must lie between 0 and 0.9."},
        Misfit{R"({"outlook": {"corroding_zones": {"pad": {"zones": ["roof"]}}}})",
               "outlook/corroding_zones/pad/zones: this part kind has no zone \"roof\"."},
        Misfit{R"({"outlook": {"part_kinds": {"roof": {"median_life_years": 12}}}})",
               "outlook/part_kinds/roof: there is no part kind with this code."},
        Misfit{R"({"assumptions": {"wait": {"value": true}}})",
               "assumptions/wait/value: a number without quotation marks is needed here."},
        Misfit{R"({"tools": {}})", "tools: the catalogue knows no such field here."}));

TEST(CatalogueLoad, AnUnknownQuantityIsNamed)
{
    EXPECT_THAT(complaint({smallCatalogueWith(R"({"nameplate_items": {"charge": {"quantity": "colour"}}})")}),
                HasSubstr("nameplate_items/charge/quantity: \"colour\" is not known here. It can be: temperature,"));
}

TEST(CatalogueLoad, WhatIsNotJsonIsRefusedWithItsPlace)
{
    EXPECT_EQ(complaint({smallCatalogue(), "{\"cautions\": oops}"}),
              "A text of the catalogue: this is not JSON; it breaks off near character 14. Correct it there.");
    EXPECT_EQ(complaint({""}),
              "A text of the catalogue: this is not JSON; it breaks off near character 1. Correct it there.");
    EXPECT_EQ(complaint({"[]"}),
              "A text of the catalogue: a JSON object is needed here, beginning with a curly brace.");
    EXPECT_THAT(complaint({"{\"cautions\": {\"sharp\": {\"sentence\": \"\xff\"}}}"}), HasSubstr("this is not JSON"));
}

TEST(CatalogueLoad, ANumberTooLargeToHoldIsRefused)
{
    EXPECT_EQ(complaint({R"({"assumptions": {"wait": {"value": 1e999}}})"}),
              "A text of the catalogue: one of its numbers is too large to be meant.");
}

TEST(CatalogueLoad, AFieldWrittenTwiceIsRefusedInsteadOfKeepingOneSilently)
{
    EXPECT_EQ(complaint({R"({"cautions": {"sharp": {}, "sharp": {}}})"}),
              "A text of the catalogue: the field \"sharp\" stands twice in one place. Keep one of the two.");
}

TEST(CatalogueLoad, EndlessNestingIsRefused)
{
    std::string deep;
    for (int level = 0; level < 100'000; ++level)
        deep += "{\"a\":";
    EXPECT_THAT(complaint({deep + "1" + std::string(100'000, '}')}), HasSubstr("nested deeper than 16 levels"));
}

TEST(CatalogueLoad, ATextCutOffAnywhereIsRefused)
{
    const std::string whole = smallCatalogue();
    for (std::size_t length = 0; length < whole.size(); length += 13)
        EXPECT_THAT(complaint({whole.substr(0, length)}), HasSubstr("this is not JSON")) << length;
}

/// Calls `visit` with every place of the text.
template <typename Visit>
void eachPlace(const test::Json& value, const test::Json::json_pointer& place, const Visit& visit)
{
    visit(place);
    if (!value.is_object())
        return;
    for (const auto& [key, inner] : value.items())
        eachPlace(inner, place / key, visit);
}

TEST(CatalogueLoad, AnythingInAnyPlaceEitherFitsOrIsNamedWithAPath)
{
    const auto whole = test::Json::parse(smallCatalogue());
    int refused = 0;
    eachPlace(whole, test::Json::json_pointer(), [&whole, &refused](const test::Json::json_pointer& place) {
        for (const auto* other : {"null", "7", "true", "\"x\"", "[]", "[7]", "{}", "{\"x\": 7}"}) {
            auto changed = whole;
            changed[place] = test::Json::parse(other);
            const std::string sentence = complaint({changed.dump()});
            if (sentence.empty())
                continue; // it happens to fit: another name, an empty list
            ++refused;
            EXPECT_THAT(sentence, testing::MatchesRegex("[A-Za-z_].*: .*[.]")) << place.to_string() << " = " << other;
        }
    });
    EXPECT_GT(refused, 300);
}

TEST(CatalogueLoad, NothingShippedIsRefused)
{
    EXPECT_EQ(complaint({}), "unit_kinds: this is missing.");
}

} // namespace

} // namespace padside
