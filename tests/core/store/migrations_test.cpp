// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/opening.h"
#include "core/store/record_reader.h"
#include "core/store/verify.h"
#include "tests/core/store/file_tools.h"
#include "tests/core/store/store_fixture.h"

#include <QDir>

#include <vector>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

/// A file of the latest version with a record in it, and two made-up later versions.
class MigrationsTest : public StoreTest
{
protected:
    MigrationsTest()
    {
        writeRecord(*m_store, m_record);
        m_store.reset();
    }

    [[nodiscard]] QStringList backups() const { return QDir(m_folder.path()).entryList({u"*copy*"_s}); }
    [[nodiscard]] OpenedFile open(bool onlyToRead = false) { return openRecordFile(m_path, onlyToRead, m_steps); }

    UnitRecord m_record
        = aUnit("HB-01").withPart("contactor", {"points"}).visit("2024-02-29").graded("points", 2).build();
    const int m_latest = latestVersion(migrations());
    Migration m_addColumn{m_latest + 1, [](Connection& connection) {
                              connection.run("ALTER TABLE site ADD COLUMN parking TEXT NOT NULL DEFAULT ''");
                          }};
    Migration m_addTable{m_latest + 2,
                         [](Connection& connection) { connection.run("CREATE TABLE tool (name TEXT) STRICT"); }};
    std::vector<Migration> m_steps = [this] {
        std::vector<Migration> steps(migrations().begin(), migrations().end());
        steps.insert(steps.end(), {m_addColumn, m_addTable});
        return steps;
    }();
};

} // namespace

TEST_F(MigrationsTest, StepsRunInOrderAfterOneBackup)
{
    {
        const OpenedFile opened = open();
        EXPECT_EQ(opened.connection->number("PRAGMA user_version"), m_latest + 2);
        EXPECT_EQ(opened.connection->number("SELECT count(*) FROM site WHERE parking = ''"), 1);
        EXPECT_EQ(opened.connection->number("SELECT count(*) FROM tool"), 0);
        EXPECT_EQ(opened.connection->number("PRAGMA foreign_keys"), 1);
        EXPECT_EQ(opened.backup, pathOf(u"record.version-2-copy-1.padside"_s));
    }
    EXPECT_TRUE(open().backup.isEmpty()) << "nothing is left to do";
    EXPECT_EQ(backups(), QStringList{u"record.version-2-copy-1.padside"_s});
    m_store = Store::open(pathOf(u"record.version-2-copy-1.padside"_s));
    EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id), m_record) << "the backup is the file as it was";
    EXPECT_TRUE(verify(*m_store).clean());
}

TEST_F(MigrationsTest, AStepThatFailsIsUndoneAndTheFileStaysAtTheVersionBefore)
{
    m_steps.back().apply = [](Connection& connection) {
        connection.run("CREATE TABLE tool (name TEXT) STRICT; DELETE FROM draft");
        connection.run("INSERT INTO no_such_table VALUES (1)");
    };
    (void)refusalOf([&] { (void)open(); });
    Connection left(m_path, Connection::Mode::readOnly);
    EXPECT_EQ(left.number("PRAGMA user_version"), m_latest + 1);
    EXPECT_EQ(left.number("SELECT count(*) FROM sqlite_schema WHERE name = 'tool'"), 0);
    EXPECT_EQ(backups().size(), 1);
}

TEST_F(MigrationsTest, AStepThatLeavesRecordsPointingAtNothingIsUndone)
{
    m_steps.rbegin()[1].apply = [](Connection& connection) { connection.run("DELETE FROM site"); };
    const auto error = refusalOf([&] { (void)open(); });
    EXPECT_EQ(error.problem().kind, ProblemKind::cannotWrite);
    m_store = Store::open(m_path);
    EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id), m_record);
}

TEST_F(MigrationsTest, AnEarlierBackupIsNeverOverwritten)
{
    writeContent(pathOf(u"record.version-2-copy-1.padside"_s), "precious");
    EXPECT_EQ(open().backup, pathOf(u"record.version-2-copy-2.padside"_s));
    EXPECT_EQ(contentOf(pathOf(u"record.version-2-copy-1.padside"_s)), "precious");
}

TEST_F(MigrationsTest, AnOlderFileThatMayOnlyBeReadIsRefusedUnchanged)
{
    const QByteArray before = contentOf(m_path);
    const auto error = refusalOf([&] { (void)open(true); });
    EXPECT_EQ(error.problem().kind, ProblemKind::cannotWrite);
    EXPECT_EQ(contentOf(m_path), before);
    EXPECT_TRUE(backups().isEmpty());
}

TEST_F(MigrationsTest, OurOwnStepsCountUpFromOne)
{
    int version = 0;
    for (const Migration& step : migrations())
        EXPECT_EQ(step.version, ++version);
    EXPECT_EQ(latestVersion(migrations()), version);
}

} // namespace padside::test
