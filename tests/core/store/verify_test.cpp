// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/backup.h"
#include "core/store/connection.h"
#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "core/store/verify.h"
#include "tests/core/store/file_tools.h"
#include "tests/core/store/full_record.h"
#include "tests/core/store/store_fixture.h"

#include <QDir>

#include <algorithm>
#include <iostream>
#include <random>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

class VerifyTest : public StoreTest
{
protected:
    VerifyTest()
        : m_record(fullRecord(*m_store))
    {
        writeRecord(*m_store, m_record);
    }

    /// Changes the file as no part of the program would: rules off, triggers gone.
    void tamper(const std::string& sql)
    {
        m_store->connection().run(
            "PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON; "
            "DROP TRIGGER finding_update; DROP TRIGGER finding_delete; DROP TRIGGER finding_insert; "
            "DROP TRIGGER visit_update");
        m_store->connection().run(sql);
    }

    void expectComplaint(const std::string& part)
    {
        const VerifyReport report = verify(*m_store);
        ASSERT_FALSE(report.clean());
        std::string all;
        for (const Sentence& complaint : report.complaints) {
            all += say(complaint) + "\n";
            EXPECT_EQ(say(complaint).find('{'), std::string::npos) << say(complaint);
        }
        EXPECT_NE(all.find(part), std::string::npos) << all;
    }

    UnitRecord m_record;
};

using BackupTest = VerifyTest;

} // namespace

TEST_F(VerifyTest, AFileOfOursIsCleanAndCounted)
{
    const VerifyReport report = verify(*m_store);
    EXPECT_TRUE(report.clean());
    EXPECT_EQ(report.sites, 1);
    EXPECT_EQ(report.units, 1);
    EXPECT_EQ(report.visits, 2);
    EXPECT_EQ(report.findings, 2);
    EXPECT_EQ(report.readings, 1);
    EXPECT_EQ(report.photos, 1);
}

TEST_F(VerifyTest, AGradeChangedBehindItsBackIsFound)
{
    tamper("UPDATE finding SET grade = 1 WHERE grade = 4");
    expectComplaint("HB-01 ü on 2024-02-29 was changed");
}

TEST_F(VerifyTest, AnEntryTakenFromAClosedVisitIsFound)
{
    tamper("DROP TRIGGER reading_delete; DELETE FROM reading");
    expectComplaint("was changed");
}

TEST_F(VerifyTest, AFindingDatedUnlikeItsVisitIsFound)
{
    tamper("UPDATE finding SET visited_on = '2024-03-01'");
    expectComplaint("not dated as its visit");
}

TEST_F(VerifyTest, ACorrectionOfNothingIsFound)
{
    tamper("DELETE FROM finding WHERE corrects IS NULL");
    expectComplaint("corrects something that is not there");
}

TEST_F(VerifyTest, AFindingOfNoZoneIsFound)
{
    tamper("UPDATE finding SET zone_id = randomblob(16)");
    expectComplaint("zone of another unit");
    expectComplaint("In finding, 2 rows point at a zone");
}

TEST_F(VerifyTest, AMissingOrChangedPhotographIsFound)
{
    const QString path = m_store->photos().path(m_record.photos[0]);
    writeContent(path, "not really a picturE");
    expectComplaint("IMG 1.jpg of unit HB-01 ü is damaged");
    ASSERT_TRUE(QFile::remove(path));
    expectComplaint("IMG 1.jpg of unit HB-01 ü is missing");
}

// Flips bytes all over the file: opening, reading and verifying must answer or refuse with a sentence, never crash or
// hang.
TEST_F(VerifyTest, DamagedBytesAreMetWithASentence)
{
    m_store.reset();
    const QByteArray whole = contentOf(m_path);
    const unsigned seed = 20260504;
    std::cout << "seed " << seed << '\n';
    std::mt19937 random(seed);
    int refused = 0;
    int complained = 0;
    for (int round = 0; round < 150; ++round) {
        QByteArray bytes = whole;
        const std::size_t count = 1 + random() % 40;
        const std::size_t from = random() % static_cast<std::size_t>(bytes.size());
        for (std::size_t i = 0; i < count; ++i)
            bytes[static_cast<qsizetype>((from + i) % static_cast<std::size_t>(bytes.size()))]
                = static_cast<char>(random());
        const QString path = pathOf(u"damaged.padside"_s);
        writeContent(path, bytes);
        try {
            const auto store = Store::open(path, Store::Access::readOnly);
            complained += verify(*store).clean() ? 0 : 1;
            (void)store->records().unitRecord(m_record.unit.id);
        } catch (const StoreError& error) {
            EXPECT_GT(std::string(error.what()).size(), 20U);
            ++refused;
        }
    }
    EXPECT_GT(refused, 0);
    EXPECT_GT(complained, 0);
}

TEST_F(BackupTest, IsAWholeFileWithItsPhotographs)
{
    const QString target = pathOf(u"copy.padside"_s);
    std::vector<double> progress;
    EXPECT_TRUE(backup(*m_store, target, [&](double done) {
        progress.push_back(done);
        return true;
    }));
    ASSERT_FALSE(progress.empty());
    EXPECT_TRUE(std::ranges::is_sorted(progress));
    EXPECT_GE(progress.front(), 0);
    EXPECT_EQ(progress.back(), 1);
    const auto copy = Store::open(target);
    EXPECT_EQ(copy->records().unitRecord(m_record.unit.id), m_record);
    EXPECT_TRUE(verify(*copy).clean());
    EXPECT_EQ(QDir(m_folder.path()).entryList({u"*.part*"_s}, QDir::AllEntries | QDir::Hidden), QStringList());
}

TEST_F(BackupTest, CancelledLeavesNothingBehind)
{
    const QStringList before = QDir(m_folder.path()).entryList();
    for (const double until : {0.0, 0.69, 0.7, 0.75}) {
        EXPECT_FALSE(backup(*m_store, pathOf(u"copy.padside"_s), [&](double done) { return done < until; })) << until;
        EXPECT_EQ(QDir(m_folder.path()).entryList(), before);
    }
}

TEST_F(BackupTest, NeverOverwritesAndNeverMakesHalfABackup)
{
    EXPECT_EQ(refusalOf([&] { backup(*m_store, m_path); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(refusalOf([&] { backup(*m_store, pathOf(u"no/folder.padside"_s)); }).problem().kind,
              ProblemKind::cannotWrite);
    const QStringList before = QDir(m_folder.path()).entryList();
    ASSERT_TRUE(QFile::remove(m_store->photos().path(m_record.photos[0])));
    EXPECT_EQ(refusalOf([&] { backup(*m_store, pathOf(u"copy.padside"_s)); }).problem().kind, ProblemKind::cannotRead);
    EXPECT_EQ(QDir(m_folder.path()).entryList(), before);
}

} // namespace padside::test
