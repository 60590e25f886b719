// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/file_tools.h"
#include "tests/core/store/full_record.h"
#include "tests/core/store/store_fixture.h"

#include <QDir>
#include <QFile>

#include <unistd.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

class OpeningTest : public StoreTest
{
protected:
    /// Opening is refused with `part` in the sentence, and the file keeps every byte.
    void expectNotOpened(const QString& path, const std::string& part, ProblemKind kind = ProblemKind::cannotRead)
    {
        const QByteArray before = contentOf(path);
        const QStringList names = QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden);
        for (const auto access : {Store::Access::readOnly, Store::Access::readWrite}) {
            const auto error = refusalOf([&] { (void)Store::open(path, access); });
            EXPECT_EQ(error.problem().kind, kind);
            EXPECT_NE(std::string(error.what()).find(part), std::string::npos) << error.what();
            EXPECT_NE(std::string(error.what()).find(path.toStdString()), std::string::npos)
                << "names no file: " << error.what();
        }
        // SQLite leaves an empty log beside a file of ours that it opened to read.
        QFile::remove(path + u"-shm"_s);
        if (QFileInfo(path + u"-wal"_s).size() == 0)
            QFile::remove(path + u"-wal"_s);
        EXPECT_EQ(contentOf(path), before);
        EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden), names);
    }
};

} // namespace

