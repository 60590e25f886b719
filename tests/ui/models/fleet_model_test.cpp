// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "tests/ui/models/fleet_lines.h"
#include "ui/models/fleet_model.h"
#include "ui/models/speaker.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

class FleetModelTest : public ::testing::Test
{
protected:
    [[nodiscard]] std::string at(int row, FleetModel::Column column, int role = Qt::DisplayRole) const
    {
        return m_model.index(row, column).data(role).toString().toStdString();
    }

    Catalogue m_catalogue = smallCatalogue();
    LocalSpeaker m_speaker{QLocale::c(), UnitSystem::metric};
    FleetModel m_model{m_catalogue, m_speaker, FleetLines::today};
    QAbstractItemModelTester m_tester{&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(FleetModelTest, WhatTheFileSaysStandsThereAtOnce)
{
    m_model.setLines(FleetLines().unit("HB-01", 1, 4).installed(day("2015-05-05")).visited(day("2026-04-01")).lines());
    ASSERT_EQ(m_model.rowCount(), 1);
    EXPECT_EQ(at(0, FleetModel::tag), "HB-01");
    EXPECT_EQ(at(0, FleetModel::site), "Site 1");
    EXPECT_EQ(at(0, FleetModel::place), "north wall");
    EXPECT_EQ(at(0, FleetModel::kind), "split air conditioner") << "the catalogue's name, not its code";
    EXPECT_EQ(at(0, FleetModel::age), "10") << "eleven only tomorrow";
    EXPECT_EQ(at(0, FleetModel::grade, FleetModel::gradeRole), "4");
    EXPECT_EQ(at(0, FleetModel::lastVisit), m_speaker.shownDate(day("2026-04-01")).toStdString());
    EXPECT_EQ(at(0, FleetModel::flags), "") << "not known yet is not the same as none";
}

TEST_F(FleetModelTest, FlagsAndTheNextCheckFollowWithTheReview)
{
    const FleetLines fleet = FleetLines()
                                 .unit("HB-01", 1, 4)
                                 .flag(Severity::act, "The fan's root is cracked.")
                                 .flag(Severity::look, "Look again.")
                                 .check(day("2026-05-03"))
                                 .check(day("2026-09-01"))
                                 .unit("HB-02", 1, 1)
                                 .check(FleetLines::today);
    m_model.setLines(fleet.lines());
    const QSignalSpy changed(&m_model, &FleetModel::dataChanged);
    m_model.setReviewed(fleet.reviewed());
    EXPECT_EQ(changed.count(), 1) << "one message for all rows";
    EXPECT_EQ(at(0, FleetModel::flags), "2");
    EXPECT_EQ(at(0, FleetModel::worstFlag), "The fan's root is cracked.");
    EXPECT_EQ(at(0, FleetModel::nextCheck), "overdue since " + m_speaker.shownDate(day("2026-05-03")).toStdString());
    EXPECT_EQ(at(1, FleetModel::flags), "–");
    EXPECT_EQ(at(1, FleetModel::nextCheck), "by " + m_speaker.shownDate(FleetLines::today).toStdString())
        << "its last day is not over";
    m_model.setToday(FleetLines::today + std::chrono::days(1));
    EXPECT_EQ(at(1, FleetModel::nextCheck), "overdue since " + m_speaker.shownDate(FleetLines::today).toStdString());
}

TEST_F(FleetModelTest, ARetiredUnitAsksForNothing)
{
    const FleetLines fleet
        = FleetLines().unit("HB-01", 1, 5).retired().flag(Severity::act, "Spent.").check(day("2026-05-03"));
    m_model.setLines(fleet.lines());
    m_model.setReviewed(fleet.reviewed());
    EXPECT_EQ(at(0, FleetModel::place), "retired · north wall");
    EXPECT_EQ(at(0, FleetModel::flags), "");
    EXPECT_EQ(at(0, FleetModel::worstFlag), "");
    EXPECT_EQ(at(0, FleetModel::nextCheck), "");
    EXPECT_FALSE(m_model.line(0).isOverdue(FleetLines::today));
}

TEST_F(FleetModelTest, LinesReadAgainKeepWhatIsReviewed)
{
    const FleetLines fleet = FleetLines().unit("HB-01", 1, 4).flag(Severity::plan, "Plan a coating.");
    m_model.setLines(fleet.lines());
    m_model.setReviewed(fleet.reviewed());
    m_model.setLines(fleet.lines());
    EXPECT_EQ(at(0, FleetModel::worstFlag), "Plan a coating.");
    EXPECT_EQ(m_model.rowOf(fleet.id("HB-01")), 0);
    EXPECT_EQ(m_model.rowOf(UnitId(UuidBytes{99})), -1);
}

TEST_F(FleetModelTest, AReviewOfUnitsThatAreGoneIsNoHarm)
{
    const FleetLines fleet = FleetLines().unit("HB-01", 1, 4).unit("HB-02", 1, 4);
    m_model.setReviewed(fleet.reviewed());
    m_model.setLines(FleetLines().unit("HB-01", 1, 4).lines());
    EXPECT_EQ(m_model.rowCount(), 1);
    EXPECT_EQ(at(0, FleetModel::flags), "–");
}

TEST_F(FleetModelTest, EachCellCanBeReadAloud)
{
    const FleetLines fleet = FleetLines().unit("HB-01", 1, 4).flag(Severity::act, "Cracked.").unit("HB-02", 1, 0);
    m_model.setLines(fleet.lines());
    EXPECT_EQ(at(0, FleetModel::flags, Qt::AccessibleTextRole), "not reviewed yet");
    m_model.setReviewed(fleet.reviewed());
    EXPECT_EQ(at(0, FleetModel::grade, Qt::AccessibleTextRole), "worst grade 4");
    EXPECT_EQ(at(1, FleetModel::grade, Qt::AccessibleTextRole), "nothing seen yet");
    EXPECT_EQ(at(0, FleetModel::flags, Qt::AccessibleTextRole), "one flag");
    EXPECT_EQ(at(0, FleetModel::lastVisit, Qt::AccessibleTextRole), "never");
}

} // namespace padside::test
