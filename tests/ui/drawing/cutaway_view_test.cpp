// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace padside {

namespace {

CutawayPart named(const char* kind, std::uint8_t id)
{
    CutawayPart part;
    part.id = PartId(UuidBytes{id});
    part.zone = ZoneId(UuidBytes{id, 1});
    part.kind = kind;
    part.name = QString::fromUtf8(kind);
    part.sentence = QStringLiteral("What was found of the %1.").arg(part.name);
    return part;
}

/// The view with a fan motor above, a compressor in the middle, a pad beneath, shown and focused.
struct ShownCutaway
{
    CutawayView view{Theme::light()};
    QSignalSpy activated{&view, &CutawayView::partActivated};

    ShownCutaway()
    {
        view.resize(520, 420);
        view.setContent({"heat-pump", {named("pad", 1), named("compressor", 2), named("fan-motor", 3)}});
        view.show();
        view.setFocus();
    }

    void press(std::initializer_list<Qt::Key> keys)
    {
        for (const Qt::Key key : keys)
            QTest::keyClick(&view, key);
    }

    [[nodiscard]] std::uint8_t at() const { return view.current().bytes()[0]; }
};

} // namespace

TEST(CutawayView, ArrowKeysWalkFromPartToPartAndStopAtTheEdge)
{
    ShownCutaway shown;
    EXPECT_TRUE(shown.view.current().isNull());
    shown.press({Qt::Key_Down}); // the first key takes the part one reads first
    EXPECT_EQ(shown.at(), 3);
    shown.press({Qt::Key_Down});
    EXPECT_EQ(shown.at(), 2);
    shown.press({Qt::Key_Down, Qt::Key_Down, Qt::Key_Down});
    EXPECT_EQ(shown.at(), 1);
    shown.press({Qt::Key_Up});
    EXPECT_EQ(shown.at(), 2);
    shown.press({Qt::Key_End});
    EXPECT_EQ(shown.at(), 1);
    shown.press({Qt::Key_Home});
    EXPECT_EQ(shown.at(), 3);
}

TEST(CutawayView, EnterAndSpaceGoToThePartAndItsZone)
{
    ShownCutaway shown;
    shown.press({Qt::Key_Return});
    EXPECT_EQ(shown.activated.count(), 0) << "no part is in front yet";
    shown.press({Qt::Key_End, Qt::Key_Return, Qt::Key_Up, Qt::Key_Space});
    ASSERT_EQ(shown.activated.count(), 2);
    EXPECT_EQ(shown.activated.at(0).at(0).value<PartId>(), PartId(UuidBytes{1}));
    EXPECT_EQ(shown.activated.at(0).at(1).value<ZoneId>(), (ZoneId(UuidBytes{1, 1})));
    EXPECT_EQ(shown.activated.at(1).at(0).value<PartId>(), PartId(UuidBytes{2}));
}

TEST(CutawayView, AClickOnAPartOrItsMarkGoesThereAndBesideThemNothingHappens)
{
    ShownCutaway shown;
    const CutawayGeometry& geometry = shown.view.geometryNow();
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, geometry.parts[1].body.center().toPoint());
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, geometry.parts[0].mark.center().toPoint());
    QTest::mouseClick(&shown.view, Qt::LeftButton, {}, QPoint(3, 3));
    QTest::mouseClick(&shown.view, Qt::RightButton, {}, geometry.parts[0].mark.center().toPoint());
    ASSERT_EQ(shown.activated.count(), 2);
    EXPECT_EQ(shown.activated.at(0).at(0).value<PartId>(), PartId(UuidBytes{2}));
    EXPECT_EQ(shown.at(), 1);
}

TEST(CutawayView, TheLineBeneathTellsOfThePartPointedAtElseOfTheCurrentOne)
{
    ShownCutaway shown;
    const QString hint = shown.view.caption();
    shown.press({Qt::Key_End});
    EXPECT_EQ(shown.view.caption().toStdString(), "What was found of the pad.");
    QTest::mouseMove(&shown.view, shown.view.geometryNow().parts[1].body.center().toPoint());
    EXPECT_EQ(shown.view.caption().toStdString(), "What was found of the compressor.");
    QTest::mouseMove(&shown.view, QPoint(3, 3));
    EXPECT_EQ(shown.view.caption().toStdString(), "What was found of the pad.");
    shown.view.setCurrent(PartId());
    EXPECT_EQ(shown.view.caption(), hint);
}

TEST(CutawayView, IsNamedAndItsDescriptionFollowsTheCurrentPart)
{
    ShownCutaway shown;
    EXPECT_FALSE(shown.view.accessibleName().isEmpty());
    shown.press({Qt::Key_End});
    EXPECT_EQ(shown.view.accessibleDescription().toStdString(), "What was found of the pad.");
}

TEST(CutawayView, AScreenReaderMeetsEachPartAsAnItemOfItsOwn)
{
    ShownCutaway shown;
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&shown.view);
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->childCount(), 3);
    EXPECT_EQ(list->focusChild(), nullptr);
    QAccessibleInterface* motor = list->child(2);
    EXPECT_EQ(motor->text(QAccessible::Name).toStdString(), "fan-motor");
    EXPECT_EQ(motor->text(QAccessible::Description).toStdString(), "What was found of the fan-motor.");
    EXPECT_EQ(list->indexOfChild(motor), 2);
    EXPECT_EQ(motor->parent(), list);
    EXPECT_TRUE(QRect(shown.view.mapToGlobal(QPoint()), shown.view.size()).contains(motor->rect()));
    EXPECT_EQ(list->childAt(motor->rect().center().x(), motor->rect().center().y()), motor);

    ASSERT_NE(motor->actionInterface(), nullptr);
    motor->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(shown.activated.count(), 1);
    EXPECT_EQ(shown.activated.at(0).at(0).value<PartId>(), PartId(UuidBytes{3}));

    shown.press({Qt::Key_Home});
    EXPECT_TRUE(motor->state().selected);
    shown.view.setContent({"heat-pump", {named("pad", 1)}});
    EXPECT_EQ(list->childCount(), 1);
    EXPECT_FALSE(motor->isValid()) << "what is kept of it by a reader says that it is gone";
}

TEST(CutawayView, NewContentKeepsTheCurrentPartUnlessItIsGone)
{
    ShownCutaway shown;
    shown.view.setCurrent(PartId(UuidBytes{2}));
    CutawayPart compressor = named("compressor", 2);
    compressor.grade = Grade::poor;
    shown.view.setContent({"heat-pump", {compressor}});
    EXPECT_EQ(shown.at(), 2);
    shown.view.setContent({"heat-pump", {named("pad", 1)}});
    EXPECT_TRUE(shown.view.current().isNull());
    shown.view.setContent({"split-air-conditioner", {}});
    shown.press({Qt::Key_Left, Qt::Key_Return, Qt::Key_Home});
    EXPECT_TRUE(shown.view.current().isNull());
    EXPECT_EQ(shown.activated.count(), 0);
}

TEST(CutawayView, OtherKeysAreLeftToThePage)
{
    ShownCutaway shown;
    QKeyEvent three(QEvent::KeyPress, Qt::Key_3, Qt::NoModifier);
    QCoreApplication::sendEvent(&shown.view, &three);
    EXPECT_FALSE(three.isAccepted());
}

} // namespace padside
