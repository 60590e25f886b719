// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/unit_plan.h"
#include "resources/resources.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace padside {

namespace {

using testing::HasSubstr;

const auto goOn = [](double) { return true; };

class UnitPlanning : public ::testing::Test
{
protected:
    UnitPlanning()
    {
        Site site;
        site.id = m_ids.make<SiteId>();
        site.name = "Harbour House";
        m_basis.sites = {site};
        m_basis.tags = {"HH-01"};
        m_basis.today = *parseDate("2026-11-25");
    }

    [[nodiscard]] UnitPlan planned(const std::string& text) const
    {
        const auto list = salvageCsv(text, "units.csv");
        EXPECT_TRUE(list);
        return planUnits(*list, recognisedColumns(list->table.columns), m_basis, goOn);
    }

    /// The only complaint about the only row of a list with this row.
    [[nodiscard]] std::string complaint(const std::string& row) const
    {
        const UnitPlan plan = planned("site,tag,kind,metering,installed\n" + row + "\n");
        if (plan.rows.size() != 1 || plan.rows[0].problems.size() != 1)
            return "rows: " + std::to_string(plan.rows.size()) + ", good: " + std::to_string(plan.goodCount());
        return say(plan.rows[0].problems[0]);
    }

    Catalogue m_catalogue = Catalogue::load(shippedCatalogue()).value();
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
    UnitPlanBasis m_basis{m_catalogue, {}, {}, {}, {}};
};

} // namespace

TEST(UnitColumnNames, AreRecognisedHoweverTheyAreWritten)
{
    const std::vector<std::string> headings{"Site",   "TAG",      "Unit type",      "Manufacturer", "Serial No.",
                                            "colour", "Location", "Date installed", "Place"};
    const UnitColumns columns = recognisedColumns(headings);
    EXPECT_EQ(columns,
              (UnitColumns{{UnitField::site, 0},
                           {UnitField::tag, 1},
                           {UnitField::kind, 2},
                           {UnitField::maker, 3},
                           {UnitField::serial, 4},
                           {UnitField::place, 6},
                           {UnitField::installed, 7}}));
}

TEST_F(UnitPlanning, AGoodRowSaysEverythingAboutItsUnit)
{
    const UnitPlan plan
        = planned("site,tag,kind,maker,model,serial,place,refrigerant,metering,installed,note\n"
                  " harbour house ,RT-1,Heat pump,Invented,M 12,77,roof,R-410A,fixed orifice,2008-06,x\n");
    ASSERT_EQ(plan.rows.size(), 1U);
    const PlannedUnit& row = plan.rows[0];
    EXPECT_TRUE(row.good());
    EXPECT_FALSE(row.newSite) << "capitals and blanks do not make another site";
    EXPECT_EQ(row.unit.tag, "RT-1");
    EXPECT_EQ(row.unit.kind, "heat-pump");
    EXPECT_EQ(row.unit.maker, "Invented");
    EXPECT_EQ(row.unit.model, "M 12");
    EXPECT_EQ(row.unit.serial, "77");
    EXPECT_EQ(row.unit.place, "roof");
    EXPECT_EQ(row.unit.refrigerant, "R-410A");
    EXPECT_EQ(row.unit.metering, Metering::fixedOrifice);
    EXPECT_EQ(row.unit.installedOn, parseDate("2008-06-01"));
    EXPECT_EQ(row.unit.note, "x");
}

TEST_F(UnitPlanning, AKindIsKnownByItsOtherNamesToo)
{
    const UnitPlan plan = planned("site,tag,kind\nQuay,A-1,Air conditioner\nQuay,A-2,a/c\nQuay,A-3,split heat pump\n");
    ASSERT_EQ(plan.goodCount(), 3U);
    EXPECT_EQ(plan.rows[0].unit.kind, "split-air-conditioner");
    EXPECT_EQ(plan.rows[1].unit.kind, "split-air-conditioner");
    EXPECT_EQ(plan.rows[2].unit.kind, "heat-pump");
}

