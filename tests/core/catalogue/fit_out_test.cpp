// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/fit_out.h"
#include "resources/resources.h"

#include <gtest/gtest.h>
#include <set>

namespace padside {

namespace {

class FitOut : public ::testing::Test
{
protected:
    FitOut()
    {
        m_unit.id = m_ids.make<UnitId>();
        m_unit.kind = "heat-pump";
    }

    Catalogue m_catalogue = Catalogue::load(shippedCatalogue()).value();
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
    Unit m_unit;
};

} // namespace

TEST_F(FitOut, AUnitGetsEveryPartAndZoneOfItsKindInTheCataloguesOrder)
{
    const std::vector<Part> parts = partsFor(m_unit, m_catalogue, m_ids);
    const UnitKind& kind = *m_catalogue.unitKind("heat-pump");
    ASSERT_EQ(parts.size(), kind.parts.size());
    std::set<std::string> keys;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        EXPECT_EQ(parts[i].kind, kind.parts[i].partKind);
        EXPECT_EQ(parts[i].position, kind.parts[i].position);
        EXPECT_EQ(parts[i].unitId, m_unit.id);
        EXPECT_FALSE(parts[i].fittedOn) << "its age is not known";
        ASSERT_EQ(parts[i].zones.size(), m_catalogue.partKind(parts[i].kind)->zones.size());
        EXPECT_TRUE(keys.insert(parts[i].id.text()).second);
        for (const Zone& zone : parts[i].zones) {
            EXPECT_EQ(zone.partId, parts[i].id);
            EXPECT_FALSE(zone.name.empty());
            EXPECT_TRUE(keys.insert(zone.id.text()).second);
        }
    }
}

TEST_F(FitOut, PartsThatThisUnitDoesNotHaveAreLeftOut)
{
    const std::vector<Part> all = partsFor(m_unit, m_catalogue, m_ids);
    const std::vector<Part> some = partsFor(m_unit, m_catalogue, m_ids, {0, 4});
    ASSERT_EQ(some.size(), all.size() - 2);
    EXPECT_EQ(some.front().kind, all[1].kind);
}

TEST_F(FitOut, PartsAreAsOldAsTheUnitOnlyWhereThatIsSaid)
{
    const Date day = std::chrono::sys_days(std::chrono::year{2019} / 5 / 4);
    for (const Part& part : partsFor(m_unit, m_catalogue, m_ids, {}, day))
        EXPECT_EQ(part.fittedOn, day);
}

TEST_F(FitOut, AKindThatIsNotInTheCatalogueHasNoParts)
{
    m_unit.kind = "windmill";
    EXPECT_TRUE(partsFor(m_unit, m_catalogue, m_ids).empty());
}

} // namespace padside
