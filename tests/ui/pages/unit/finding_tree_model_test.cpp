// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/small_catalogue.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/pages/unit/finding_tree_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace padside {

using test::smallCatalogue;

namespace {

class FindingTreeModelTest : public testing::Test
{
protected:
    FindingTreeModelTest() { show(test::worseningUnit().build()); }

    void show(const UnitRecord& record)
    {
        m_record = record;
        m_model.setSnapshot(test::snapshotOf(record, m_catalogue));
    }

    [[nodiscard]] QModelIndex cell(const std::string& zoneKind, int column) const
    {
        for (const Part& part : m_record.parts) {
            for (const Zone& zone : part.zones) {
                if (zone.kind == zoneKind && !part.removedOn)
                    return m_model.indexOf(zone.id).siblingAtColumn(column);
            }
        }
        return {};
    }

    Catalogue m_catalogue = smallCatalogue();
    LocalSpeaker m_speaker = test::englishSpeaker();
    UnitRecord m_record;
    FindingTreeModel m_model{m_catalogue, m_speaker};
    QAbstractItemModelTester m_tester{&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(FindingTreeModelTest, PutsZonesUnderTheirPartAndThePartShowsItsWorstGrade)
{
    ASSERT_EQ(m_model.rowCount(), 2);
    const QModelIndex accumulator = cell("bottom", 0).parent();
    EXPECT_EQ(accumulator.data().toString(), QStringLiteral("Suction accumulator"));
    EXPECT_EQ(m_model.rowCount(accumulator), 3);
    EXPECT_EQ(accumulator.siblingAtColumn(FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).toInt(), 4);
    EXPECT_FALSE(m_model.zoneAt(accumulator).has_value());
}

TEST_F(FindingTreeModelTest, AZoneShowsGradeChangeWetnessAndItsLastNote)
{
    EXPECT_EQ(cell("bottom", FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).toInt(), 4);
    EXPECT_EQ(cell("bottom", FindingTreeModel::changeColumn).data().toString(), QStringLiteral("1 worse"));
    EXPECT_EQ(cell("bottom", FindingTreeModel::wetnessColumn).data().toString(), QStringLiteral("wet"));
    EXPECT_EQ(cell("bottom", FindingTreeModel::noteColumn).data().toString(), QStringLiteral("bottom was wet"));
    EXPECT_TRUE(cell("bottom", FindingTreeModel::sinceColumn).data().toString().contains(QStringLiteral("2025")));
    EXPECT_EQ(cell("root", FindingTreeModel::changeColumn).data().toString(), QStringLiteral("same"));
}

TEST_F(FindingTreeModelTest, NotSeenKeepsTheOldGradeAndSaysSinceWhenAndWhy)
{
    EXPECT_EQ(cell("crown", FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).toInt(), 2);
    EXPECT_TRUE(cell("crown", FindingTreeModel::gradeColumn).data(FindingTreeModel::notSeenRole).toBool());
    const QString notSeen = cell("crown", FindingTreeModel::notSeenColumn).data().toString();
    EXPECT_TRUE(notSeen.contains(QStringLiteral("covered by a panel"))) << notSeen.toStdString();
    EXPECT_FALSE(cell("shell", FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).isValid());
    EXPECT_EQ(cell("shell", FindingTreeModel::notSeenColumn).data().toString(), QStringLiteral("never looked at"));
}

TEST_F(FindingTreeModelTest, AScreenReaderHearsTheRowAsOneSentence)
{
    const QString said = cell("bottom", 0).data(Qt::AccessibleTextRole).toString();
    for (const char* part : {"Suction accumulator, bottom", "4 poor", "1 worse", "wet", "bottom was wet"})
        EXPECT_TRUE(said.contains(QString::fromUtf8(part))) << said.toStdString();
}

TEST_F(FindingTreeModelTest, ANewGradeKeepsTheRowsWhereTheyAre)
{
    const QPersistentModelIndex kept = cell("bottom", FindingTreeModel::gradeColumn);
    const QSignalSpy resets(&m_model, &QAbstractItemModel::modelReset);
    auto builder = test::worseningUnit();
    builder.visit("2025-05-20", VisitReason::callOut).graded("bottom", 5);
    show(builder.build());
    EXPECT_EQ(resets.count(), 0);
    ASSERT_TRUE(kept.isValid());
    EXPECT_EQ(kept.data(FindingTreeModel::gradeRole).toInt(), 5);
}

TEST_F(FindingTreeModelTest, AReplacedPartBringsItsOwnRows)
{
    auto builder = test::worseningUnit();
    builder.replacedPart("suction-accumulator", "2025-05-06");
    show(builder.build());
    EXPECT_EQ(m_model.rowCount(), 2) << "the removed part is history, not a finding";
    EXPECT_FALSE(cell("bottom", FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).isValid());
}

TEST_F(FindingTreeModelTest, KnowsTheVisitAZoneWasLastLookedForAt)
{
    EXPECT_EQ(m_model.lastVisitOf(*m_model.zoneAt(cell("crown", 0))), m_record.visits.back().id);
    EXPECT_TRUE(m_model.lastVisitOf(*m_model.zoneAt(cell("shell", 0))).isNull());
}

} // namespace padside
