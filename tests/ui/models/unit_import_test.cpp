// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/verify.h"
#include "resources/resources.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/speaker.h"
#include "ui/models/unit_import.h"
#include "ui/models/unit_plan_model.h"

#include <QAbstractItemModelTester>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

#include <gtest/gtest.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

Instant noonOfImport()
{
    return Instant{*parseDate("2026-05-04") + std::chrono::hours(12), std::chrono::minutes(0)};
}

} // namespace

/// An empty file and lists beside it.
class UnitImportTest : public ::testing::Test
{
protected:
    UnitImportTest()
        : m_catalogue(Catalogue::load(shippedCatalogue()).value())
        , m_store(Store::create(m_folder.filePath(u"record.padside"_s)))
        , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{&noonOfImport, QLocale::c(), UnitSystem::metric, {}})
        , m_log(m_book, m_stack)
    {
    }

    [[nodiscard]] QString list(const QByteArray& text) const
    {
        QFile file(m_folder.filePath(u"units.csv"_s));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    [[nodiscard]] QString longList(int units) const
    {
        QByteArray text = "site,tag,kind\n";
        for (int i = 0; i < units; ++i)
            text += "Site " + QByteArray::number(i / 20) + ",RT-" + QByteArray::number(i) + ",heat-pump\n";
        return list(text);
    }
    void settle()
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !m_import.isBusy(); }, 120000));
    }
    void read(const QString& file)
    {
        m_import.read(file);
        settle();
    }

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    RecordBook m_book;
    QUndoStack m_stack;
    SetupLog m_log;
    UnitImport m_import{m_book, m_log};
};

TEST_F(UnitImportTest, AListIsReadAndItsColumnsAreRecognised)
{
    read(list("Site,Tag,Type\nQuay 4,RT-1,heat pump\n"));
    EXPECT_EQ(m_import.columns().size(), 3U);
    EXPECT_EQ(m_import.plan()->goodCount(), 1U);
}

TEST_F(UnitImportTest, ColumnsAndTheUsualSiteMayBeGivenByHand)
{
    read(list("what,which\nheat pump,RT-1\n"));
    EXPECT_EQ(m_import.plan()->goodCount(), 0U);
    m_import.setColumns({{UnitField::kind, 0}, {UnitField::tag, 1}});
    m_import.setUsualSite(u"Quay 4"_s); // while the list is still being understood
    settle();
    ASSERT_EQ(m_import.plan()->goodCount(), 1U);
    EXPECT_EQ(m_import.plan()->rows[0].site, "Quay 4");
}

TEST_F(UnitImportTest, AShortListIsOneStepThatCanBeUndone)
{
    read(longList(3));
    QSignalSpy added(&m_import, &UnitImport::added);
    m_import.add();
    EXPECT_EQ(added.count(), 1);
    EXPECT_EQ(m_store->sites().units().size(), 3U);
    m_stack.undo();
    EXPECT_TRUE(m_store->sites().units().empty());
    EXPECT_TRUE(m_store->sites().sites().empty());
}

TEST_F(UnitImportTest, ALongListIsAddedBesideTheWindow)
{
    read(longList(120));
    QSignalSpy added(&m_import, &UnitImport::added);
    QSignalSpy sites(&m_book, &RecordBook::sitesChanged);
    m_import.add();
    EXPECT_TRUE(m_import.isBusy());
    settle();
    EXPECT_EQ(added.count(), 1);
    EXPECT_EQ(sites.count(), 1);
    EXPECT_EQ(m_store->sites().units().size(), 120U);
    EXPECT_EQ(m_stack.count(), 0);
    EXPECT_TRUE(verify(*m_store).clean());
}

TEST_F(UnitImportTest, StoppingALongListLeavesNothing)
{
    read(longList(600));
    QSignalSpy cancelled(&m_import, &UnitImport::cancelled);
    m_import.add();
    m_import.cancel();
    settle();
    EXPECT_EQ(cancelled.count(), 1);
    EXPECT_TRUE(m_store->sites().units().empty());
    EXPECT_TRUE(m_store->sites().sites().empty());
}

TEST_F(UnitImportTest, AFileThatIsNoListIsSaidAndTheOneBeforeIsForgotten)
{
    read(longList(3));
    QSignalSpy failed(&m_import, &UnitImport::failed);
    read(list("site;tag;kind\nA;B;C\n"));
    EXPECT_EQ(failed.count(), 1);
    read(m_folder.filePath(u"nowhere.csv"_s));
    EXPECT_EQ(failed.count(), 2);
    EXPECT_TRUE(m_import.plan()->rows.empty());
    m_import.add();
    EXPECT_TRUE(m_store->sites().units().empty());
}

TEST_F(UnitImportTest, TheTableSaysWhatEachRowBecomes)
{
    read(list("site,tag,kind\nQuay 4,RT-1,heat-pump\nQuay 4,RT-2,foo\n"));
    UnitPlanModel model(m_catalogue, m_book.speaker());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setPlan(m_import.plan());
    ASSERT_EQ(model.rowCount(), 2);
    const auto outcome = [&](int row) { return model.index(row, UnitPlanModel::outcome).data().toString(); };
    EXPECT_EQ(outcome(0), u"New unit, new site"_s);
    EXPECT_TRUE(outcome(1).contains(u"foo"_s)) << outcome(1).toStdString();
    EXPECT_EQ(model.firstSkipped(), 1);
    model.setOnlyBad(true);
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.firstSkipped(), 0);
    EXPECT_EQ(model.index(0, UnitPlanModel::row).data().toString(), u"3"_s);
}

} // namespace padside::test
