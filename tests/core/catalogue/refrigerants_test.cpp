// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/catalogue/small_catalogue.h"

#include <gmock/gmock.h>
#include <map>

namespace padside::test {

namespace {

using testing::HasSubstr;

Catalogue shipped()
{
    return Catalogue::load(shippedCatalogue()).value();
}

/// The small catalogue's R-134a with a patch over it.
std::string complaintAbout(const std::string& patch)
{
    return complaint({smallCatalogueWith(R"({"refrigerants": {"r-134a": )" + patch + "}}")});
}

} // namespace

TEST(ShippedRefrigerants, HaveTheirSafetyClass)
{
    // ANSI/ASHRAE 34 as listed in a public table; R-421A, R-422D, R-438A and R-454B from memory.
    const std::map<std::string, SafetyClass> expected{
        {"R-22", SafetyClass::a1},   {"R-32", SafetyClass::a2l},    {"R-134a", SafetyClass::a1},
        {"R-290", SafetyClass::a3},  {"R-404A", SafetyClass::a1},   {"R-407C", SafetyClass::a1},
        {"R-410A", SafetyClass::a1}, {"R-421A", SafetyClass::a1},   {"R-422D", SafetyClass::a1},
        {"R-438A", SafetyClass::a1}, {"R-452B", SafetyClass::a2l},  {"R-454B", SafetyClass::a2l},
        {"R-600a", SafetyClass::a3}, {"R-1234yf", SafetyClass::a2l}};
    std::map<std::string, SafetyClass> actual;
    const Catalogue catalogue = shipped();
    for (const Refrigerant& refrigerant : catalogue.refrigerants())
        actual[refrigerant.code] = refrigerant.safetyClass;
    EXPECT_EQ(actual, expected);
}

TEST(ShippedRefrigerants, HaveTheirWarmingPotential)
{
    // IPCC Fourth Assessment Report (2007), table 2.14; blends as 40 CFR 98 table A-1 components weighted by mass.
    const Catalogue catalogue = shipped();
    for (const auto& [code, expected] : std::map<std::string, double>{{"R-22", 1810},
                                                                      {"R-32", 675},
                                                                      {"R-134a", 1430},
                                                                      {"R-410A", 2088},
                                                                      {"R-407C", 1774},
                                                                      {"R-404A", 3922},
                                                                      {"R-454B", 466},
                                                                      {"R-290", 3}}) {
        const WarmingPotential& first = catalogue.refrigerant(code)->warmingPotentials.front();
        EXPECT_EQ(first.report, "AR4") << code;
        EXPECT_EQ(first.value, expected) << code;
    }
}

TEST(ShippedRefrigerants, HaveASourceForEachFigure)
{
    const Catalogue catalogue = shipped();
    for (const Refrigerant& refrigerant : catalogue.refrigerants()) {
        EXPECT_FALSE(refrigerant.composition.empty());
        EXPECT_FALSE(refrigerant.safetySource.empty());
        EXPECT_FALSE(refrigerant.criticalSource.empty());
        EXPECT_FALSE(refrigerant.curveSource.empty());
        for (const WarmingPotential& warming : refrigerant.warmingPotentials)
            EXPECT_FALSE(warming.source.empty());
    }
}

TEST(Refrigerant, IsFoundHoweverItsNameIsWritten)
{
    const Catalogue catalogue = shipped();
    for (const char* typed : {"R-410A", "r410a", "R 410A", "410A", "r-410a", " R410A "}) {
        const Refrigerant* found = catalogue.refrigerant(typed);
        ASSERT_NE(found, nullptr) << typed;
        EXPECT_EQ(found->code, "R-410A");
    }
    for (const char* typed : {"", " ", "R", "R-", "R-410", "R-410A/R-32", "R-410Ä", "R-999", "nan"})
        EXPECT_EQ(catalogue.refrigerant(typed), nullptr) << typed;
    EXPECT_EQ(catalogue.refrigerant("R-1234YF")->code, "R-1234yf");
}

TEST(Refrigerant, OfAPersonsOwnIsOneEntry)
{
    const std::string own = R"({"refrigerants": {"r-9a": {"designation": "R-9A", "composition": "50 % this + 50 % that",
        "safety": {"class": "A2L", "source": "its data sheet"}, "gwp": {"ar5": {"value": 12, "source": "its data sheet"}},
        "critical": {"temperature_K": 360, "source": "its data sheet"},
        "saturation": {"lowest_K": 230, "highest_K": 340, "source": "its data sheet",
          "bubble": {"reducing_K": 360, "reducing_Pa": 4000000, "coefficients": [-7.4, 1.2], "exponents": [1, 1.5]},
          "dew": {"reducing_K": 360, "reducing_Pa": 3900000, "coefficients": [-7.5, 1.2], "exponents": [1, 1.5]}}}}})";
    const auto catalogue = Catalogue::load(shippedCatalogue(), own);
    ASSERT_TRUE(catalogue) << say(catalogue.error().what);
    const Refrigerant* added = catalogue->refrigerant("R9A");
    ASSERT_NE(added, nullptr);
    EXPECT_TRUE(added->glides);
    EXPECT_TRUE(isFlammable(added->safetyClass));
    EXPECT_EQ(added->warmingPotentials.front().report, "AR5");
    EXPECT_NE(catalogue->refrigerant("R-22"), nullptr);
}

