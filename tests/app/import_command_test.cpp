// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/verify.h"
#include "tests/app/command_runner.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

/// An empty record file and a list beside it.
class ImportCommand : public ::testing::Test
{
protected:
    ImportCommand() { Store::create(QString::fromStdString(m_file)); }

    [[nodiscard]] std::string path(const char* name) const
    {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    void writeList(const QByteArray& text) const
    {
        QFile list(QString::fromStdString(m_list));
        ASSERT_TRUE(list.open(QIODevice::WriteOnly));
        list.write(text);
    }
    [[nodiscard]] std::set<std::string> tags() const
    {
        const auto store = Store::open(QString::fromStdString(m_file));
        EXPECT_TRUE(verify(*store).clean());
        return store->sites().tags();
    }

    QTemporaryDir m_folder;
    std::string m_file = path("records.padside");
    std::string m_list = path("units.csv");
};

TEST_F(ImportCommand, AddsTheUnitsOfAList)
{
    writeList("site,tag,kind\nQuay 4,RT-1,heat-pump\nQuay 4,RT-2,split air conditioner\n");
    const Said said = run({"import", m_file, "--units", m_list});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    EXPECT_NE(said.out.find("RT-1 at Quay 4 (a new site)"), std::string::npos) << said.out;
    EXPECT_NE(said.out.find("2 units added, 0 rows refused."), std::string::npos) << said.out;
    EXPECT_EQ(tags(), (std::set<std::string>{"RT-1", "RT-2"}));
}

TEST_F(ImportCommand, SkipsBadRowsNamesThemAndSaysNo)
{
    writeList("site,tag,kind\nQuay 4,RT-1,heat-pump\nQuay 4,RT-2,foo\nQuay 4,RT-3,\"heat-pump\n");
    const Said said = run({"import", m_file, "--units", m_list});
    EXPECT_EQ(said.exitCode, exitDataSayNo);
    EXPECT_NE(said.err.find("Row 3: the kind “foo” is not known."), std::string::npos) << said.err;
    EXPECT_NE(said.err.find("units.csv, line 4"), std::string::npos) << said.err;
    EXPECT_EQ(tags(), std::set<std::string>{"RT-1"});
}

TEST_F(ImportCommand, ADryRunChangesNothing)
{
    writeList("tag,kind\nRT-1,heat-pump\n");
    const Said said = run({"import", m_file, "--units", m_list, "--site", "Quay 4", "--dry-run"});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    EXPECT_NE(said.out.find("1 units would be added"), std::string::npos) << said.out;
    EXPECT_TRUE(tags().empty());
}

TEST_F(ImportCommand, AListThatIsNoListOrIsNotThere)
{
    writeList("site;tag;kind\nQuay 4;RT-1;heat-pump\n");
    EXPECT_EQ(run({"import", m_file, "--units", m_list}).exitCode, exitDataSayNo);
    EXPECT_EQ(run({"import", m_file, "--units", path("nowhere.csv")}).exitCode, exitFileTrouble);
    writeList("site,tag,kind\nQuay 4,RT-1,heat-pump\n");
    EXPECT_EQ(run({"import", path("nowhere.padside"), "--units", m_list}).exitCode, exitFileTrouble);
    EXPECT_FALSE(QFile::exists(QString::fromStdString(path("nowhere.padside"))));
    EXPECT_EQ(run({"import", m_file}).exitCode, exitWrongUse);
    EXPECT_TRUE(tags().empty());
}

} // namespace padside::test
