// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"
#include "core/store/store.h"
#include "tests/support/record_builder.h"
#include "ui/models/record_book.h"
#include "ui/pages/season/moved_trips.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace padside::test {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

class MovedTripsTest : public ::testing::Test
{
protected:
    MovedTripsTest()
        : m_store(Store::create(m_folder.filePath(QStringLiteral("a.padside"))))
        , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{[] {
                                              return Instant{day("2026-05-04") + std::chrono::hours(10), {}};
                                          },
                                          QLocale::c(),
                                          UnitSystem::metric,
                                          {}})
        , m_site(m_ids.make<SiteId>())
        , m_moved(m_book)
    {
    }

    [[nodiscard]] QString key() const { return QStringLiteral("season/") + QString::fromStdString(m_site.text()); }

    QTemporaryDir m_folder;
    std::unique_ptr<Store> m_store;
    Catalogue m_catalogue;
    IdMaker m_ids;
    RecordBook m_book;
    SiteId m_site;
    MovedTrips m_moved;
};

} // namespace

TEST_F(MovedTripsTest, WhatIsKeptIsThereAgainForItsSiteOnly)
{
    const std::vector moves{MovedTrip{day("2026-05-10"), day("2026-05-20")},
                            MovedTrip{day("2026-09-10"), day("2026-10-20")}};
    EXPECT_TRUE(m_moved.keep(m_site, moves));
    EXPECT_EQ(MovedTrips(m_book).of(m_site), moves);
    EXPECT_THAT(m_moved.of(m_ids.make<SiteId>()), IsEmpty());
}

TEST_F(MovedTripsTest, AKeptDayIsThereAgainWithWhatItTakesAlong)
{
    const std::vector kept{MovedTrip{day("2026-05-12"), day("2026-05-12"), day("2026-04-28")},
                           MovedTrip{day("2026-09-10"), day("2026-10-20")}};
    EXPECT_TRUE(m_moved.keep(m_site, kept));
    EXPECT_EQ(m_store->drafts().text(key()), QStringLiteral("2026-05-12 2026-05-12 2026-04-28\n2026-09-10 2026-10-20"));
    EXPECT_EQ(MovedTrips(m_book).of(m_site), kept);
}

TEST_F(MovedTripsTest, NothingMovedLeavesNothingInTheFile)
{
    EXPECT_TRUE(m_moved.keep(m_site, {{day("2026-05-10"), day("2026-05-20")}}));
    EXPECT_TRUE(m_moved.keep(m_site, {}));
    EXPECT_FALSE(m_store->drafts().text(key()));
}

TEST_F(MovedTripsTest, ADayThatIsOverIsNotShown)
{
    EXPECT_TRUE(m_moved.keep(m_site, {{day("2026-04-10"), day("2026-05-03")}, {day("2026-04-11"), day("2026-05-04")}}));
    EXPECT_THAT(m_moved.of(m_site), ElementsAre(MovedTrip{day("2026-04-11"), day("2026-05-04")}));
}

TEST_F(MovedTripsTest, WhatCannotBeReadIsSaidAndLeftOut)
{
    for (const char* text : {"2026-05-10", "2026-05-10 tomorrow", "2026-02-30 2026-05-10", "2026-05-10 2026-05-11 x"}) {
        const QSignalSpy failed(&m_book, &RecordBook::failed);
        m_store->drafts().setText(key(), QString::fromLatin1(text));
        EXPECT_THAT(m_moved.of(m_site), IsEmpty()) << text;
        EXPECT_EQ(failed.size(), 1) << text;
    }
}

TEST_F(MovedTripsTest, AFileThatCannotBeWrittenToRefusesAndSaysSo)
{
    const auto reading = Store::open(m_store->path(), Store::Access::readOnly);
    RecordBook book(*reading, m_catalogue, m_ids, m_book.surroundings());
    const QSignalSpy failed(&book, &RecordBook::failed);
    EXPECT_FALSE(MovedTrips(book).keep(m_site, {{day("2026-05-10"), day("2026-05-20")}}));
    EXPECT_EQ(failed.size(), 1);
}

} // namespace padside::test
