// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "tests/ui/models/fleet_lines.h"
#include "ui/models/fleet_filter.h"
#include "ui/models/fleet_model.h"
#include "ui/models/speaker.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Tags = std::vector<std::string>;

/// Five units that differ in all that can be asked for; "Z" is retired.
FleetLines fiveUnits()
{
    return FleetLines()
        .unit("A", 1, 2)
        .installed(day("2020-01-01"))
        .visited(day("2026-03-01"))
        .check(day("2026-06-01"))
        .unit("B", 2, 4)
        .installed(day("2004-01-01"))
        .flag(Severity::plan, "Plan.")
        .check(day("2026-05-01"))
        .unit("C", 2, 4)
        .visited(day("2025-10-01"))
        .flag(Severity::act, "Act.")
        .flag(Severity::look, "Look.")
        .unit("D", 1, 0)
        .kind("wärmepumpe")
        .installed(day("2025-01-01"))
        .unit("Z", 1, 5)
        .retired()
        .flag(Severity::act, "Spent.")
        .check(day("2026-01-01"));
}

class FleetFilterTest : public ::testing::Test
{
protected:
    FleetFilterTest()
    {
        m_model.setLines(m_fleet.lines());
        m_model.setReviewed(m_fleet.reviewed());
        m_filter.sort(FleetModel::grade, Qt::DescendingOrder);
    }

    [[nodiscard]] Tags shownTags() const
    {
        Tags tags;
        for (int row = 0; row < m_filter.rowCount(); ++row)
            tags.push_back(m_filter.index(row, FleetModel::tag).data().toString().toStdString());
        return tags;
    }

    [[nodiscard]] Tags sorted(FleetModel::Column column, Qt::SortOrder order)
    {
        m_filter.sort(column, order);
        return shownTags();
    }

    [[nodiscard]] Tags wished(const FleetWish& wish)
    {
        m_filter.setWish(wish);
        return shownTags();
    }

    FleetLines m_fleet = fiveUnits();
    Catalogue m_catalogue = smallCatalogue();
    LocalSpeaker m_speaker{QLocale::c(), UnitSystem::metric};
    FleetModel m_model{m_catalogue, m_speaker, FleetLines::today};
    FleetFilter m_filter{m_model};
    QAbstractItemModelTester m_tester{&m_filter, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(FleetFilterTest, TheGravestComesFirstAndOfTwoOfAGradeTheOneThatWantsActing)
{
    EXPECT_EQ(shownTags(), (Tags{"C", "B", "A", "D"}));
}

TEST_F(FleetFilterTest, RetiredUnitsStandLastWhereTheyAreWished)
{
    EXPECT_EQ(wished({.retiredToo = true}), (Tags{"C", "B", "A", "D", "Z"}));
}

TEST_F(FleetFilterTest, EveryWordMayStandAnywhereInAnyCase)
{
    EXPECT_EQ(wished({.text = foldedForSearch(QStringLiteral("SITE 2"))}), (Tags{"C", "B"}));
    EXPECT_EQ(wished({.text = "wall b"}), (Tags{"B"})) << "in place and tag";
    EXPECT_EQ(wished({.text = foldedForSearch(QStringLiteral("WÄRME"))}), (Tags{"D"}));
    EXPECT_EQ(wished({.text = "nowhere"}), Tags{});
    EXPECT_EQ(wished({}), (Tags{"C", "B", "A", "D"}));
}

TEST_F(FleetFilterTest, SiteKindGradeAndFlagsNarrowTheList)
{
    EXPECT_EQ(wished({.site = FleetLines::site(1)}), (Tags{"A", "D"}));
    EXPECT_EQ(wished({.kind = "split-air-conditioner"}), (Tags{"C", "B", "A"}));
    EXPECT_EQ(wished({.atLeast = Grade::worn}), (Tags{"C", "B", "A"})) << "D was never seen";
    EXPECT_EQ(wished({.atLeast = Grade::poor}), (Tags{"C", "B"}));
    EXPECT_EQ(wished({.atLeast = Grade::spent}), Tags{});
    EXPECT_EQ(wished({.withFlags = true, .retiredToo = true}), (Tags{"C", "B"})) << "a retired unit has none";
}

TEST_F(FleetFilterTest, OverdueIsACheckWhoseLastDayIsOver)
{
    EXPECT_EQ(wished({.overdue = true, .retiredToo = true}), (Tags{"B"}));
}

TEST_F(FleetFilterTest, AllWishesMustHold)
{
    EXPECT_EQ(wished({.text = "wall", .site = FleetLines::site(2), .atLeast = Grade::poor, .overdue = true}),
              (Tags{"B"}));
    EXPECT_EQ(wished({.site = FleetLines::site(1), .withFlags = true}), Tags{});
}

TEST_F(FleetFilterTest, EveryColumnSortsBothWays)
{
    EXPECT_EQ(sorted(FleetModel::tag, Qt::AscendingOrder), (Tags{"A", "B", "C", "D"}));
    EXPECT_EQ(sorted(FleetModel::tag, Qt::DescendingOrder), (Tags{"D", "C", "B", "A"}));
    EXPECT_EQ(sorted(FleetModel::flags, Qt::DescendingOrder), (Tags{"C", "B", "A", "D"}));
    EXPECT_EQ(sorted(FleetModel::worstFlag, Qt::DescendingOrder), (Tags{"C", "B", "A", "D"}));
    EXPECT_EQ(sorted(FleetModel::lastVisit, Qt::DescendingOrder), (Tags{"A", "C", "B", "D"}));
    EXPECT_EQ(sorted(FleetModel::kind, Qt::AscendingOrder), (Tags{"C", "B", "A", "D"}))
        << "split air conditioner before wärmepumpe, by name and not by code";
}

TEST_F(FleetFilterTest, TiesGoByGravityWhicheverWayTheColumnIsSorted)
{
    EXPECT_EQ(sorted(FleetModel::site, Qt::AscendingOrder), (Tags{"A", "D", "C", "B"}));
    EXPECT_EQ(sorted(FleetModel::site, Qt::DescendingOrder), (Tags{"C", "B", "A", "D"}));
}

TEST_F(FleetFilterTest, WhatIsNotKnownStandsLastBothWays)
{
    EXPECT_EQ(sorted(FleetModel::nextCheck, Qt::AscendingOrder), (Tags{"B", "A", "C", "D"}));
    EXPECT_EQ(sorted(FleetModel::nextCheck, Qt::DescendingOrder), (Tags{"A", "B", "C", "D"}));
    EXPECT_EQ(sorted(FleetModel::age, Qt::DescendingOrder), (Tags{"B", "A", "D", "C"})) << "the oldest first";
    EXPECT_EQ(sorted(FleetModel::age, Qt::AscendingOrder), (Tags{"D", "A", "B", "C"}));
}

TEST_F(FleetFilterTest, AUnitTakesItsNewPlaceWhenItIsReviewed)
{
    m_filter.sort(FleetModel::grade, Qt::DescendingOrder);
    FleetLines again = FleetLines().unit("A", 1, 4).unit("B", 2, 4);
    m_model.setLines(again.lines());
    again = FleetLines().unit("A", 1, 4).unit("B", 2, 4).flag(Severity::act, "Act.");
    m_model.setReviewed(again.reviewed());
    EXPECT_EQ(shownTags(), (Tags{"B", "A"}));
}

} // namespace padside::test
