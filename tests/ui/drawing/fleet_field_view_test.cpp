// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field_view.h"
#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QApplication>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

FieldUnit at(std::uint8_t number, Toll toll, double chance, std::optional<Grade> grade = Grade::marked)
{
    return {UnitId(UuidBytes{number}), u"U-%1"_s.arg(number), toll, chance, grade};
}

/// Three units apart from each other and forty of one kind, shown and focused.
struct ShownField
{
    FleetFieldView view{Theme::light(),
                        {u"looks"_s, u"nuisance"_s, u"cooling"_s, u"charge"_s, u"unit"_s},
                        [](double chance) { return QString::number(chance * 100) + u" %"_s; }};
    QSignalSpy chosen{&view, &FleetFieldView::unitChosen};
    QSignalSpy opened{&view, &FleetFieldView::unitActivated};

    ShownField()
    {
        std::vector<FieldUnit> units{at(1, Toll::nuisance, 0.5), at(2, Toll::unit, 0.5),
                                     at(3, Toll::unit, 0.04, std::nullopt)};
        for (std::uint8_t number = 10; number < 50; ++number)
            units.push_back(at(number, Toll::charge, 0.001));
        view.resize(1000, 320);
        view.setSentences([](const UnitId& unit) { return u"Why %1."_s.arg(unit.bytes()[0]); });
        view.setUnits(std::move(units));
        view.show();
        view.setFocus();
    }

    void press(std::initializer_list<Qt::Key> keys)
    {
        for (const Qt::Key key : keys)
            QTest::keyClick(&view, key);
    }
    void pointAt(const QPoint& point)
    {
        QMouseEvent move(QEvent::MouseMove, point, view.mapToGlobal(point), Qt::NoButton, Qt::NoButton, {});
        QApplication::sendEvent(&view, &move);
    }
    [[nodiscard]] int number() const { return view.chosen().bytes()[0]; }
    [[nodiscard]] QPoint markOf(std::uint8_t number) const
    {
        for (const FieldMark& mark : view.geometryNow().marks) {
            for (const std::size_t unit : mark.units) {
                if (view.units()[unit].id.bytes()[0] == number)
                    return mark.area.center().toPoint();
            }
        }
        return {};
    }
};

} // namespace

TEST(FleetFieldView, WhatIsSaidOfAUnitFollowsTheRoomItHas)
{
    ShownField shown;
    shown.view.setUnits({at(1, Toll::unit, 0.9), at(2, Toll::unit, 0.9), at(3, Toll::unit, 0.9)});
    shown.view.choose(UnitId(UuidBytes{1}));
    shown.view.resize(400, 320);
    QApplication::processEvents();
    EXPECT_TRUE(shown.view.accessibleDescription().contains(u"gathered"_s));
    shown.view.resize(1900, 320);
    QApplication::processEvents();
    EXPECT_EQ(shown.view.accessibleDescription(), u"Why 1."_s) << "each has its own mark by now";
}

TEST(FleetFieldView, ArrowKeysWalkFromMarkToMark)
{
    ShownField shown;
    shown.view.choose(UnitId(UuidBytes{1}));
    shown.press({Qt::Key_Right});
    EXPECT_EQ(shown.number(), 2);
    shown.press({Qt::Key_Down});
    EXPECT_EQ(shown.number(), 3);
    shown.press({Qt::Key_Right});
    EXPECT_EQ(shown.number(), 3) << "the edge";
    shown.press({Qt::Key_Up, Qt::Key_Left});
    EXPECT_EQ(shown.number(), 1);
    EXPECT_EQ(shown.chosen.count(), 4);
}

