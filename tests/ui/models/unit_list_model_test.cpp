// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/unit_list_model.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace padside {

namespace {

UnitLine line(std::uint8_t site, std::uint8_t unit, const std::string& tag)
{
    UnitLine made;
    made.siteId = SiteId(UuidBytes{site});
    made.siteName = "Site " + std::to_string(site);
    made.unitId = UnitId(UuidBytes{unit});
    made.tag = tag;
    made.place = "north wall";
    return made;
}

std::vector<UnitLine> threeUnits()
{
    return {line(1, 11, "A-1"), line(1, 12, "A-2"), line(2, 21, "B-1")};
}

} // namespace

TEST(UnitListModel, GroupsUnitsUnderTheirSites)
{
    UnitListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setLines(threeUnits());
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.rowCount(model.index(0, 0)), 2);
    EXPECT_EQ(model.rowCount(model.index(1, 0)), 1);
    EXPECT_EQ(model.index(0, 0).data().toString(), QStringLiteral("Site 1"));
    EXPECT_EQ(model.index(0, 0, model.index(1, 0)).data().toString(), QStringLiteral("B-1"));
}

TEST(UnitListModel, FindsAUnitAndNamesItAgain)
{
    UnitListModel model;
    model.setLines(threeUnits());
    const UnitId wanted(UuidBytes{21});
    EXPECT_EQ(model.unitAt(model.indexOf(wanted)), wanted);
    EXPECT_FALSE(model.indexOf(UnitId(UuidBytes{99})).isValid());
    EXPECT_FALSE(model.unitAt(model.index(0, 0)).has_value()) << "a site is not a unit";
}

TEST(UnitListModel, ANewGradeKeepsTheRowsWhereTheyAre)
{
    UnitListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setLines(threeUnits());
    const QPersistentModelIndex kept = model.indexOf(UnitId(UuidBytes{12}));
    auto lines = threeUnits();
    lines[1].worst = Grade::poor;
    model.setLines(lines);
    ASSERT_TRUE(kept.isValid());
    EXPECT_EQ(kept.data(UnitListModel::worstGradeRole).toInt(), 4);
}

TEST(UnitListModel, SaysWhatTheEyeSees)
{
    UnitListModel model;
    auto lines = threeUnits();
    lines[0].worst = Grade::marked;
    lines[0].hasOpenVisit = true;
    model.setLines(lines);
    const QString said = model.indexOf(UnitId(UuidBytes{11})).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(said.contains(QStringLiteral("A-1")));
    EXPECT_TRUE(said.contains(QStringLiteral("3")));
    EXPECT_TRUE(said.contains(QStringLiteral("visit open")));
}

TEST(UnitListModel, ARetiredUnitIsCalledSo)
{
    UnitListModel model;
    auto lines = threeUnits();
    lines[2].retired = true;
    model.setLines(lines);
    const QModelIndex retired = model.indexOf(UnitId(UuidBytes{21}));
    EXPECT_TRUE(retired.data(UnitListModel::retiredRole).toBool());
    EXPECT_TRUE(retired.data(UnitListModel::placeRole).toString().contains(QStringLiteral("retired")));
    EXPECT_FALSE(model.indexOf(UnitId(UuidBytes{11})).data(UnitListModel::retiredRole).toBool());
}

TEST(UnitListModel, OnlyUnitsCanBeChosen)
{
    UnitListModel model;
    model.setLines(threeUnits());
    EXPECT_EQ(model.index(0, 0).flags(), Qt::NoItemFlags);
    EXPECT_TRUE(model.indexOf(UnitId(UuidBytes{11})).flags().testFlag(Qt::ItemIsSelectable));
}

} // namespace padside
