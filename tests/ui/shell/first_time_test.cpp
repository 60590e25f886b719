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
#include "ui/pages/setup/site_dialog.h"
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
#include <QMenu>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

#include <gtest/gtest.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

Instant firstMorning()
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
                 RecordBook::Surroundings{&firstMorning, QLocale::c(), UnitSystem::metric, u"A. Tester"_s})
        , m_window(m_book, Theme::light())
    {
        m_window.resize(1280, 800);
        m_window.show();
        m_window.activateWindow(); // where no window manager does
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window)); // keys go to the active window
    }

    template <typename Widget> [[nodiscard]] Widget* find(const QString& name = {}) const
    {
        auto* found = m_window.findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }
    void press(Qt::Key key)
    {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), key);
    }
    void type(const QString& text)
    {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClicks(QApplication::focusWidget(), text);
    }
    void openFirstForm()
    {
        QTest::mouseClick(find<QPushButton>(u"welcome-add"_s), Qt::LeftButton);
        const auto* form = find<UnitDialog>(u"unit-dialog"_s);
        // Not qWaitForWindowActive(): that is content with the window behind the form.
        ASSERT_TRUE(QTest::qWaitFor([form] { return form->isActiveWindow() && form->focusWidget(); }));
    }
    void giveUp()
    {
        press(Qt::Key_Escape);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_EQ(m_window.findChild<UnitDialog*>(), nullptr);
    }
    /// By keys alone: site, address, tag, kind, Enter.
    void addFirstSiteAndUnit()
    {
        openFirstForm();
        type(u"Harbour House"_s); // the form begins with the site
        press(Qt::Key_Tab);
        type(u"1 Quay Road"_s);
        press(Qt::Key_Tab);
        type(u"HH-1"_s);
        press(Qt::Key_Tab);
        press(Qt::Key_Down);
        press(Qt::Key_Return);
        ASSERT_EQ(m_store->sites().units().size(), 1U);
    }
    [[nodiscard]] UnitId onlyUnit() const { return m_store->sites().units().at(0).id; }

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    RecordBook m_book;
    MainWindow m_window;
};

TEST_F(FirstTime, FromAnEmptyFileToTheFirstGradeOfTheFirstVisit)
{
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
    addFirstSiteAndUnit();
    ASSERT_EQ(m_store->sites().sites().size(), 1U);
    EXPECT_EQ(m_store->sites().sites()[0].name, "Harbour House");
    EXPECT_EQ(m_store->sites().sites()[0].address, "1 Quay Road");
    EXPECT_TRUE(find<UnitPage>()->isVisible());
    EXPECT_EQ(find<UnitPage>()->unit(), onlyUnit());
    EXPECT_EQ(find<UnitListPanel>()->selected(), onlyUnit());
    EXPECT_TRUE(find<QLabel>(u"firstVisit"_s)->isVisible());

    m_window.activateWindow(); // as a desktop does when a form closes
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_window.isActiveWindow(); }));
    QTest::mouseClick(find<QPushButton>(u"startFall"_s), Qt::LeftButton);
    EXPECT_TRUE(find<VisitPage>()->isVisible());
    EXPECT_TRUE(m_store->visits().openVisitOf(onlyUnit()).has_value());
    press(Qt::Key_2);
    const UnitRecord record = m_book.record(onlyUnit());
    ASSERT_EQ(record.findings.size(), 1U);
    EXPECT_EQ(record.findings[0].grade(), Grade::worn);
}

TEST_F(FirstTime, EachStepSaysWhatComesNext)
{
    openFirstForm();
    EXPECT_TRUE(find<QLabel>(u"setup-next"_s)->text().contains(u"first visit"_s));
    giveUp();
    find<QAction>(u"setup-add-site"_s)->trigger();
    auto* site = find<SiteDialog>(u"site-dialog"_s);
    EXPECT_TRUE(site->findChild<QLabel*>(u"setup-next"_s)->text().contains(u"first unit"_s));
    site->findChild<QLineEdit*>(u"site-name"_s)->setText(u"Harbour House"_s);
    site->accept();
    EXPECT_TRUE(find<UnitDialog>(u"unit-dialog"_s)->isVisible()) << "the unit follows its site";
}

TEST_F(FirstTime, WhereToGoAfterALookAtTheEmptySeason)
{
    m_window.showSeason();
    QTest::keyClick(&m_window, Qt::Key_1, Qt::ControlModifier);
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
}

TEST_F(FirstTime, GivingUpLeavesTheFileEmptyAndTheWaysToBegin)
{
    openFirstForm();
    type(u"Harbour House"_s);
    giveUp();
    EXPECT_TRUE(m_store->sites().sites().empty());
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
}

TEST_F(FirstTime, AListMayBeTheBeginningToo)
{
    QFile list(m_folder.filePath(u"units.csv"_s));
    ASSERT_TRUE(list.open(QIODevice::WriteOnly));
    list.write("site,tag,kind\nQuay 4,RT-1,heat-pump\nQuay 4,RT-2,foo\n");
    list.close();
    QTest::mouseClick(find<QPushButton>(u"welcome-list"_s), Qt::LeftButton);
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
    QMenu* menu = find<SetupMenu>()->menu();
    menu->popup({});
    EXPECT_TRUE(find<QAction>(u"setup-remove"_s)->text().contains(u"HH-1"_s)) << "the menu says which unit it is about";
    menu->hide();
    find<QAction>(u"setup-remove"_s)->trigger();
    EXPECT_TRUE(m_store->sites().units().empty());
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
}

} // namespace padside::test