TEST_F(UnitPlanning, KindsAreReadAndSaidInTheReadersLanguage)
{
    m_basis.readersWords = {{"heat pump", "bomba de calor"}, {"fixed orifice", "orificio fijo"}};
    const UnitPlan plan = planned("site,tag,kind,metering\nQuay,A-1,Bomba de calor,orificio fijo\n");
    ASSERT_EQ(plan.goodCount(), 1U);
    EXPECT_EQ(plan.rows[0].unit.kind, "heat-pump");
    EXPECT_EQ(plan.rows[0].unit.metering, Metering::fixedOrifice);
    EXPECT_EQ(complaint("Harbour House,RT-1,foo,,"),
              "Row 2: the kind “foo” is not known. Known are: split air conditioner, bomba de calor.");
}

TEST_F(UnitPlanning, BadRowsAreNamedWithWhatIsKnown)
{
    EXPECT_EQ(complaint("Harbour House,RT-1,foo,,"),
              "Row 2: the kind “foo” is not known. Known are: split air conditioner, heat pump.");
    EXPECT_EQ(complaint("Harbour House,,heat-pump,,"), "Row 2: there is no tag.");
    EXPECT_EQ(complaint(",RT-1,heat-pump,,"), "Row 2: no site is named.");
    EXPECT_EQ(complaint("Harbour House,HH-01,heat-pump,,"), "Row 2: the tag HH-01 is taken by a unit in the record.");
    EXPECT_THAT(complaint("Harbour House,RT-1,heat-pump,,14/6/08"), HasSubstr("Row 2, installed: “14/6/08”"));
    EXPECT_THAT(complaint("Harbour House,RT-1,heat-pump,,2031-01-01"), HasSubstr("Row 2, installed"));
    EXPECT_THAT(complaint("Harbour House,RT-1,heat-pump,magic,"), HasSubstr("“magic” is not known"));
}

TEST_F(UnitPlanning, ATagThatComesTwiceCostsTheSecondRow)
{
    const UnitPlan plan = planned("site,tag,kind\nA,RT-1,heat-pump\nA,RT-2,heat-pump\nA,RT-1,heat-pump\n");
    EXPECT_EQ(plan.goodCount(), 2U);
    EXPECT_EQ(say(plan.rows[2].problems.at(0)), "Row 4: the tag RT-1 is in row 2 already.");
}

TEST_F(UnitPlanning, RowsThatCouldNotBeReadStandInTheirPlace)
{
    const UnitPlan plan = planned("site,tag,kind\nA,RT-1,heat-pump\nA,RT-2\nA,RT-3,heat-pump\n");
    ASSERT_EQ(plan.rows.size(), 3U);
    EXPECT_EQ(plan.rows[1].line, 3U);
    EXPECT_FALSE(plan.rows[1].good());
    EXPECT_EQ(plan.badCount(), 1U);
}

TEST_F(UnitPlanning, RowsWithoutASiteGoToTheUsualOne)
{
    m_basis.usualSite = "Harbour House";
    const UnitPlan plan = planned("tag,kind\nRT-1,heat-pump\n");
    EXPECT_TRUE(plan.rows[0].good());
    EXPECT_EQ(plan.rows[0].site, "Harbour House");
}

TEST_F(UnitPlanning, StopsWhenItIsAskedTo)
{
    const auto list = salvageCsv("tag\nA\nB\n", "units.csv");
    EXPECT_TRUE(
        planUnits(*list, recognisedColumns(list->table.columns), m_basis, [](double) { return false; }).rows.empty());
}

TEST_F(UnitPlanning, GoodRowsBecomeUnitsWithPartsAndEachNewSiteIsMadeOnce)
{
    const UnitPlan plan = planned("site,address,tag,kind\nQuay 4,4 Quay Rd,RT-1,heat-pump\nquay 4,,RT-2,heat-pump\n"
                                  "Harbour House,,RT-3,split-air-conditioner\nQuay 4,,RT-4,foo\n");
    const NewRecords made = newRecords(plan, m_basis, m_ids);
    ASSERT_EQ(made.sites.size(), 1U);
    EXPECT_EQ(made.sites[0].name, "Quay 4");
    EXPECT_EQ(made.sites[0].address, "4 Quay Rd");
    ASSERT_EQ(made.units.size(), 3U);
    EXPECT_EQ(made.units[1].unit.siteId, made.sites[0].id);
    EXPECT_EQ(made.units[2].unit.siteId, m_basis.sites[0].id);
    EXPECT_EQ(made.units[0].parts.size(), m_catalogue.unitKind("heat-pump")->parts.size());
    EXPECT_NE(made.units[0].unit.id, made.units[1].unit.id);
}

} // namespace padside
