// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// A person's first minutes: an empty file, the first site and unit, the first visit begun.

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "resources/resources.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/pages/setup/import_dialog.h"
#include "ui/pages/setup/unit_dialog.h"
#include "ui/pages/setup/welcome_page.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/setup_menu.h"
#include "ui/shell/unit_list_panel.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

#include <gtest/gtest.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

Instant tenInTheMorning()
{
    return Instant{*parseDate("2026-11-25") + std::chrono::hours(9), std::chrono::minutes(60)};
}

} // namespace

class FirstTime : public ::testing::Test
{
protected:
    FirstTime()
        : m_catalogue(Catalogue::load(shippedCatalogue()).value())
        , m_store(Store::create(m_folder.filePath(u"empty.padside"_s)))
        , m_ids([] { return std::int64_t{1'795'600'000'000}; }, 7)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{&tenInTheMorning, QLocale::c(), UnitSystem::metric, u"A. Tester"_s})
        , m_window(m_book, Theme::light())
    {
        m_window.resize(1280, 800);
        m_window.show();
    }

    template <typename Widget> [[nodiscard]] Widget* find(const QString& name = {}) const
    {
        auto* found = m_window.findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }
    void addFirstSiteAndUnit()
    {
        find<QPushButton>(u"welcome-add"_s)->click();
        auto* unit = find<UnitDialog>(u"unit-dialog"_s);
        QTest::keyClicks(QApplication::focusWidget(), u"Harbour House"_s); // the form begins with the site
        find<QLineEdit>(u"unit-site-address"_s)->setText(u"1 Quay Road"_s);
        find<QLineEdit>(u"unit-tag"_s)->setText(u"HH-1"_s);
        find<QComboBox>(u"unit-kind"_s)->setCurrentIndex(0);
        unit->accept();
    }
    [[nodiscard]] UnitId onlyUnit() const { return m_store->sites().units().at(0).id; }

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    RecordBook m_book;
    MainWindow m_window;
};

TEST_F(FirstTime, FromAnEmptyFileToTheFirstVisit)
{
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
    addFirstSiteAndUnit();
    ASSERT_EQ(m_store->sites().units().size(), 1U);
    ASSERT_EQ(m_store->sites().sites().size(), 1U);
    EXPECT_EQ(m_store->sites().sites()[0].name, "Harbour House");
    EXPECT_EQ(m_store->sites().sites()[0].address, "1 Quay Road");
    EXPECT_TRUE(find<UnitPage>()->isVisible());
    EXPECT_EQ(find<UnitPage>()->unit(), onlyUnit());
    EXPECT_EQ(find<UnitListPanel>()->selected(), onlyUnit());
    EXPECT_TRUE(find<QLabel>(u"firstVisit"_s)->isVisible());

    find<QPushButton>(u"startFall"_s)->click();
    EXPECT_TRUE(find<VisitPage>()->isVisible());
    EXPECT_TRUE(m_store->visits().openVisitOf(onlyUnit()).has_value());
}

TEST_F(FirstTime, GivingUpLeavesTheFileEmptyAndTheWaysToBegin)
{
    find<QPushButton>(u"welcome-add"_s)->click();
    QTest::keyClicks(QApplication::focusWidget(), u"Harbour House"_s);
    find<UnitDialog>(u"unit-dialog"_s)->reject();
    EXPECT_TRUE(m_store->sites().sites().empty());
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
}

TEST_F(FirstTime, AListMayBeTheBeginningToo)
{
    QFile list(m_folder.filePath(u"units.csv"_s));
    ASSERT_TRUE(list.open(QIODevice::WriteOnly));
    list.write("site,tag,kind\nQuay 4,RT-1,heat-pump\nQuay 4,RT-2,foo\n");
    list.close();
    find<QAction>(u"setup-import"_s)->trigger();
    auto* dialog = find<ImportDialog>(u"import-dialog"_s);
    dialog->read(list.fileName());
    auto* add = find<QPushButton>(u"import-add"_s);
    ASSERT_TRUE(QTest::qWaitFor([&] { return add->isEnabled(); }, 20000));
    EXPECT_TRUE(find<QLabel>(u"import-counts"_s)->text().contains(u"skipped"_s));
    add->click();
    EXPECT_EQ(m_store->sites().tags(), std::set<std::string>{"RT-1"});
    EXPECT_TRUE(find<UnitPage>()->isVisible());
}

TEST_F(FirstTime, UndoingTheFirstUnitComesBackToTheBeginning)
{
    addFirstSiteAndUnit();
    find<QUndoStack>()->undo();
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
    EXPECT_TRUE(m_store->sites().sites().empty()) << "the site was made in the same step";
    find<QUndoStack>()->redo();
    EXPECT_TRUE(find<UnitPage>()->isVisible());
    EXPECT_EQ(find<UnitPage>()->unit(), onlyUnit());
}

TEST_F(FirstTime, AUnitAddedByMistakeGoesFromTheMenu)
{
    addFirstSiteAndUnit();
    find<QAction>(u"setup-remove"_s)->trigger();
    EXPECT_TRUE(m_store->sites().units().empty());
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
}

} // namespace padside::test
