// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/backup.h"
#include "core/store/connection.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/transaction.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/failing_vfs.h"
#include "tests/core/store/file_tools.h"
#include "tests/core/store/store_fixture.h"

#include <QDir>

#include <algorithm>
#include <functional>
#include <iostream>
#include <sqlite3.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

/// Every write goes through a disk that can be made to fail. The store of the fixture is closed; each run works on a
/// fresh copy.
class WriteErrorTest : public ::testing::TestWithParam<FailingVfs::Failure>
{
protected:
    WriteErrorTest()
    {
        const auto store = Store::create(m_base);
        writeRecord(*store, m_before);
    }

    [[nodiscard]] QString pathOf(const QString& name) const { return m_folder.filePath(name); }

    /// A sitting with the store: a visit, entries, a change of mind, closing, a correction. Every call that returned is
    /// noted.
    void sit(const QString& path)
    {
        m_confirmed.clear();
        const auto store = Store::open(path);
        if (store->isReadOnly())
            throw StoreError(Problem{ProblemKind::cannotWrite, *store->openedReadOnlyBecause()});
        Visit visit = m_sitting.visits[0];
        visit.closedAt.reset();
        store->visits().open(visit);
        for (const Finding& finding : m_sitting.findings) {
            store->visits().put(finding);
            m_confirmed.push_back(finding);
        }
        Finding changed = m_confirmed.back();
        changed.note = std::string(9000, 'n'); // spills over several pages
        m_unconfirmed = changed;
        store->visits().put(changed);
        m_confirmed.back() = changed;
        m_unconfirmed.reset();
        store->visits().close(visit.id, *m_sitting.visits[0].closedAt);
        m_closed = true;
        Finding correcting = m_confirmed.front();
        correcting.id = FindingId(UuidBytes{0xff});
        correcting.correction = Correction<FindingId>{m_confirmed.front().id, "wrong vessel"};
        store->visits().put(correcting);
        m_confirmed.push_back(correcting);
    }

    /// After the disk works again: sound, verified, and all that was confirmed is there.
    void expectSound(const QString& path)
    {
        const auto store = Store::open(path);
        EXPECT_FALSE(store->isReadOnly());
        for (const Sentence& complaint : verify(*store).complaints)
            ADD_FAILURE() << say(complaint);
        const UnitRecord found = store->records().unitRecord(m_before.unit.id);
        for (const Finding& finding : m_before.findings)
            EXPECT_NE(std::ranges::find(found.findings, finding), found.findings.end());
        for (const Finding& finding : m_confirmed) {
            // A write whose confirmation failed may have come through; never is it half there.
            const auto kept = std::ranges::find(found.findings, finding.id, &Finding::id);
            ASSERT_NE(kept, found.findings.end()) << "a confirmed finding is lost";
            EXPECT_TRUE(*kept == finding || *kept == m_unconfirmed) << "a confirmed finding was changed";
        }
        EXPECT_FALSE(m_closed && store->visits().openVisitOf(m_before.unit.id));
    }

    void copyBase(const QString& path)
    {
        for (const QString& ending : {u""_s, u"-wal"_s, u"-shm"_s, u"-journal"_s})
            QFile::remove(path + ending);
        ASSERT_TRUE(QFile::copy(m_base, path));
        m_closed = false;
        m_unconfirmed.reset();
    }

    /// Runs `action` with the 1st, 2nd, … write failing until a run meets no failure; after each, `check`.
    int failEachWrite(const std::function<void()>& prepare, const std::function<void()>& action,
                      const std::function<void(bool)>& check)
    {
        constexpr int most = 5000;
        for (int nth = 1; nth < most; ++nth) {
            prepare();
            SCOPED_TRACE("write " + std::to_string(nth));
            bool finished = false;
            m_disk.arm(nth, GetParam());
            try {
                action();
                finished = true;
            } catch (const StoreError& error) {
                EXPECT_TRUE(m_disk.hasFailed()) << error.what();
                const std::string said = say(error.problem().what);
                EXPECT_TRUE(said.size() > 20 && said.back() == '.') << said;
                EXPECT_EQ(error.problem().kind, ProblemKind::cannotWrite) << said;
            }
            const bool failed = m_disk.hasFailed();
            m_disk.disarm();
            check(finished);
            if (!failed)
                return nth - 1;
            if (HasFailure())
                return nth;
        }
        ADD_FAILURE() << "it never came through";
        return most;
    }

