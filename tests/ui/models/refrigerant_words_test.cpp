// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/catalogue.h"
#include "resources/resources.h"
#include "ui/models/refrigerant_words.h"
#include "ui/models/speaker.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

std::string wordsOf(const std::string& written)
{
    const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    const LocalSpeaker speaker(QLocale::c(), UnitSystem::metric);
    return refrigerantWords(written, catalogue, speaker).toStdString();
}

} // namespace

TEST(RefrigerantWords, SaySafetyClassAndWarmingPotential)
{
    EXPECT_EQ(wordsOf("R-410A"),
              "R-410A: safety class A1, does not carry a flame; global warming potential 2088 (AR4).");
    EXPECT_EQ(wordsOf("r410a"), wordsOf("R-410A"));
}

TEST(RefrigerantWords, CarryTheCautionWhereItBurns)
{
    for (const char* written : {"R-32", "R-454B", "R-290"})
        EXPECT_NE(wordsOf(written).find("\nFlammable refrigerants (A2L, A3) need tools made for them"),
                  std::string::npos)
            << written;
    EXPECT_EQ(wordsOf("R-22").find("Flammable"), std::string::npos);
}

TEST(RefrigerantWords, SayWhereTheCatalogueDoesNotKnowIt)
{
    EXPECT_EQ(wordsOf(" R-999 "), "R-999 is not in the catalogue: superheat and subcooling can't be told with it.");
    EXPECT_EQ(wordsOf(""), "");
    EXPECT_EQ(wordsOf("  "), "");
}

} // namespace padside::test
