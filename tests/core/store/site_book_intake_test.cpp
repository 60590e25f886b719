// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <tuple>

namespace padside::test {

namespace {

class SiteBookIntakeTest : public StoreTest
{
protected:
    SiteBookIntakeTest() { writeRecord(*m_store, m_record); }
    ~SiteBookIntakeTest() override { EXPECT_TRUE(verify(*m_store).clean()); }

    [[nodiscard]] SiteBook& book() { return m_store->sites(); }

    [[nodiscard]] FittedUnit fitted(const std::string& tag, SiteId site)
    {
        FittedUnit made;
        made.unit.id = m_ids.make<UnitId>();
        made.unit.siteId = site;
        made.unit.tag = tag;
        made.unit.kind = "heat-pump";
        made.unit.nameplate = {{"charge", {2.9, QuantityKind::mass, "kg", "2.9"}}};
        Part part;
        part.id = m_ids.make<PartId>();
        part.unitId = made.unit.id;
        part.kind = "contactor";
        part.zones = {{m_ids.make<ZoneId>(), part.id, "points", "Points"}};
        made.parts = {part};
        return made;
    }

    [[nodiscard]] Site aSite(const std::string& name)
    {
        Site site;
        site.id = m_ids.make<SiteId>();
        site.name = name;
        return site;
    }

    UnitRecord m_record
        = aUnit("HB-01").withPart("contactor", {"points"}).visit("2024-02-29").graded("points", 2).build();
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
};

const auto goOn = [](double) { return true; };

} // namespace

TEST_F(SiteBookIntakeTest, ManyUnitsAndTheirSitesAreAddedAtOnce)
{
    const Site site = aSite("Anchor Yard");
    std::vector<FittedUnit> units;
    for (int i = 0; i < 50; ++i)
        units.push_back(fitted("RT-" + std::to_string(i), site.id));
    std::vector<double> told;
    EXPECT_TRUE(book().addAll({site}, units, [&](double share) {
        told.push_back(share);
        return true;
    }));
    EXPECT_EQ(told.front(), 0.0);
    EXPECT_EQ(told.back(), 1.0);
    EXPECT_TRUE(std::ranges::is_sorted(told));
    reopen();
    EXPECT_EQ(book().site(site.id), site);
    EXPECT_EQ(book().tags().size(), 51U);
    const UnitRecord read = m_store->records().unitRecord(units[7].unit.id);
    EXPECT_EQ(read.unit, units[7].unit);
    EXPECT_EQ(read.parts, units[7].parts);
}

TEST_F(SiteBookIntakeTest, StoppingOrATakenTagAddsNothingAtAll)
{
    const Site site = aSite("Anchor Yard");
    const std::vector<FittedUnit> units{fitted("RT-1", site.id), fitted("RT-2", site.id), fitted("HB-01", site.id)};
    EXPECT_EQ(refusalOf([&] { std::ignore = book().addAll({site}, units, goOn); }).problem().kind,
              ProblemKind::refused);
    EXPECT_EQ(book().tags(), std::set<std::string>{"HB-01"});
    EXPECT_FALSE(book().addAll({site}, {units[0], units[1]}, [](double share) { return share < 1.0; }));
    EXPECT_EQ(book().tags(), std::set<std::string>{"HB-01"});
    EXPECT_EQ(book().site(site.id), std::nullopt);
}

TEST_F(SiteBookIntakeTest, AUnitAddedByMistakeGoesWithItsPartsAndMayComeBackTheSame)
{
    const FittedUnit unit = fitted("RT-1", m_record.site.id);
    EXPECT_TRUE(book().addAll({}, {unit}, goOn));
    book().removeUnit(unit.unit.id);
    EXPECT_EQ(book().tags(), std::set<std::string>{"HB-01"});
    EXPECT_TRUE(book().addAll({}, {unit}, goOn));
    EXPECT_EQ(m_store->records().unitRecord(unit.unit.id).parts, unit.parts);
}

TEST_F(SiteBookIntakeTest, AUnitThatWasVisitedStays)
{
    const auto error = refusalOf([&] { book().removeUnit(m_record.unit.id); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
    EXPECT_NE(std::string(error.what()).find("retire it"), std::string::npos) << error.what();
    EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id), m_record);
}

TEST_F(SiteBookIntakeTest, ASiteGoesOnlyWithoutUnits)
{
    EXPECT_EQ(refusalOf([&] { book().removeSite(m_record.site.id); }).problem().kind, ProblemKind::refused);
    const Site site = aSite("Anchor Yard");
    book().addSite(site);
    book().removeSite(site.id);
    EXPECT_EQ(book().sites(), std::vector{m_record.site});
    EXPECT_EQ(refusalOf([&] { book().removeSite(site.id); }).problem().kind, ProblemKind::refused) << "it is gone";
}

} // namespace padside::test