TEST_F(OpeningTest, TheConnectionFollowsTheRecipe)
{
    Connection& connection = m_store->connection();
    EXPECT_EQ(connection.text("PRAGMA journal_mode"), "wal");
    EXPECT_EQ(connection.number("PRAGMA synchronous"), 2) << "FULL";
    EXPECT_EQ(connection.number("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(connection.number("PRAGMA trusted_schema"), 0);
    EXPECT_EQ(connection.number("PRAGMA busy_timeout"), 5000);
    EXPECT_EQ(connection.number("PRAGMA application_id"), applicationId);
    EXPECT_EQ(connection.number("PRAGMA user_version"), latestVersion(migrations()));
    EXPECT_EQ(connection.number(
                  "SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND NOT strict "
                  "AND name NOT LIKE 'sqlite_%'"),
              0)
        << "every table is STRICT";
    EXPECT_EQ(connection.number("SELECT wr FROM pragma_table_list WHERE name = 'finding'"), 1);
    EXPECT_EQ(connection.number("SELECT wr FROM pragma_table_list WHERE name = 'reading'"), 1);
}

TEST_F(OpeningTest, ANewFileIsNotMadeOverAnother)
{
    const auto error = refusalOf([&] { (void)Store::create(m_path); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
    EXPECT_EQ(refusalOf([&] { (void)Store::create(pathOf(u"no/such/folder.padside"_s)); }).problem().kind,
              ProblemKind::cannotWrite);
    EXPECT_EQ(QDir(m_folder.path()).entryList({u"*.part*"_s}, QDir::AllEntries | QDir::Hidden), QStringList());
}

TEST_F(OpeningTest, AMissingFileIsNotMade)
{
    expectNotOpened(pathOf(u"missing.padside"_s), "no file");
}

TEST_F(OpeningTest, AFolderIsRefused)
{
    QDir(m_folder.path()).mkdir(u"folder.padside"_s);
    expectNotOpened(pathOf(u"folder.padside"_s), "folder");
}

TEST_F(OpeningTest, AnEmptyFileIsRefused)
{
    writeContent(pathOf(u"empty.padside"_s), {});
    expectNotOpened(pathOf(u"empty.padside"_s), "empty");
}

TEST_F(OpeningTest, ATextFileIsRefused)
{
    writeContent(pathOf(u"text.padside"_s), QByteArray("tag,grade\nHB-01,3\n").repeated(500));
    expectNotOpened(pathOf(u"text.padside"_s), "not a Padside record file");
    writeContent(pathOf(u"short.padside"_s), QByteArray("SQLite format 3\0", 16));
    expectNotOpened(pathOf(u"short.padside"_s), "not a Padside record file");
}

TEST_F(OpeningTest, ADatabaseOfAnotherProgramIsLeftAlone)
{
    {
        Connection other(pathOf(u"other.db"_s), Connection::Mode::readWrite);
        other.useWriteAheadLog();
        other.run("CREATE TABLE unit (x); INSERT INTO unit VALUES (1)");
    }
    expectNotOpened(pathOf(u"other.db"_s), "another program");
}

TEST_F(OpeningTest, AFileWithoutItsTablesIsCalledDamaged)
{
    {
        Connection other(pathOf(u"bare.padside"_s), Connection::Mode::readWrite);
        other.run("PRAGMA application_id = " + std::to_string(applicationId)
                  + "; CREATE TABLE x (y); PRAGMA user_version = 1");
    }
    expectNotOpened(pathOf(u"bare.padside"_s), "damaged");
}

TEST_F(OpeningTest, AFileCutShortIsCalledDamagedOnceItIsRead)
{
    m_store.reset();
    const QByteArray whole = contentOf(m_path);
    writeContent(pathOf(u"cut.padside"_s), whole.left(4096 + 100));
    expectNotOpened(pathOf(u"cut.padside"_s), "damaged");
}

TEST_F(OpeningTest, ANewerFileOpensForReadingOnlyAndSaysSo)
{
    writeRecord(*m_store, aUnit("HB-01").build());
    m_store->connection().run("PRAGMA user_version = 99");
    reopen();
    EXPECT_TRUE(m_store->isReadOnly());
    ASSERT_TRUE(m_store->openedReadOnlyBecause());
    EXPECT_NE(say(*m_store->openedReadOnlyBecause()).find("newer"), std::string::npos);
    EXPECT_EQ(m_store->sites().units().size(), 1U);
    EXPECT_EQ(refusalOf([&] { m_store->sites().addUnit(aUnit("HB-02").build().unit); }).problem().kind,
              ProblemKind::cannotWrite);
    EXPECT_EQ(m_store->connection().number("PRAGMA user_version"), 99);
}

TEST_F(OpeningTest, AskedToReadOnlyItWritesNothing)
{
    m_store.reset();
    m_store = Store::open(m_path, Store::Access::readOnly);
    EXPECT_TRUE(m_store->isReadOnly());
    EXPECT_FALSE(m_store->openedReadOnlyBecause());
    EXPECT_EQ(refusalOf([&] { m_store->sites().addSite(aUnit("HB-02").build().site); }).problem().kind,
              ProblemKind::cannotWrite);
}

TEST_F(OpeningTest, AFileThatCantBeWrittenToOpensForReadingAndSaysSo)
{
    writeRecord(*m_store, aUnit("HB-01").build());
    m_store.reset();
    QFile::setPermissions(m_path, QFile::ReadOwner | QFile::ReadGroup | QFile::ReadOther);
    for (const auto folderMode : {0755, 0555}) {
        ASSERT_EQ(::chmod(m_folder.path().toLocal8Bit().constData(), static_cast<mode_t>(folderMode)), 0);
        const AsAnotherUser somebody; // the superuser may write anywhere
        m_store = Store::open(m_path);
        EXPECT_TRUE(m_store->isReadOnly());
        ASSERT_TRUE(m_store->openedReadOnlyBecause());
        EXPECT_NE(say(*m_store->openedReadOnlyBecause()).find("can't be written to"), std::string::npos);
        EXPECT_EQ(m_store->sites().units().size(), 1U);
        EXPECT_EQ(refusalOf([&] { m_store->sites().addUnit(aUnit("HB-02").build().unit); }).problem().kind,
                  ProblemKind::cannotWrite);
        m_store.reset();
    }
    ::chmod(m_folder.path().toLocal8Bit().constData(), 0755);
}

TEST_F(OpeningTest, WhileAnotherProgramWritesAWriteIsRefusedWithASentence)
{
    m_store->connection().run("PRAGMA busy_timeout = 20");
    Connection other(m_path, Connection::Mode::readWrite);
    other.run("BEGIN IMMEDIATE");
    const auto error = refusalOf([&] { m_store->sites().addSite(aUnit("HB-01").build().site); });
    EXPECT_EQ(error.problem().kind, ProblemKind::cannotWrite);
    EXPECT_NE(std::string(error.what()).find("Another program"), std::string::npos) << error.what();
    other.run("COMMIT");
    m_store->sites().addSite(aUnit("HB-01").build().site);
    EXPECT_EQ(m_store->sites().sites().size(), 1U);
}

namespace {

/// The sample of one schema version, written by the program of its day.
QString sampleOf(int version)
{
    return u"%1/tests/core/store/data/v%2.padside"_s.arg(QStringLiteral(PADSIDE_SOURCE_DIR), QString::number(version));
}

} // namespace

/// One file per schema version opens for ever.
class SampleOfEachVersion : public StoreTest, public ::testing::WithParamInterface<int>
{
};

TEST_P(SampleOfEachVersion, OpensAndHoldsWhatWasWritten)
{
    const QString copy = pathOf(u"sample.padside"_s);
    ASSERT_TRUE(QFile::copy(sampleOf(GetParam()), copy));
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    UnitRecord record = fullRecord(*m_store);
    if (GetParam() < 2) {
        record.acknowledgements.clear();
        record.assumptions.clear();
    }
    ASSERT_TRUE(QDir().rename(m_path + u".photos"_s, copy + u".photos"_s));
    m_store = Store::open(copy);
    EXPECT_EQ(m_store->records().unitRecord(record.unit.id), record);
    EXPECT_TRUE(verify(*m_store).clean());
}

INSTANTIATE_TEST_SUITE_P(All, SampleOfEachVersion, ::testing::Range(1, latestVersion(migrations()) + 1));

// Writes that sample; run by hand once per schema version: --gtest_also_run_disabled_tests.
TEST_F(OpeningTest, DISABLED_WriteTheSampleFileOfTheLatestVersion)
{
    writeRecord(*m_store, fullRecord(*m_store));
    m_store.reset();
    const QString sample = sampleOf(latestVersion(migrations()));
    ASSERT_FALSE(QFile::exists(sample)) << "a sample is never replaced";
    ASSERT_TRUE(QFile::copy(m_path, sample));
}

} // namespace padside::test
