// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/fleet_field_view.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/pages/fleet/fleet_page.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSplitter>
#include <QTableView>
#include <QTest>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class FleetPageFieldTest : public WindowFixture
{
protected:
    FleetPageFieldTest()
        : m_fleet(*m_book)
        , m_theme(Theme::light())
        , m_page(*m_book, m_fleet, m_theme)
    {
        m_page.resize(1280, 760);
        m_page.show();
        m_page.refresh();
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_fleet.isRunning(); }, 30'000));
    }

    [[nodiscard]] FleetFieldView& field() const { return *m_page.findChild<FleetFieldView*>(u"field"_s); }
    [[nodiscard]] QTableView& table() const { return *m_page.findChild<QTableView*>(u"fleet"_s); }
    [[nodiscard]] QComboBox& within() const { return *m_page.findChild<QComboBox*>(u"within"_s); }
    [[nodiscard]] QString said() const { return m_page.findChild<QLabel*>(u"fieldSentence"_s)->text(); }
    [[nodiscard]] QString tagOf(const UnitId& unit) const
    {
        return QString::fromStdString(m_store->records().unitRecord(unit).unit.tag);
    }
    [[nodiscard]] QString tagInTable() const
    {
        return table().model()->index(table().currentIndex().row(), FleetModel::tag).data().toString();
    }

    FleetReviewer m_fleet;
    Theme m_theme;
    FleetPage m_page;
};

} // namespace

TEST_F(FleetPageFieldTest, EveryUnitThatWasReviewedStandsInTheField)
{
    EXPECT_EQ(field().units().size(), units().size());
    for (const FieldUnit& unit : field().units()) {
        EXPECT_EQ(unit.tag, tagOf(unit.id));
        EXPECT_GE(unit.chance, 0);
        EXPECT_LE(unit.chance, 1);
    }
}

TEST_F(FleetPageFieldTest, WhatIsChosenInTheTableIsChosenInTheField)
{
    for (int row = 0; row < table().model()->rowCount(); ++row) {
        table().setCurrentIndex(table().model()->index(row, FleetModel::tag));
        EXPECT_EQ(tagOf(field().chosen()), tagInTable());
        EXPECT_TRUE(said().startsWith(tagInTable() + u", "_s)) << said().toStdString();
    }
}

TEST_F(FleetPageFieldTest, WhatIsChosenInTheFieldIsChosenInTheTableAndEnterOpensIt)
{
    QSignalSpy wanted(&m_page, &FleetPage::unitRequested);
    field().setFocus();
    for (std::size_t mark = 0; mark < field().geometryNow().marks.size(); ++mark) {
        field().goTo(mark);
        EXPECT_EQ(tagInTable(), tagOf(field().chosen()));
    }
    QTest::keyClick(&field(), Qt::Key_Return);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted.front().front().value<UnitId>(), field().chosen());
}

TEST_F(FleetPageFieldTest, TheSentenceNamesThePartTheChanceAndWhatIsAtStake)
{
    table().setCurrentIndex(table().model()->index(0, FleetModel::tag));
    EXPECT_TRUE(said().contains(u"with a chance of "_s)) << said().toStdString();
    EXPECT_TRUE(said().contains(u"At stake: "_s)) << said().toStdString();
    EXPECT_TRUE(said().contains(u"By then the unit stops"_s)) << said().toStdString();
}

TEST_F(FleetPageFieldTest, FurtherAheadEveryUnitIsLikelierOrItsLossGraver)
{
    within().setCurrentIndex(0);
    const std::vector<FieldUnit> soon = field().units();
    within().setCurrentIndex(within().count() - 1);
    const std::vector<FieldUnit> later = field().units();
    ASSERT_EQ(soon.size(), later.size());
    for (std::size_t unit = 0; unit < soon.size(); ++unit)
        EXPECT_TRUE(later[unit].toll > soon[unit].toll || later[unit].chance >= soon[unit].chance);
    EXPECT_NE(soon, later);
}

TEST_F(FleetPageFieldTest, TheFieldShowsWhatTheTableShows)
{
    m_page.findChild<QLineEdit*>(u"fleetSearch"_s)->setText(tagOf(units().front()));
    ASSERT_EQ(field().units().size(), 1U);
    EXPECT_EQ(field().units().front().id, units().front());
    Unit unit = m_store->records().unitRecord(units().front()).unit;
    unit.retiredOn = m_book->today();
    ASSERT_TRUE(m_book->change(unit.id, [&] { m_store->sites().changeUnit(unit); }));
    EXPECT_TRUE(field().units().empty());
}

TEST_F(FleetPageFieldTest, OnAWideScreenFieldAndTableStandSideBySide)
{
    const auto& both = *m_page.findChild<QSplitter*>(u"fleetSplitter"_s);
    EXPECT_EQ(both.orientation(), Qt::Vertical);
    m_page.resize(1880, 900);
    EXPECT_EQ(both.orientation(), Qt::Horizontal);
    EXPECT_TRUE(QTest::qWaitFor([&both] { return both.sizes().value(0) > 300 && both.sizes().value(1) > 600; }, 5'000));
}

TEST_F(FleetPageFieldTest, InFieldSizeTheTableNeedsTheWidthOfThatScreenForItself)
{
    const auto& both = *m_page.findChild<QSplitter*>(u"fleetSplitter"_s);
    m_page.resize(1880, 900);
    ASSERT_EQ(both.orientation(), Qt::Horizontal);
    m_theme.size = Size::field();
    QEvent change(QEvent::StyleChange); // as when the look is chosen while the page is open
    QCoreApplication::sendEvent(&m_page, &change);
    EXPECT_EQ(both.orientation(), Qt::Vertical);
}

} // namespace padside::test
