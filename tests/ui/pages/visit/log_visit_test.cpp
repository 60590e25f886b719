// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"
#include "tests/ui/pages/visit/visit_fixture.h"
#include "ui/models/visit_log.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

namespace padside::test {

TEST_F(VisitPageTest, AVisitIsLoggedByKeysAlone)
{
    open();
    start();
    EXPECT_EQ(m_page->zone(), zoneId("shaft")) << "the first in the catalogue's order";
    key(Qt::Key_1);
    key(Qt::Key_Return);
    key(Qt::Key_Down);
    key(Qt::Key_3); // crown
    key(Qt::Key_W);
    key(Qt::Key_T);
    type(QStringLiteral("oil below"));
    key(Qt::Key_Escape);
    key(Qt::Key_Return);
    key(Qt::Key_N); // shell: not seen, under ice or snow
    key(Qt::Key_3);
    key(Qt::Key_Down);
    key(Qt::Key_S); // bottom: same as last time
    key(Qt::Key_D);
    key(Qt::Key_Space);
    EXPECT_EQ(m_page->zone(), zoneId("case"));
    key(Qt::Key_Up);

    const auto crown = finding("crown");
    ASSERT_TRUE(crown.has_value());
    EXPECT_EQ(crown->grade(), Grade::marked);
    EXPECT_EQ(crown->wetness, Wetness::wet);
    EXPECT_EQ(crown->note, "oil below");
    EXPECT_EQ(crown->on, day("2026-05-04"));
    const auto shell = finding("shell");
    ASSERT_TRUE(shell.has_value());
    EXPECT_EQ(shell->sight, (std::variant<Grade, NotSeenReason>(NotSeenReason::iceOrSnow)));
    const auto bottom = finding("bottom");
    ASSERT_TRUE(bottom.has_value());
    EXPECT_EQ(bottom->grade(), Grade::marked);
    EXPECT_EQ(bottom->wetness, Wetness::dry);
    EXPECT_EQ(m_page->zone(), zoneId("bottom"));
    EXPECT_EQ(find<QLabel>("progress")->text(), QStringLiteral("4 of 6 zones"));
}

TEST_F(VisitPageTest, AGradeCanBeChangedUntilTheVisitIsClosed)
{
    open();
    start();
    goTo("crown");
    key(Qt::Key_2);
    key(Qt::Key_4);
    ASSERT_TRUE(finding("crown").has_value());
    EXPECT_EQ(finding("crown")->grade(), Grade::poor);
    EXPECT_EQ(std::ranges::count(record().findings, m_visit, &Finding::visitId), 1);
}

TEST_F(VisitPageTest, TheLastGradeIsShownButNeverTakenByItself)
{
    open();
    start();
    goTo("bottom");
    EXPECT_TRUE(find<QLabel>("lastHeading")->text().contains(QStringLiteral("3 marked")));
    EXPECT_TRUE(find<QLabel>("lastText")->text().contains(QStringLiteral("rust under the strap")));
    key(Qt::Key_Return);
    EXPECT_FALSE(finding("bottom").has_value());
    goTo("leads");
    EXPECT_FALSE(find<QPushButton>("sameAsLastTime")->isEnabled()) << "never seen before";
}

TEST_F(VisitPageTest, WetAndNoteWaitForTheGradeTheyBelongTo)
{
    open();
    start();
    goTo("crown");
    key(Qt::Key_M);
    key(Qt::Key_T);
    type(QStringLiteral("sweating"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(finding("crown").has_value()) << "no grade was given";
    killAndReopen();
    goTo("crown");
    EXPECT_EQ(find<QPlainTextEdit>("zoneNote")->toPlainText(), QStringLiteral("sweating"));
    EXPECT_TRUE(find<QPushButton>("wetness-damp")->isChecked());
    key(Qt::Key_2);
    const auto crown = finding("crown");
    ASSERT_TRUE(crown.has_value());
    EXPECT_EQ(crown->wetness, Wetness::damp);
    EXPECT_EQ(crown->note, "sweating");
}

TEST_F(VisitPageTest, AnOpenVisitIsResumedAtTheFirstZoneNotLookedAt)
{
    open();
    start();
    const VisitId first = m_visit;
    key(Qt::Key_2);
    key(Qt::Key_Return);
    key(Qt::Key_T);
    type(QStringLiteral("half a sen"));
    killAndReopen(); // asks for a fall visit: the open one comes first
    EXPECT_EQ(m_visit, first);
    EXPECT_EQ(m_page->zone(), zoneId("leads"));
    EXPECT_EQ(find<QPlainTextEdit>("zoneNote")->toPlainText(), QStringLiteral("half a sen"));
    EXPECT_EQ(m_page->sheet().visit.reason, VisitReason::spring);
}

TEST_F(VisitPageTest, ConditionsAreKeptAsEntered)
{
    open();
    start();
    typeInto("airTemperature", QStringLiteral("68 F"));
    typeInto("humidity", QStringLiteral("55"));
    auto* running = find<QComboBox>("running");
    running->setCurrentIndex(running->findData(QStringLiteral("cooling")));
    Q_EMIT running->activated(running->currentIndex());
    typeInto("technician", QStringLiteral("B. Second"));
    const auto visit = m_store->visits().visit(m_visit);
    ASSERT_TRUE(visit.has_value());
    EXPECT_NEAR(visit->conditions.airTemperatureK.value_or(0), 293.15, 1e-9);
    EXPECT_NEAR(visit->conditions.relativeHumidity.value_or(0), 0.55, 1e-12);
    EXPECT_EQ(visit->conditions.running, Running::cooling);
    EXPECT_EQ(visit->technician, "B. Second");
}

TEST_F(VisitPageTest, AfterWorkTheZoneIsGradedAgainAsLeft)
{
    open();
    start();
    goTo("bottom");
    EXPECT_FALSE(find("asLeft")->isVisible());
    key(Qt::Key_4);
    find<QPushButton>("work-brush-and-coat")->click();
    find<QLineEdit>("workProduct")->setFocus();
    type(QStringLiteral("zinc-rich primer"));
    find<QLineEdit>("workDryIn")->setFocus();
    type(QStringLiteral("4"));
    key(Qt::Key_Return);
    ASSERT_EQ(record().treatments.size(), 1U);
    const Treatment work = record().treatments.front();
    EXPECT_EQ(work.kind, TreatmentKind::brushAndCoat);
    EXPECT_EQ(work.zoneId, zoneId("bottom"));
    EXPECT_EQ(work.product, "zinc-rich primer");
    ASSERT_TRUE(work.dryBy.has_value());
    EXPECT_EQ(work.dryBy->utc - springMorning().utc, std::chrono::hours(4));

    find("zonePanel")->setFocus();
    ASSERT_TRUE(find("asLeft")->isVisible());
    key(Qt::Key_L);
    key(Qt::Key_2);
    EXPECT_EQ(finding("bottom")->grade(), Grade::poor);
    ASSERT_TRUE(finding("bottom", Phase::asLeft).has_value());
    EXPECT_EQ(finding("bottom", Phase::asLeft)->grade(), Grade::worn);
}

TEST_F(VisitPageTest, AReplacedPartMakesRoomForANewOneInItsPlace)
{
    open();
    start();
    goTo("shaft");
    key(Qt::Key_5);
    find<QPushButton>("work-replace")->click();
    find<QLineEdit>("workNote")->setFocus();
    type(QStringLiteral("bearing seized"));
    key(Qt::Key_Return);
    const UnitRecord now = record();
    ASSERT_EQ(now.parts.size(), 4U);
    const auto old = std::ranges::find_if(now.parts, [](const Part& part) { return part.removedOn.has_value(); });
    ASSERT_NE(old, now.parts.end());
    EXPECT_EQ(old->kind, "fan-motor");
    EXPECT_EQ(old->removedBecause, "bearing seized");
    const auto fresh = std::ranges::find_if(now.parts, [](const Part& part) { return part.replaces.has_value(); });
    ASSERT_NE(fresh, now.parts.end());
    EXPECT_EQ(fresh->fittedOn, day("2026-05-04"));
    EXPECT_EQ(fresh->zones.size(), 2U);
    EXPECT_EQ(now.treatments.front().kind, TreatmentKind::replace);
}

TEST_F(VisitPageTest, APromiseToLookAgainIsKeptWithItsWindow)
{
    open();
    start();
    goTo("bottom");
    typeInto("followUpWhy", QStringLiteral("was wet, see it dry"));
    ASSERT_EQ(record().followUps.size(), 1U);
    EXPECT_EQ(record().followUps.front().zoneId, zoneId("bottom"));
    EXPECT_EQ(record().followUps.front().earliest, day("2026-05-11"));
    EXPECT_EQ(record().followUps.front().latest, day("2026-06-03"));
}

} // namespace padside::test