TEST(RefrigerantMisfit, IsNamedWithItsPath)
{
    EXPECT_EQ(complaintAbout(R"({"designation": "R-22"})"),
              "refrigerants/r-134a/designation: \"R-22\" must be the entry's code but for capitals.");
    EXPECT_THAT(complaintAbout(R"({"safety": {"class": "A4"}})"),
                HasSubstr("refrigerants/r-134a/safety/class: \"A4\" is not known here. It can be: A1, A2L,"));
    EXPECT_EQ(complaintAbout(R"({"gwp": {"ar4": null}})"), "refrigerants/r-134a/gwp: at least one is needed.");
    EXPECT_EQ(complaintAbout(R"({"gwp": {"ar4": {"value": -1}}})"),
              "refrigerants/r-134a/gwp/ar4/value: this can't be below 0.");
    EXPECT_EQ(complaintAbout(R"({"gwp": {"ar4": {"source": null}}})"),
              "refrigerants/r-134a/gwp/ar4/source: this is missing.");
    EXPECT_EQ(complaintAbout(R"({"critical": {"temperature_K": 0}})"),
              "refrigerants/r-134a/critical/temperature_K: a number above zero is needed here.");
    EXPECT_EQ(complaintAbout(R"({"saturation": {"bubble": {"exponents": [1, 2]}}})"),
              "refrigerants/r-134a/saturation/bubble: as many exponents as coefficients are needed, at least one.");
    EXPECT_EQ(complaintAbout(R"({"saturation": {"bubble": {"coefficients": [], "exponents": []}}})"),
              "refrigerants/r-134a/saturation/bubble: as many exponents as coefficients are needed, at least one.");
    EXPECT_EQ(
        complaintAbout(R"({"saturation": {"bubble": {"coefficients": ["-7"]}}})"),
        "refrigerants/r-134a/saturation/bubble/coefficients: a list of numbers in square brackets is needed here.");
    EXPECT_EQ(complaintAbout(R"({"saturation": {"colour": "grey"}})"),
              "refrigerants/r-134a/saturation/colour: the catalogue knows no such field here.");
}

TEST(RefrigerantMisfit, IsACurveThatWouldGiveWrongTemperatures)
{
    // Rises, then falls.
    EXPECT_THAT(complaintAbout(R"({"saturation": {"bubble": {"coefficients": [-7.5, 40], "exponents": [1, 4]}}})"),
                HasSubstr("refrigerants/r-134a/saturation: the curves must rise all over their range"));
    // The vapour's curve above the liquid's.
    EXPECT_THAT(complaintAbout(R"({"saturation": {"dew": {"reducing_K": 374.21, "reducing_Pa": 5000000,
                                   "coefficients": [-7.5], "exponents": [1]}}})"),
                HasSubstr("the dew curve never above the bubble curve"));
    // Infinite pressures.
    EXPECT_THAT(complaintAbout(R"({"saturation": {"bubble": {"coefficients": [1e300]}}})"), HasSubstr("must rise"));
    EXPECT_THAT(complaintAbout(R"({"saturation": {"lowest_K": 373}})"), HasSubstr("the range must go up"));
    EXPECT_THAT(complaintAbout(R"({"saturation": {"bubble": {"reducing_K": 300}}})"),
                HasSubstr("the range must go up"));
    EXPECT_THAT(complaintAbout(R"({"saturation": {"highest_K": 1e300}, "critical": {"temperature_K": 1e300}})"),
                HasSubstr("the range must go up"));
}

} // namespace padside::test
