// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "tests/support/record_builder.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/visit_log.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

Instant setupNoon()
{
    return Instant{day("2026-05-04") + std::chrono::hours(10), std::chrono::minutes(120)};
}

} // namespace

class SetupLogTest : public ::testing::Test
{
protected:
    SetupLogTest()
        : m_store(Store::create(m_folder.filePath(QStringLiteral("a.padside"))))
        , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{setupNoon, QLocale::c(), UnitSystem::metric, QStringLiteral("A. Tester")})
        , m_log(m_book, m_stack)
        , m_record(aUnit("HB-01").withPart("fan-motor", {"shaft", "leads"}).build())
    {
    }

    [[nodiscard]] UnitId unitId() const { return m_record.unit.id; }
    void addBoth() { ASSERT_TRUE(m_log.add({m_record.site}, {{m_record.unit, m_record.parts}})); }
    [[nodiscard]] Unit unit() const { return m_store->sites().units().at(0); }

    QTemporaryDir m_folder;
    std::unique_ptr<Store> m_store;
    Catalogue m_catalogue;
    IdMaker m_ids;
    RecordBook m_book;
    QUndoStack m_stack;
    SetupLog m_log;
    UnitRecord m_record;
};

TEST_F(SetupLogTest, AddingIsTakenBackAndMadeAgainWithTheSameParts)
{
    addBoth();
    EXPECT_EQ(m_book.record(unitId()).parts, m_record.parts);
    m_stack.undo();
    EXPECT_TRUE(m_store->sites().units().empty());
    EXPECT_TRUE(m_store->sites().sites().empty());
    m_stack.redo();
    EXPECT_EQ(m_book.record(unitId()).unit, m_record.unit);
    EXPECT_EQ(m_book.record(unitId()).parts, m_record.parts);
}

TEST_F(SetupLogTest, SeveralOfWhichOneHasATakenTagAreRefusedTogether)
{
    addBoth();
    QSignalSpy failed(&m_book, &RecordBook::failed);
    FittedUnit good{m_record.unit, {}};
    good.unit.id = m_ids.make<UnitId>();
    good.unit.tag = "HB-02";
    FittedUnit taken = good;
    taken.unit.id = m_ids.make<UnitId>();
    taken.unit.tag = "HB-01";
    EXPECT_FALSE(m_log.add({}, {good, taken}));
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(m_store->sites().units().size(), 1U) << "none of them was added";
    EXPECT_EQ(m_stack.count(), 1) << "what was refused can't be undone";
}

TEST_F(SetupLogTest, ChangesOfSiteAndUnitAreTakenBack)
{
    addBoth();
    Site site = m_store->sites().sites().at(0);
    const Site siteBefore = site;
    site.access = "Ladder in the shed";
    ASSERT_TRUE(m_log.change(siteBefore, site));
    Unit changed = unit();
    changed.serial = "S-77";
    ASSERT_TRUE(m_log.change(unit(), changed));
    EXPECT_EQ(unit().serial, "S-77");
    m_stack.undo();
    m_stack.undo();
    EXPECT_EQ(unit(), m_record.unit);
    EXPECT_EQ(m_store->sites().sites().at(0), siteBefore);
}

TEST_F(SetupLogTest, ChangingNothingIsNoStepToUndo)
{
    addBoth();
    EXPECT_TRUE(m_log.change(unit(), unit()));
    EXPECT_EQ(m_stack.count(), 1);
}

TEST_F(SetupLogTest, ARetiredUnitKeepsDayAndReasonAndComesBack)
{
    addBoth();
    ASSERT_TRUE(m_log.retire(unitId(), day("2026-05-01"), QStringLiteral("replaced")));
    EXPECT_EQ(unit().retiredOn, day("2026-05-01"));
    EXPECT_NE(unit().note.find("Retired 2026-05-01: replaced"), std::string::npos);
    ASSERT_TRUE(m_log.bringBack(unitId()));
    EXPECT_FALSE(unit().retiredOn.has_value());
    m_stack.undo();
    EXPECT_EQ(unit().retiredOn, day("2026-05-01"));
}

TEST_F(SetupLogTest, AUnitWithAnOpenVisitIsNotRetired)
{
    addBoth();
    ASSERT_FALSE(startVisit(m_book, unitId(), VisitReason::spring).isNull());
    QSignalSpy failed(&m_book, &RecordBook::failed);
    EXPECT_FALSE(m_log.retire(unitId(), day("2026-05-01"), QStringLiteral("replaced")));
    ASSERT_EQ(failed.count(), 1);
    EXPECT_TRUE(failed.at(0).at(0).toString().contains(QStringLiteral("A visit is open at HB-01")));
    EXPECT_FALSE(unit().retiredOn.has_value());
}

TEST_F(SetupLogTest, OnlyAUnitThatWasNeverVisitedIsRemoved)
{
    addBoth();
    ASSERT_TRUE(m_log.remove(unitId()));
    EXPECT_TRUE(m_store->sites().units().empty());
    m_stack.undo();
    EXPECT_EQ(m_book.record(unitId()).parts, m_record.parts);
    ASSERT_FALSE(startVisit(m_book, unitId(), VisitReason::spring).isNull());
    EXPECT_FALSE(m_log.remove(unitId()));
    EXPECT_EQ(m_store->sites().units().size(), 1U);
}

TEST_F(SetupLogTest, AddingCanNoLongerBeTakenBackOnceTheUnitWasVisited)
{
    addBoth();
    ASSERT_FALSE(startVisit(m_book, unitId(), VisitReason::spring).isNull());
    QSignalSpy failed(&m_book, &RecordBook::failed);
    m_stack.undo();
    EXPECT_EQ(failed.count(), 1) << "the person is told why";
    EXPECT_EQ(m_store->sites().units().size(), 1U);
    EXPECT_EQ(m_store->sites().sites().size(), 1U);
}

} // namespace padside::test