TEST(FleetFieldView, EnterAndADoubleClickOpenTheUnit)
{
    ShownField shown;
    shown.press({Qt::Key_Return});
    EXPECT_EQ(shown.opened.count(), 0) << "nothing is chosen";
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, shown.markOf(2));
    EXPECT_EQ(shown.number(), 2);
    EXPECT_EQ(shown.opened.count(), 0);
    shown.press({Qt::Key_Return});
    ASSERT_EQ(shown.opened.count(), 1);
    EXPECT_EQ(shown.opened.front().front().value<UnitId>(), UnitId(UuidBytes{2}));
    QTest::mouseDClick(&shown.view, Qt::LeftButton, {}, shown.markOf(3));
    EXPECT_EQ(shown.opened.count(), 2);
}

TEST(FleetFieldView, SpaceStepsThroughThoseGatheredInOneMark)
{
    ShownField shown;
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, shown.markOf(10));
    EXPECT_EQ(shown.number(), 10);
    shown.press({Qt::Key_Space, Qt::Key_Space});
    EXPECT_EQ(shown.number(), 12);
    for (int step = 0; step < 38; ++step)
        shown.press({Qt::Key_Space});
    EXPECT_EQ(shown.number(), 10) << "all forty, then the first again";
    EXPECT_TRUE(shown.view.sentenceNow().startsWith(u"Why 10."_s));
    EXPECT_TRUE(shown.view.sentenceNow().contains(u"U-10, U-11"_s));
    EXPECT_TRUE(shown.view.sentenceNow().contains(u"34 more"_s));
}

TEST(FleetFieldView, PointingSaysWhyAndLeavingSaysWhatIsChosen)
{
    ShownField shown;
    shown.view.choose(UnitId(UuidBytes{2}));
    shown.pointAt(shown.markOf(3));
    EXPECT_EQ(shown.view.sentenceNow(), u"Why 3."_s);
    shown.pointAt(QPoint(2, 2));
    EXPECT_EQ(shown.view.sentenceNow(), u"Why 2."_s);
}

TEST(FleetFieldView, WhatIsChosenStaysAsLongAsItIsThere)
{
    ShownField shown;
    shown.view.choose(UnitId(UuidBytes{2}));
    shown.view.setUnits({at(2, Toll::charge, 0.9)});
    EXPECT_EQ(shown.number(), 2);
    shown.view.setUnits({at(1, Toll::charge, 0.9)});
    EXPECT_TRUE(shown.view.chosen().isNull());
    shown.view.choose(UnitId(UuidBytes{77}));
    EXPECT_TRUE(shown.view.chosen().isNull()) << "it is not here";
}

TEST(FleetFieldView, AScreenReaderMeetsEveryMark)
{
    ShownField shown;
    shown.view.choose(UnitId(UuidBytes{2}));
    QAccessibleInterface* field = QAccessible::queryAccessibleInterface(&shown.view);
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(field->role(), QAccessible::List);
    ASSERT_EQ(field->childCount(), static_cast<int>(shown.view.geometryNow().marks.size()));
    int selected = 0;
    for (int child = 0; child < field->childCount(); ++child) {
        QAccessibleInterface* mark = field->child(child);
        EXPECT_FALSE(mark->text(QAccessible::Name).isEmpty());
        EXPECT_TRUE(mark->text(QAccessible::Description).startsWith(u"Why "_s));
        EXPECT_EQ(field->indexOfChild(mark), child);
        if (mark->state().selected) {
            ++selected;
            EXPECT_EQ(mark->text(QAccessible::Name), u"U-2"_s);
        } else if (mark->text(QAccessible::Name) == u"U-3"_s) {
            mark->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        }
    }
    EXPECT_EQ(selected, 1);
    EXPECT_EQ(shown.number(), 3);
    EXPECT_EQ(shown.view.accessibleDescription(), u"Why 3."_s);
}

TEST(FleetFieldView, WithoutUnitsItSaysSo)
{
    ShownField shown;
    shown.view.setUnits({});
    EXPECT_TRUE(shown.view.sentenceNow().contains(u"outlook"_s));
    shown.press({Qt::Key_Right, Qt::Key_Space, Qt::Key_Return});
    EXPECT_EQ(shown.opened.count(), 0);
}

} // namespace padside
