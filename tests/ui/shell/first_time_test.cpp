// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// A person's first minutes: an empty file, the first site and unit, the first visit begun.

#include "core/store/site_book.h"
#include "core/store/visit_book.h"
#include "resources/resources.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/pages/setup/site_dialog.h"
#include "ui/pages/setup/unit_dialog.h"
#include "ui/pages/setup/welcome_page.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/setup_menu.h"
#include "ui/shell/unit_list_panel.h"

#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
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
        find<QLineEdit>(u"site-name"_s)->setText(u"Harbour House"_s);
        find<SiteDialog>(u"site-dialog"_s)->accept();
        auto* unit = find<UnitDialog>(u"unit-dialog"_s);
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
    EXPECT_TRUE(find<UnitPage>()->isVisible());
    EXPECT_EQ(find<UnitPage>()->unit(), onlyUnit());
    EXPECT_EQ(find<UnitListPanel>()->selected(), onlyUnit());

    m_window.startVisit(onlyUnit(), VisitReason::fall);
    EXPECT_TRUE(find<VisitPage>()->isVisible());
    EXPECT_TRUE(m_store->visits().openVisitOf(onlyUnit()).has_value());
}

TEST_F(FirstTime, GivingUpAfterTheSiteLeavesItForLater)
{
    find<QPushButton>(u"welcome-add"_s)->click();
    find<QLineEdit>(u"site-name"_s)->setText(u"Harbour House"_s);
    find<SiteDialog>(u"site-dialog"_s)->accept();
    find<UnitDialog>(u"unit-dialog"_s)->reject();
    EXPECT_EQ(m_store->sites().sites().size(), 1U);
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    find<QPushButton>(u"welcome-add"_s)->click(); // goes on with the unit
    EXPECT_TRUE(find<UnitDialog>(u"unit-dialog"_s)->isVisible());
}

TEST_F(FirstTime, UndoingTheFirstUnitComesBackToTheBeginning)
{
    addFirstSiteAndUnit();
    find<QUndoStack>()->undo();
    EXPECT_TRUE(find<WelcomePage>()->isVisible());
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
