// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/window_memory.h"

#include <QScreen>
#include <QSettings>
#include <QSplitter>

namespace padside::test {

class WindowMemoryTest : public WindowFixture
{
protected:
    [[nodiscard]] std::unique_ptr<MainWindow> shownWindow()
    {
        auto window = std::make_unique<MainWindow>(*m_book, Theme::light());
        restoreWindow(*window, m_settings);
        window->show();
        return window;
    }

    QSettings m_settings{m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
};

TEST_F(WindowMemoryTest, TheFirstTimeTheWindowIsOfTheUsualSizeOrFillsASmallScreen)
{
    const auto window = shownWindow();
    const QSize screen = window->screen()->availableSize();
    const bool roomy = screen.width() >= 1280 && screen.height() >= 840;
    EXPECT_EQ(window->isMaximized(), !roomy);
    if (roomy) {
        EXPECT_EQ(window->size(), QSize(1280, 800));
    }
}

TEST_F(WindowMemoryTest, SizePanesAndUnitComeBack)
{
    {
        const auto window = shownWindow();
        window->resize(700, 500);
        window->findChild<QSplitter*>(QStringLiteral("panes"))->setSizes({310, 390});
        window->showUnit(units().back());
        rememberWindow(*window, m_settings);
    }
    const QSize small = [&] {
        const auto window = shownWindow();
        EXPECT_EQ(window->place(), (Place{Place::Page::unit, units().back(), {}}));
        EXPECT_EQ(window->findChild<UnitPage*>()->unit(), units().back());
        return window->size();
    }();
    m_settings.remove(QStringLiteral("window/geometry"));
    EXPECT_NE(shownWindow()->size(), small) << "the size came from what was remembered";
}

TEST_F(WindowMemoryTest, AnOpenVisitComesBack)
{
    Place before;
    {
        const auto window = shownWindow();
        window->startVisit(units().front(), VisitReason::callOut);
        ASSERT_TRUE(window->place().has_value());
        before = *window->place();
        ASSERT_EQ(before.page, Place::Page::visit);
        rememberWindow(*window, m_settings);
    }
    const auto window = shownWindow();
    EXPECT_EQ(window->place(), before);
    EXPECT_TRUE(window->findChild<VisitPage*>()->isVisible());
}

TEST_F(WindowMemoryTest, AVisitThatIsGoneLeavesItsUnit)
{
    const auto window = shownWindow();
    window->goTo({Place::Page::visit, units().back(), m_ids.make<VisitId>()});
    EXPECT_EQ(window->place(), (Place{Place::Page::unit, units().back(), {}}));
}

TEST_F(WindowMemoryTest, TheSeasonAndTheFleetAreReturnedToWithTheUnitStillChosen)
{
    for (const auto page : {Place::Page::season, Place::Page::fleet, Place::Page::track, Place::Page::rates}) {
        const Place chosen{page, units().back(), {}};
        {
            const auto window = shownWindow();
            window->goTo(chosen);
            rememberWindow(*window, m_settings);
        }
        EXPECT_EQ(shownWindow()->place(), chosen);
    }
}

TEST_F(WindowMemoryTest, APlaceInAnotherFileIsNotGoneTo)
{
    {
        const auto window = shownWindow();
        window->showUnit(units().back());
        rememberWindow(*window, m_settings);
    }
    m_settings.setValue(QStringLiteral("window/file"), QStringLiteral("/elsewhere/other.padside"));
    EXPECT_EQ(shownWindow()->place()->unit, units().front());
}

TEST_F(WindowMemoryTest, DamagedSettingsAreNoObstacle)
{
    m_settings.setValue(QStringLiteral("window/geometry"), QByteArray("rust"));
    m_settings.setValue(QStringLiteral("window/panes"), 17);
    m_settings.setValue(QStringLiteral("window/file"), m_store->path());
    m_settings.setValue(QStringLiteral("window/place"), QStringLiteral("roof/x/y"));
    EXPECT_EQ(shownWindow()->place()->unit, units().front());
}

TEST(PlaceText, IsReadBackAsItWasWritten)
{
    IdMaker ids([] { return std::int64_t{1'795'600'000'000}; }, 3);
    for (const auto page : {Place::Page::unit, Place::Page::visit, Place::Page::summary, Place::Page::season,
                            Place::Page::fleet, Place::Page::track, Place::Page::rates}) {
        const Place place{page, ids.make<UnitId>(), ids.make<VisitId>()};
        EXPECT_EQ(parsePlace(placeText(place)), place);
    }
    EXPECT_FALSE(parsePlace({}).has_value());
    EXPECT_FALSE(parsePlace(QStringLiteral("unit/1/2")).has_value());
}

} // namespace padside::test