    FailingVfs m_disk;
    QTemporaryDir m_folder;
    QString m_base = m_folder.filePath(u"base.padside"_s);
    UnitRecord m_before = aUnit("HB-01")
                              .withPart("suction-accumulator", {"crown", "bottom"})
                              .visit("2024-02-29")
                              .graded("crown", 2)
                              .build();
    UnitRecord m_sitting = [] {
        UnitRecord both = aUnit("HB-01")
                              .withPart("suction-accumulator", {"crown", "bottom"})
                              .visit("2024-02-29")
                              .graded("crown", 2)
                              .visit("2024-10-01")
                              .graded("crown", 3)
                              .graded("bottom", 3)
                              .build();
        both.visits.erase(both.visits.begin());
        both.findings.erase(both.findings.begin());
        return both;
    }();
    std::vector<Finding> m_confirmed;
    std::optional<Finding> m_unconfirmed; ///< a change whose call did not return
    bool m_closed = false;
};

using DiskFullTest = StoreTest;

} // namespace

TEST_P(WriteErrorTest, ASittingEndsWithASentenceAndASoundFile)
{
    const QString path = pathOf(u"run.padside"_s);
    const int points = failEachWrite([&] { copyBase(path); }, [&] { sit(path); }, [&](bool) { expectSound(path); });
    std::cout << points << " points of failure\n";
    EXPECT_GT(points, 20);
}

TEST_P(WriteErrorTest, MakingANewFileLeavesAWholeOneOrNone)
{
    const QString path = pathOf(u"new.padside"_s);
    const auto parts = [&] { return QDir(m_folder.path()).entryList({u"*.part*"_s}, QDir::AllEntries | QDir::Hidden); };
    const int points = failEachWrite(
        [&] {
            for (const QString& ending : {u""_s, u"-wal"_s, u"-shm"_s})
                QFile::remove(path + ending);
        },
        [&] { (void)Store::create(path); },
        [&](bool) {
            EXPECT_EQ(parts(), QStringList());
            if (QFile::exists(path)) {
                EXPECT_TRUE(verify(*Store::open(path)).clean());
            }
        });
    std::cout << points << " points of failure\n";
    EXPECT_GT(points, 20);
}

TEST_P(WriteErrorTest, ABackupIsWholeOrNotThere)
{
    const QString target = pathOf(u"copy.padside"_s);
    const auto store = Store::open(m_base);
    const int points = failEachWrite([&] { QFile::remove(target); }, [&] { EXPECT_TRUE(backup(*store, target)); },
                                     [&](bool finished) {
                                         EXPECT_EQ(QFile::exists(target), finished);
                                         if (finished) {
                                             EXPECT_TRUE(verify(*Store::open(target)).clean());
                                         }
                                     });
    std::cout << points << " points of failure\n";
    EXPECT_GT(points, 10);
}

// The disk stops at the n-th call and everything that was not synced is gone: what was confirmed must be there all the
// same.
TEST_P(WriteErrorTest, APowerCutLosesNothingConfirmed)
{
    const QString path = pathOf(u"run.padside"_s);
    const int points = failEachWrite(
        [&] {
            copyBase(path);
            m_disk.rememberUnsynced();
        },
        [&] { sit(path); },
        [&](bool) {
            m_disk.cutPower();
            expectSound(path);
        });
    EXPECT_GT(points, 20);
}

