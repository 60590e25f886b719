// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// A key that has nothing to act on says why, and enters nothing.

#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/ui/pages/visit/visit_fixture.h"

#include <QPushButton>

namespace padside::test {

TEST_F(VisitPageTest, AsLeftIsNotThereBeforeTheWorkAndTheKeySaysSo)
{
    open();
    start();
    goTo("crown");
    EXPECT_TRUE(message().isEmpty());
    key(Qt::Key_L);
    EXPECT_TRUE(message().contains(QStringLiteral("No work was entered on this zone"))) << message().toStdString();
    EXPECT_FALSE(finding("crown", Phase::asLeft).has_value());
    key(Qt::Key_Return);
    EXPECT_TRUE(message().isEmpty()) << "it was about the zone before";
}

TEST_F(VisitPageTest, AZoneNeverSeenHasNoLastTimeToRepeat)
{
    open();
    start();
    goTo("leads");
    key(Qt::Key_S);
    EXPECT_TRUE(message().contains(QStringLiteral("never seen before"))) << message().toStdString();
    EXPECT_FALSE(finding("leads").has_value());
    key(Qt::Key_2);
    EXPECT_TRUE(message().isEmpty()) << "an entry that went well overtakes it";
}

TEST_F(VisitPageTest, ADigitThatIsNoGradeIsSaidAndNotEntered)
{
    open();
    start();
    const UnitRecord before = record();
    key(Qt::Key_6);
    EXPECT_TRUE(message().contains(QStringLiteral("1 to 5"))) << message().toStdString();
    EXPECT_EQ(record(), before);
}

TEST_F(VisitPageTest, AtBothEndsOfTheZonesTheArrowsSayThatThereIsNoMore)
{
    open();
    start();
    key(Qt::Key_Up);
    EXPECT_TRUE(message().contains(QStringLiteral("first zone"))) << message().toStdString();
    const auto first = m_page->zone();
    for (std::size_t i = 1; i < m_page->sheet().zones.size(); ++i) {
        key(Qt::Key_Down);
        EXPECT_TRUE(message().isEmpty()) << "zone " << i + 1;
    }
    EXPECT_NE(m_page->zone(), first);
    key(Qt::Key_Return);
    EXPECT_TRUE(message().contains(QStringLiteral("last zone"))) << message().toStdString();
}

TEST_F(VisitPageTest, WhenEveryZoneWasLookedAtTheKeyForTheNextOneSaysSo)
{
    open();
    start();
    for (std::size_t i = 0; i < m_page->sheet().zones.size(); ++i) {
        key(Qt::Key_2);
        key(Qt::Key_O);
    }
    EXPECT_TRUE(message().contains(QStringLiteral("Every zone was looked at"))) << message().toStdString();
}

TEST_F(VisitPageTest, TheKeysOfAClosedVisitSayThatItIsClosed)
{
    open();
    start();
    key(Qt::Key_2);
    ASSERT_TRUE(m_book->change(m_unit, [this] { m_store->visits().close(m_visit, springMorning()); }));
    m_page->showVisit(m_visit);
    const UnitRecord before = record();
    for (const Qt::Key pressed : {Qt::Key_4, Qt::Key_N, Qt::Key_W, Qt::Key_S, Qt::Key_P}) {
        key(Qt::Key_Down);
        key(pressed);
        EXPECT_TRUE(message().contains(QStringLiteral("closed"))) << message().toStdString();
    }
    EXPECT_EQ(record(), before);
}

} // namespace padside::test
