// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.h"
#include "tests/support/small_catalogue.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/pages/unit/next_model.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace padside {

using test::smallCatalogue;

namespace {

class NextModelTest : public testing::Test
{
protected:
    [[nodiscard]] std::vector<QModelIndex> rowsOf(NextModel::Kind kind) const
    {
        std::vector<QModelIndex> rows;
        for (int row = 0; row < m_model.rowCount(); ++row) {
            const QModelIndex index = m_model.index(row);
            if (index.data(NextModel::kindRole).toInt() == static_cast<int>(kind))
                rows.push_back(index);
        }
        return rows;
    }

    Catalogue m_catalogue = smallCatalogue();
    LocalSpeaker m_speaker = test::englishSpeaker();
    NextModel m_model{m_catalogue, m_speaker};
    QAbstractItemModelTester m_tester{&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(NextModelTest, ShowsEachFlagOfTheReviewWithItsSentenceAndWhatClearsIt)
{
    const UnitSnapshotPtr snapshot = test::snapshotOf(test::worseningUnit().build(), m_catalogue);
    ASSERT_FALSE(snapshot->review.flags.empty());
    m_model.setSnapshot(snapshot);
    const auto rows = rowsOf(NextModel::Kind::flag);
    ASSERT_EQ(rows.size(), snapshot->review.flags.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Flag& flag = snapshot->review.flags[i];
        EXPECT_EQ(rows[i].data().toString(), m_speaker.said(flag.sentence));
        EXPECT_EQ(rows[i].data(NextModel::leadRole).toString(), shown(wordOf(flag.severity)));
        EXPECT_TRUE(rows[i].data(NextModel::reasonRole).toString().contains(m_speaker.said(flag.clears)));
        EXPECT_EQ(m_model.zoneAt(rows[i]), flag.zoneId);
    }
}

TEST_F(NextModelTest, ChecksShowWindowNeedsAndReason)
{
    UnitSnapshot snapshot = *test::snapshotOf(test::worseningUnit().build(), m_catalogue);
    Check check;
    check.what = Sentence{"Suction accumulator, bottom: look again", {}};
    check.why = Sentence{"The bottom was wet.", {}};
    check.conditions = {Condition::dry, Condition::off};
    check.earliest = test::day("2025-05-01");
    check.latest = test::day("2025-05-20"); // before today: overdue
    Check later = check;
    later.earliest = test::day("2025-09-01");
    later.latest = test::day("2025-10-15");
    later.conditions.clear();
    snapshot.review.checks = {check, later};
    m_model.setSnapshot(std::make_shared<const UnitSnapshot>(snapshot));
    const auto rows = rowsOf(NextModel::Kind::check);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_TRUE(rows[0].data(NextModel::leadRole).toString().startsWith(QStringLiteral("overdue since")));
    EXPECT_EQ(rows[0].data(NextModel::weightRole).toInt(), 3);
    EXPECT_EQ(rows[0].data(NextModel::reasonRole).toString(),
              QStringLiteral("Needs: dry, unit off. The bottom was wet."));
    EXPECT_EQ(rows[1].data(NextModel::weightRole).toInt(), 0);
    EXPECT_EQ(rows[1].data(NextModel::reasonRole).toString(), QStringLiteral("The bottom was wet."));
}

TEST_F(NextModelTest, AUnitWithNothingSaysSoInPlainWords)
{
    m_model.setSnapshot(test::snapshotOf(test::aUnit("HB-02").build(), m_catalogue));
    EXPECT_TRUE(rowsOf(NextModel::Kind::flag).empty());
    const auto nothing = rowsOf(NextModel::Kind::nothing);
    ASSERT_EQ(nothing.size(), 2U);
    EXPECT_FALSE(nothing[0].data().toString().isEmpty());
    EXPECT_FALSE(nothing[0].flags().testFlag(Qt::ItemIsSelectable));
}

TEST_F(NextModelTest, WhatPressesMoreWeighsMore)
{
    m_model.setSnapshot(test::snapshotOf(test::worseningUnit().build(), m_catalogue));
    int before = 3;
    for (const QModelIndex& row : rowsOf(NextModel::Kind::flag)) {
        const int weight = row.data(NextModel::weightRole).toInt();
        EXPECT_LE(weight, before) << "most severe first";
        EXPECT_GE(weight, 1);
        before = weight;
    }
}

TEST_F(NextModelTest, TheLikeliestOutlooksStandFirstWithTheirRangeOfDatesAndTheReason)
{
    auto snapshot = std::make_shared<UnitSnapshot>(*test::snapshotOf(test::worseningUnit().build(), m_catalogue));
    const OutlookModel outlook(m_catalogue);
    snapshot->forecast = unitForecast(snapshot->record, m_catalogue, outlook, snapshot->review.today);
    m_model.setSnapshot(snapshot);
    const auto rows = rowsOf(NextModel::Kind::outlook);
    ASSERT_FALSE(rows.empty());
    EXPECT_EQ(rows[0].row(), 1) << "below the first heading";
    const ZoneForecast& first = snapshot->forecast.zones.front();
    EXPECT_TRUE(rows[0].data().toString().contains(m_speaker.said(first.when)));
    EXPECT_TRUE(rows[0].data(NextModel::reasonRole).toString().contains(m_speaker.said(first.because)));
    EXPECT_EQ(m_model.zoneAt(rows[0]), first.zoneId);
}

TEST_F(NextModelTest, AMeasuredWallThatIsMorePessimisticLeadsAndIsNamed)
{
    const Catalogue shipped = Catalogue::load(shippedCatalogue()).value();
    test::RecordBuilder builder = test::aUnit("HB-01");
    builder.withPart("suction-accumulator", {"bottom"}, "2014-05-01");
    double wall = 3.0e-3;
    for (const char* on : {"2022-05-04", "2023-05-04", "2024-05-04", "2025-05-04"}) {
        builder.visit(on).graded("bottom", 2).read("wall-thickness", wall, QuantityKind::length, "mm");
        wall -= 0.2e-3;
    }
    UnitSnapshot snapshot{builder.build(), {}, {}};
    for (Reading& reading : snapshot.record.readings) {
        reading.partId = snapshot.record.parts.front().id;
        reading.zoneId = snapshot.record.parts.front().zones.front().id;
    }
    snapshot.record.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2.2 mm", QuantityKind::length)});
    snapshot.forecast = unitForecast(snapshot.record, shipped, OutlookModel(shipped), test::today());
    NextModel model(shipped, m_speaker);
    model.setSnapshot(std::make_shared<const UnitSnapshot>(snapshot));
    const QString reason = model.index(1).data(NextModel::reasonRole).toString();
    EXPECT_TRUE(reason.startsWith(QStringLiteral("The wall measured leads: "))) << reason.toStdString();
    EXPECT_TRUE(reason.contains(QStringLiteral("By the grades seen alone"))) << reason.toStdString();
}

} // namespace padside
