// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/store_fixture.h"

namespace padside::test {

namespace {

class SiteBookTest : public StoreTest
{
protected:
    SiteBookTest() { writeRecord(*m_store, m_record); }
    ~SiteBookTest() override { EXPECT_TRUE(verify(*m_store).clean()); }

    [[nodiscard]] SiteBook& book() { return m_store->sites(); }
    [[nodiscard]] UnitRecord read() { return m_store->records().unitRecord(m_record.unit.id); }

    UnitRecord m_record = aUnit("HB-01")
                              .withPart("contactor", {"points", "coil"}, "2020-02-29", "1")
                              .visit("2024-02-29")
                              .graded("points", 2)
                              .build();
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
};

} // namespace

TEST_F(SiteBookTest, SitesAndUnitsComeByName)
{
    Site first = m_record.site;
    first.id = m_ids.make<SiteId>();
    first.name = "Anchor Yard";
    book().addSite(first);
    Unit unit = m_record.unit;
    unit.id = m_ids.make<UnitId>();
    unit.siteId = first.id;
    unit.tag = "ZZ-99";
    unit.nameplate = {{"charge", {2.9, QuantityKind::mass, "kg", "2.9"}}, {"a", {1, QuantityKind::count, "", "1"}}};
    book().addUnit(unit);
    EXPECT_EQ(book().sites(), (std::vector{first, m_record.site}));
    EXPECT_EQ(book().units(), (std::vector{unit, m_record.unit}));
    EXPECT_EQ(book().unitByTag("ZZ-99"), unit);
    EXPECT_EQ(book().unitByTag("zz-99"), std::nullopt);
}

TEST_F(SiteBookTest, UnitsAndTheirLinesComeAsTheirTagsAreRead)
{
    for (const char* tag : {"HB-10", "hb-3", "HB-2"}) {
        Unit unit = m_record.unit;
        unit.id = m_ids.make<UnitId>();
        unit.tag = tag;
        book().addUnit(unit);
    }
    const std::vector<std::string> expected{"HB-01", "HB-2", "hb-3", "HB-10"};
    std::vector<std::string> tags;
    for (const Unit& unit : book().units())
        tags.push_back(unit.tag);
    EXPECT_EQ(tags, expected);
    std::vector<std::string> ofLines;
    for (const UnitLine& line : m_store->records().unitLines())
        ofLines.push_back(line.tag);
    EXPECT_EQ(ofLines, expected);
}

TEST_F(SiteBookTest, ASiteWithoutANameOrWithImpossibleWeeksIsRefused)
{
    Site site = m_record.site;
    site.id = m_ids.make<SiteId>();
    site.name = "  ";
    EXPECT_NE(std::string(refusalOf([&] { book().addSite(site); }).what()).find("no name"), std::string::npos);
    site.name = "Anchor Yard";
    site.spring = {20, 12};
    EXPECT_EQ(refusalOf([&] { book().addSite(site); }).problem().kind, ProblemKind::refused);
    site.spring = {12, 20};
    site.air.relativeHumidity = 80; // percent by mistake
    EXPECT_EQ(refusalOf([&] { book().addSite(site); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(book().sites().size(), 1U);
}

TEST_F(SiteBookTest, ATakenTagIsRefusedAndNamed)
{
    Unit unit = m_record.unit;
    unit.id = m_ids.make<UnitId>();
    const auto error = refusalOf([&] { book().addUnit(unit); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
    EXPECT_NE(std::string(error.what()).find("HB-01"), std::string::npos);
    unit.tag = "HB-02";
    book().addUnit(unit);
    unit.tag = "HB-01";
    EXPECT_EQ(refusalOf([&] { book().changeUnit(unit); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(book().units().size(), 2U);
}

TEST_F(SiteBookTest, ChangesAreKept)
{
    Site site = m_record.site;
    site.note = "dog is friendly";
    site.retiredOn = day("2028-02-29");
    book().changeSite(site);
    Unit unit = m_record.unit;
    unit.nameplate = {{"charge", {3, QuantityKind::mass, "kg", "3"}}};
    unit.serial = "4711";
    book().changeUnit(unit);
    unit.nameplate.clear();
    book().changeUnit(unit);
    reopen();
    EXPECT_EQ(read().site, site);
    EXPECT_EQ(read().unit, unit);
    unit.id = m_ids.make<UnitId>();
    unit.tag = "HB-03";
    EXPECT_EQ(refusalOf([&] { book().changeUnit(unit); }).problem().kind, ProblemKind::refused);
}

TEST_F(SiteBookTest, AZoneThatWasGradedStaysAnUnusedOneMayGo)
{
    Part part = m_record.parts[0];
    part.zones = {part.zones[0], {m_ids.make<ZoneId>(), part.id, "wire", "Wire"}};
    std::swap(part.zones[0], part.zones[1]);
    book().changePart(part);
    EXPECT_EQ(read().parts[0], part);
    Part without = part;
    without.zones.pop_back(); // "points"
    EXPECT_EQ(refusalOf([&] { book().changePart(without); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(read().parts[0], part);
}

TEST_F(SiteBookTest, AReplacementClosesTheOldPartAndStartsANewOne)
{
    Part fresh = m_record.parts[0];
    fresh.id = m_ids.make<PartId>();
    fresh.fittedOn = day("2024-02-29");
    fresh.replaces = m_record.parts[0].id;
    fresh.zones = {{m_ids.make<ZoneId>(), fresh.id, "points", "Points"}};
    book().replacePart(m_record.parts[0].id, day("2024-02-29"), "burnt", fresh);
    ASSERT_EQ(read().parts.size(), 2U);
    EXPECT_EQ(read().parts[0].removedOn, day("2024-02-29"));
    EXPECT_EQ(read().parts[0].removedBecause, "burnt");
    EXPECT_EQ(read().parts[1], fresh);

    Part another = fresh;
    another.id = m_ids.make<PartId>();
    another.zones.clear();
    EXPECT_EQ(refusalOf([&] { book().replacePart(m_record.parts[0].id, day("2025-01-01"), "again", another); })
                  .problem()
                  .kind,
              ProblemKind::refused)
        << "it is gone already";
    EXPECT_EQ(read().parts.size(), 2U);
}

TEST_F(SiteBookTest, AReplacementCanBeTakenBackUntilSomethingIsEnteredForTheNewPart)
{
    const UnitRecord before = read();
    Part fresh = m_record.parts[0];
    fresh.id = m_ids.make<PartId>();
    fresh.fittedOn = day("2024-02-29");
    fresh.replaces = m_record.parts[0].id;
    fresh.zones = {{m_ids.make<ZoneId>(), fresh.id, "points", "Points"}};
    book().replacePart(m_record.parts[0].id, day("2024-02-29"), "burnt", fresh);
    ASSERT_NE(read(), before);
    book().undoReplacement(fresh);
    EXPECT_EQ(read(), before);
    EXPECT_EQ(refusalOf([&] { book().undoReplacement(fresh); }).problem().kind, ProblemKind::refused)
        << "it was taken back already";
    EXPECT_EQ(refusalOf([&] { book().undoReplacement(m_record.parts[0]); }).problem().kind, ProblemKind::badInput)
        << "it replaced nothing";

    book().replacePart(m_record.parts[0].id, day("2024-02-29"), "burnt", fresh);
    Visit visit = m_record.visits.front();
    visit.id = m_ids.make<VisitId>();
    visit.closedAt.reset();
    m_store->visits().open(visit);
    FollowUp promise;
    promise.id = m_ids.make<FollowUpId>();
    promise.unitId = fresh.unitId;
    promise.zoneId = fresh.zones.front().id;
    promise.madeAt = visit.id;
    promise.earliest = promise.latest = day("2024-06-01");
    promise.why = "new contacts";
    m_store->visits().put(promise);
    const UnitRecord used = read();
    EXPECT_EQ(refusalOf([&] { book().undoReplacement(fresh); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(read(), used) << "all of it stays";
}

TEST_F(SiteBookTest, AReplacementThatFailsLeavesTheOldPartFitted)
{
    Part fresh = m_record.parts[0];
    fresh.replaces = m_record.parts[0].id; // same key: taken
    EXPECT_EQ(
        refusalOf([&] { book().replacePart(m_record.parts[0].id, day("2024-02-29"), "burnt", fresh); }).problem().kind,
        ProblemKind::refused);
    EXPECT_EQ(
        refusalOf([&] { book().replacePart(m_record.parts[0].id, day("2019-01-01"), "burnt", fresh); }).problem().kind,
        ProblemKind::refused)
        << "before it was fitted";
    EXPECT_EQ(read(), m_record);
}

} // namespace padside::test
