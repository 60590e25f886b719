// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

constexpr int longEnough = 20'000;

class FleetReviewerTest : public ::testing::Test
{
protected:
    FleetReviewerTest()
        : m_catalogue(smallCatalogue())
        , m_store(Store::create(m_folder.filePath(QStringLiteral("a.padside"))))
        , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{[this] {
                                              return Instant{m_today + std::chrono::hours(10), {}};
                                          },
                                          QLocale::c(), UnitSystem::metric, QStringLiteral("A. Tester")})
    {
        m_site.id = m_ids.make<SiteId>();
        m_site.name = "Quay House";
        m_store->sites().addSite(m_site);
        for (const char* tag : {"HB-01", "HB-02", "HB-03"})
            addUnit(tag);
    }

    void addUnit(const std::string& tag)
    {
        Unit unit;
        unit.id = m_ids.make<UnitId>();
        unit.siteId = m_site.id;
        unit.tag = tag;
        unit.kind = "split-air-conditioner";
        m_store->sites().addUnit(unit);
        m_units.push_back(unit.id);
    }

    static void waitFor(FleetReviewer& reviewer)
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !reviewer.isRunning(); }, longEnough));
    }

    QTemporaryDir m_folder;
    Date m_today = day("2026-05-04");
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    RecordBook m_book;
    Site m_site;
    std::vector<UnitId> m_units;
};

} // namespace

TEST_F(FleetReviewerTest, EveryUnitIsReviewedAsTheBookWouldAndTheEndIsSaid)
{
    FleetReviewer reviewer(m_book);
    EXPECT_TRUE(reviewer.fleet()->units.empty());
    const QSignalSpy progress(&reviewer, &FleetReviewer::progressed);
    const QSignalSpy finished(&reviewer, &FleetReviewer::finished);
    reviewer.start();
    EXPECT_TRUE(reviewer.isRunning());
    waitFor(reviewer);
    ASSERT_EQ(reviewer.fleet()->units.size(), 3);
    EXPECT_TRUE(reviewer.fleet()->isWhole());
    EXPECT_EQ(reviewer.fleet()->today, m_today);
    for (const auto& unit : reviewer.fleet()->units)
        EXPECT_EQ(unit->review, m_book.review(m_book.record(unit->unit.id)));
    EXPECT_EQ(finished.size(), 1);
    ASSERT_FALSE(progress.empty());
    EXPECT_EQ(progress.back(), (QVariantList{3, 3}));
}

TEST_F(FleetReviewerTest, ASnapshotDoesNotChangeWhenTheFleetDoes)
{
    FleetReviewer reviewer(m_book);
    const auto before = reviewer.fleet();
    reviewer.start();
    waitFor(reviewer);
    EXPECT_TRUE(before->units.empty());
    EXPECT_NE(before, reviewer.fleet());
}

TEST_F(FleetReviewerTest, AChangedUnitIsReviewedAgainAndTheOthersAreNot)
{
    FleetReviewer reviewer(m_book);
    reviewer.setSettlingTime(0);
    reviewer.start();
    waitFor(reviewer);
    const auto before = reviewer.fleet();
    QSignalSpy changed(&reviewer, &FleetReviewer::changed);
    EXPECT_TRUE(m_book.change(m_units[1], [&] {
        Unit unit = m_book.record(m_units[1]).unit;
        unit.place = "north wall";
        m_store->sites().changeUnit(unit);
    }));
    ASSERT_TRUE(changed.wait(longEnough));
    const auto after = reviewer.fleet();
    EXPECT_EQ(after->units[0], before->units[0]) << "the very same review";
    EXPECT_EQ(after->units[1]->unit.place, "north wall");
    EXPECT_EQ(after->units[2], before->units[2]);
}

TEST_F(FleetReviewerTest, NothingIsReadBeforeItIsAskedFor)
{
    FleetReviewer reviewer(m_book);
    reviewer.setSettlingTime(0);
    const QSignalSpy changed(&reviewer, &FleetReviewer::changed);
    Q_EMIT m_book.unitChanged(m_units[0]);
    Q_EMIT m_book.sitesChanged();
    QTest::qWait(50);
    EXPECT_EQ(changed.size(), 0);
}

TEST_F(FleetReviewerTest, CancelledItKeepsWhatItHasAndSaysThatSomeIsMissing)
{
    FleetReviewer reviewer(m_book);
    const QSignalSpy finished(&reviewer, &FleetReviewer::finished);
    reviewer.start();
    reviewer.cancel();
    EXPECT_FALSE(reviewer.isRunning());
    EXPECT_EQ(finished.size(), 1);
    QTest::qWait(50);
    EXPECT_TRUE(reviewer.fleet()->units.empty()) << "what comes late is dropped";
    reviewer.startIfStale();
    waitFor(reviewer);
    EXPECT_EQ(reviewer.fleet()->units.size(), 3);
}

TEST_F(FleetReviewerTest, ItStartsAgainOnAnotherDayButNotOnTheSame)
{
    FleetReviewer reviewer(m_book);
    reviewer.startIfStale();
    waitFor(reviewer);
    reviewer.startIfStale();
    EXPECT_FALSE(reviewer.isRunning());
    m_today = day("2026-05-05");
    reviewer.startIfStale();
    EXPECT_TRUE(reviewer.isRunning());
    waitFor(reviewer);
    EXPECT_EQ(reviewer.fleet()->today, m_today);
}

TEST_F(FleetReviewerTest, ANewUnitIsThereAfterTheSitesChanged)
{
    FleetReviewer reviewer(m_book);
    reviewer.start();
    waitFor(reviewer);
    addUnit("HB-00");
    Q_EMIT m_book.sitesChanged();
    waitFor(reviewer);
    ASSERT_EQ(reviewer.fleet()->units.size(), 4);
    EXPECT_EQ(reviewer.fleet()->units.front()->unit.tag, "HB-00");
}

TEST_F(FleetReviewerTest, AFileThatIsGoneIsSaidAndWhatIsShownStays)
{
    FleetReviewer reviewer(m_book);
    reviewer.start();
    waitFor(reviewer);
    const QString moved = m_folder.filePath(QStringLiteral("b.padside"));
    ASSERT_TRUE(QFile::rename(m_store->path(), moved));
    const QSignalSpy failed(&reviewer, &FleetReviewer::failed);
    reviewer.start();
    waitFor(reviewer);
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral("a.padside")));
    EXPECT_EQ(reviewer.fleet()->units.size(), 3);
    ASSERT_TRUE(QFile::rename(moved, m_store->path()));
}

TEST_F(FleetReviewerTest, ItMayGoWhileItWorks)
{
    for (int i = 0; i < 20; ++i) {
        FleetReviewer reviewer(m_book);
        reviewer.start();
    }
    SUCCEED() << "no thread is left behind with a store that is gone";
}

} // namespace padside::test
