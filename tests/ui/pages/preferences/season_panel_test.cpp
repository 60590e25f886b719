// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/preferences/preferences_fixture.h"
#include "ui/models/speaker.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class SeasonPanelTest : public PreferencesFixture
{
protected:
    void setWeek(const QString& name, int week) const { find<QSpinBox>(name)->setValue(week); }
    [[nodiscard]] QString days(int row) const { return find<QLabel>(u"days-%1"_s.arg(row))->text(); }
};

TEST_F(SeasonPanelTest, WeeksAreKeptInTheFile)
{
    open();
    QSignalSpy news(m_book.get(), &RecordBook::sitesChanged);
    setWeek(u"spring-last-1"_s, 22);
    m_dialog->accept();
    EXPECT_EQ(sites()[1].spring, (SeasonWeeks{12, 22}));
    EXPECT_EQ(sites()[0].spring, (SeasonWeeks{12, 20})) << "the other site stays";
    EXPECT_EQ(news.count(), 1);
}

TEST_F(SeasonPanelTest, SouthOfTheEquatorOneButtonSwapsThem)
{
    open();
    find<QPushButton>(u"swap-0"_s)->click();
    m_dialog->accept();
    EXPECT_EQ(sites()[0].spring, (SeasonWeeks{38, 45}));
    EXPECT_EQ(sites()[0].fall, (SeasonWeeks{12, 20}));
}

TEST_F(SeasonPanelTest, SaysWhichDaysTheWeeksAre)
{
    open();
    // ISO 8601: in 2026 week 12 begins on Monday 16 March, week 20 ends on Sunday 17 May (week 1 holds 1 January, a
    // Thursday).
    EXPECT_TRUE(days(0).contains(m_book->speaker().shownDate(*parseDate("2026-03-16")))) << days(0).toStdString();
    EXPECT_TRUE(days(0).contains(m_book->speaker().shownDate(*parseDate("2026-05-17")))) << days(0).toStdString();
}

TEST_F(SeasonPanelTest, WeeksThatCantBeAreRefusedBesideThemAndNothingIsWritten)
{
    open();
    setWeek(u"fall-last-0"_s, 30);
    EXPECT_TRUE(days(0).contains(u"before it begins"_s)) << days(0).toStdString();
    m_dialog->accept();
    EXPECT_TRUE(said().contains(u"Harbour House"_s));
    setWeek(u"fall-first-0"_s, 18);
    EXPECT_TRUE(days(0).contains(u"overlap"_s)) << days(0).toStdString();
    m_dialog->accept();
    EXPECT_TRUE(m_chosen.empty());
    EXPECT_EQ(sites()[0].fall, (SeasonWeeks{38, 45}));
}

} // namespace padside::test