// The test above can tell: on a disk that only claims to sync, confirmed entries do get lost.
TEST_P(WriteErrorTest, APowerCutOnADiskThatLiesIsNoticed)
{
    const QString path = pathOf(u"run.padside"_s);
    copyBase(path);
    m_disk.rememberUnsynced(false);
    m_disk.arm(30, FailingVfs::Failure::fromThenOn);
    (void)refusalOf([&] { sit(path); });
    m_disk.disarm();
    m_disk.cutPower();
    ASSERT_FALSE(m_confirmed.empty());
    const auto store = Store::open(path);
    const UnitRecord found = store->records().unitRecord(m_before.unit.id);
    EXPECT_EQ(std::ranges::find(found.findings, m_confirmed.front().id, &Finding::id), found.findings.end());
}

INSTANTIATE_TEST_SUITE_P(EachFailure, WriteErrorTest,
                         ::testing::Values(FailingVfs::Failure::once, FailingVfs::Failure::fromThenOn,
                                           FailingVfs::Failure::torn, FailingVfs::Failure::full),
                         [](const auto& each) {
                             switch (each.param) {
                             case FailingVfs::Failure::once:
                                 return "Once";
                             case FailingVfs::Failure::fromThenOn:
                                 return "FromThenOn";
                             case FailingVfs::Failure::torn:
                                 return "Torn";
                             case FailingVfs::Failure::full:
                                 return "Full";
                             }
                             return "";
                         });

TEST_F(DiskFullTest, AFullDiskIsSaidAndNothingIsLost)
{
    UnitRecord record = aUnit("HB-01")
                            .withPart("contactor", {"points"})
                            .visit("2024-02-29", VisitReason::spring, false)
                            .graded("points", 2)
                            .build();
    writeRecord(*m_store, record);
    Connection& connection = m_store->connection();
    connection.run("PRAGMA max_page_count = " + connection.text("PRAGMA page_count"));
    Finding finding = record.findings[0];
    finding.note = std::string(100'000, 'x');
    const auto error = refusalOf([&] { m_store->visits().put(finding); });
    EXPECT_EQ(error.sqliteCode(), SQLITE_FULL);
    EXPECT_EQ(error.problem().kind, ProblemKind::cannotWrite);
    EXPECT_NE(std::string(error.what()).find("disk is full"), std::string::npos) << error.what();
    EXPECT_FALSE(error.statement().empty());
    EXPECT_EQ(m_store->records().unitRecord(record.unit.id), record);
    connection.run("PRAGMA max_page_count = 1000000");
    m_store->visits().put(finding);
    EXPECT_EQ(m_store->records().unitRecord(record.unit.id).findings[0], finding);
    EXPECT_TRUE(verify(*m_store).clean());
}

TEST_F(DiskFullTest, AGroupOfWritesBrokenByAFullDiskIsUndoneAsAWhole)
{
    const UnitRecord record = aUnit("HB-01").build();
    Connection& connection = m_store->connection();
    connection.run("PRAGMA max_page_count = " + connection.text("PRAGMA page_count"));
    {
        Transaction transaction(*m_store);
        m_store->sites().addSite(record.site);
        Site large = record.site;
        large.id = SiteId(UuidBytes{1});
        large.note = std::string(100'000, 'x');
        (void)refusalOf([&] { m_store->sites().addSite(large); });
        // The disk may have undone everything by now; going on as if nothing happened must not keep half of it.
        if (!connection.inTransaction()) {
            (void)refusalOf([&] { m_store->sites().addUnit(record.unit); });
            (void)refusalOf([&] { transaction.commit(); });
        }
    }
    EXPECT_TRUE(m_store->sites().sites().empty());
    EXPECT_TRUE(verify(*m_store).clean());
}

TEST_F(DiskFullTest, AnInnerGroupThatFailsLeavesTheOuterOneWhole)
{
    const UnitRecord record = aUnit("HB-01").build();
    {
        Transaction outer(*m_store);
        m_store->sites().addSite(record.site);
        try {
            Transaction inner(*m_store);
            m_store->sites().addUnit(record.unit);
            throw std::runtime_error("a change of mind");
        } catch (const std::runtime_error&) {
            EXPECT_TRUE(m_store->sites().units().empty());
        }
        outer.commit();
    }
    reopen();
    EXPECT_EQ(m_store->sites().sites().size(), 1U);
    EXPECT_TRUE(m_store->sites().units().empty());
}

} // namespace padside::test
