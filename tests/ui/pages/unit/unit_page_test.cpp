// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/timeline_view.h"
#include "ui/pages/unit/finding_tree_model.h"
#include "ui/pages/unit/next_model.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QTreeView>

#include <algorithm>

namespace padside::test {

TEST_F(UnitPageTest, ShowsWhoTheUnitIsAndTheFlagsSentences)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    EXPECT_EQ(find<QLabel>("unitTag")->text(), QStringLiteral("HB-01"));
    EXPECT_TRUE(find<QLabel>("unitWhere")->text().contains(QStringLiteral("Quay House")));
    EXPECT_TRUE(find<QLabel>("unitFacts")->text().contains(QStringLiteral("13"))) << "from June 2011 to June 2025";
    const UnitReview review = m_book->review(m_book->record(record.unit.id));
    ASSERT_FALSE(review.flags.empty());
    const QAbstractItemModel* next = find<QAbstractItemView>("nextList")->model();
    const QModelIndexList found
        = next->match(next->index(0, 0), Qt::DisplayRole, m_book->speaker().said(review.flags.front().sentence));
    EXPECT_EQ(found.size(), 1);
}

TEST_F(UnitPageTest, AKeyStartsAVisit)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    const QSignalSpy started(m_page.get(), &UnitPage::startVisitRequested);
    QTest::keyClick(find<QPushButton>("startFall"), Qt::Key_Space);
    QTest::keyClick(find<QPushButton>("startCallOut"), Qt::Key_Return);
    ASSERT_EQ(started.count(), 2);
    EXPECT_EQ(started.at(0).at(0).value<UnitId>(), record.unit.id);
    EXPECT_EQ(started.at(0).at(1).value<VisitReason>(), VisitReason::fall);
    EXPECT_EQ(started.at(1).at(1).value<VisitReason>(), VisitReason::callOut);
}

TEST_F(UnitPageTest, TheSummaryIsThatOfTheLastVisit)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    const QSignalSpy summary(m_page.get(), &UnitPage::summaryRequested);
    QTest::keyClick(find<QPushButton>("visitSummary"), Qt::Key_Space);
    ASSERT_EQ(summary.count(), 1);
    EXPECT_EQ(summary.at(0).at(0).value<VisitId>(), record.visits.back().id);
}

TEST_F(UnitPageTest, AnOpenVisitIsResumedAndNoOtherStarted)
{
    auto builder = worseningUnit();
    builder.visit("2025-05-30", VisitReason::callOut, false);
    const UnitRecord record = builder.build();
    write(record);
    show(record.unit.id);
    const QSignalSpy asked(m_page.get(), &UnitPage::visitRequested);
    EXPECT_FALSE(find<QPushButton>("startSpring")->isVisible());
    auto* resume = find<QPushButton>("resumeVisit");
    ASSERT_TRUE(resume->isVisible());
    EXPECT_TRUE(resume->text().contains(QStringLiteral("call-out")));
    QTest::keyClick(resume, Qt::Key_Space);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.at(0).at(0).value<VisitId>(), record.visits.back().id);
}

TEST_F(UnitPageTest, EnterOnAMarkOfTheHistoryOpensItsVisit)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    const QSignalSpy asked(m_page.get(), &UnitPage::visitRequested);
    auto* timeline = find<TimelineView>("timeline");
    QTest::keyClick(timeline, Qt::Key_Home);
    QTest::keyClick(timeline, Qt::Key_Home);
    QTest::keyClick(timeline, Qt::Key_Return);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.at(0).at(0).value<VisitId>(), record.visits.front().id);
    EXPECT_TRUE(find<QLabel>("markSentence")->text().contains(QStringLiteral("visit")));
}

TEST_F(UnitPageTest, EnterOnAFindingOpensTheVisitItWasFoundAt)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    const QSignalSpy asked(m_page.get(), &UnitPage::visitRequested);
    auto* tree = find<QTreeView>("findingTree");
    const auto* model = dynamic_cast<const FindingTreeModel*>(tree->model());
    ASSERT_NE(model, nullptr);
    tree->setCurrentIndex(model->indexOf(record.parts[0].zones[2].id));
    QTest::keyClick(tree, Qt::Key_Return);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.at(0).at(0).value<VisitId>(), record.visits.back().id);
}

TEST_F(UnitPageTest, AnEntryMadeElsewhereShowsAtOnceAndKeepsTheSelection)
{
    auto builder = worseningUnit();
    builder.visit("2025-05-30", VisitReason::callOut, false);
    const UnitRecord record = builder.build();
    write(record);
    show(record.unit.id);
    auto* tree = find<QTreeView>("findingTree");
    const auto* model = dynamic_cast<const FindingTreeModel*>(tree->model());
    ASSERT_NE(model, nullptr);
    const ZoneId bottom = record.parts[0].zones[2].id;
    tree->setCurrentIndex(model->indexOf(bottom));
    ASSERT_TRUE(findSpentElsewhere(record, bottom));
    EXPECT_EQ(model->zoneAt(tree->currentIndex()), bottom);
    EXPECT_EQ(
        tree->currentIndex().siblingAtColumn(FindingTreeModel::gradeColumn).data(FindingTreeModel::gradeRole).toInt(),
        5);
}

TEST_F(UnitPageTest, AHiddenPageIsBroughtUpToDateWhenItIsShownAgain)
{
    auto builder = worseningUnit();
    builder.visit("2025-05-30", VisitReason::callOut, false);
    const UnitRecord record = builder.build();
    write(record);
    show(record.unit.id);
    const auto grade = [this, &record] {
        const auto* model = dynamic_cast<const FindingTreeModel*>(find<QTreeView>("findingTree")->model());
        return model->indexOf(record.parts[0].zones[2].id)
            .siblingAtColumn(FindingTreeModel::gradeColumn)
            .data(FindingTreeModel::gradeRole)
            .toInt();
    };
    const int before = grade();
    m_page->hide();
    ASSERT_TRUE(findSpentElsewhere(record, record.parts[0].zones[2].id));
    EXPECT_EQ(grade(), before) << "nobody sees it: a visit changes its unit at every key";
    m_page->show();
    QCoreApplication::processEvents();
    EXPECT_EQ(grade(), 5);
}

TEST_F(UnitPageTest, AnotherUnitsChangeLeavesThePageAlone)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    find<TimelineView>("timeline")->select(MarkPlace{0, 0, 1});
    Q_EMIT m_book->unitChanged(UnitId(UuidBytes{7}));
    EXPECT_EQ(find<TimelineView>("timeline")->selected(), (MarkPlace{0, 0, 1}));
    EXPECT_EQ(m_page->unit(), record.unit.id);
}

TEST_F(UnitPageTest, ChoosingAFlagGoesToItsZoneInFindingsAndHistory)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    auto* next = find<QAbstractItemView>("nextList");
    next->setFocus();
    QTest::keyClick(next, Qt::Key_Down);
    const auto* nextModel = dynamic_cast<const NextModel*>(next->model());
    ASSERT_NE(nextModel, nullptr);
    QModelIndex flagged;
    for (int row = 0; row < nextModel->rowCount() && !flagged.isValid(); ++row) {
        if (nextModel->zoneAt(nextModel->index(row)))
            flagged = nextModel->index(row);
    }
    ASSERT_TRUE(flagged.isValid());
    next->setCurrentIndex(flagged);
    const auto* tree = find<QTreeView>("findingTree");
    const auto* model = dynamic_cast<const FindingTreeModel*>(tree->model());
    ASSERT_NE(model, nullptr);
    EXPECT_EQ(model->zoneAt(tree->currentIndex()), nextModel->zoneAt(flagged));
    EXPECT_TRUE(find<TimelineView>("timeline")->selected().has_value());
}

TEST_F(UnitPageTest, APartOfTheDrawingLeadsToItsWorstZoneInFindingsAndHistory)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    auto* cutaway = find<CutawayView>("cutaway");
    ASSERT_EQ(cutaway->content().parts.size(), 2U);
    cutaway->setCurrent(record.parts[0].id);
    QTest::keyClick(cutaway, Qt::Key_Return);
    auto* tree = find<QTreeView>("findingTree");
    const auto* model = dynamic_cast<const FindingTreeModel*>(tree->model());
    ASSERT_NE(model, nullptr);
    EXPECT_EQ(model->zoneAt(tree->currentIndex()), record.parts[0].zones[2].id) << "bottom is the worst";
    EXPECT_TRUE(find<TimelineView>("timeline")->selected().has_value());
}

TEST_F(UnitPageTest, AChosenFindingShowsItsPartInTheDrawingAndAnEntryChangesItsMark)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    auto* tree = find<QTreeView>("findingTree");
    const auto* model = dynamic_cast<const FindingTreeModel*>(tree->model());
    ASSERT_NE(model, nullptr);
    tree->setCurrentIndex(model->indexOf(record.parts[1].zones[0].id));
    auto* cutaway = find<CutawayView>("cutaway");
    EXPECT_EQ(cutaway->current(), record.parts[1].id);

    auto builder = worseningUnit();
    builder.visit("2025-05-20", VisitReason::callOut, false).graded("root", 5);
    const UnitRecord after = builder.build();
    m_book->change(record.unit.id, [&] {
        m_store->visits().open(after.visits.back());
        m_store->visits().put(after.findings.back());
    });
    EXPECT_EQ(cutaway->current(), record.parts[1].id);
    const auto part = std::ranges::find(cutaway->content().parts, record.parts[1].id, &CutawayPart::id);
    ASSERT_NE(part, cutaway->content().parts.end());
    EXPECT_EQ(part->grade, Grade::spent);
}

TEST_F(UnitPageTest, AUnitThatIsNotThereIsSaidAndNothingIsShown)
{
    const QSignalSpy failed(m_book.get(), &RecordBook::failed);
    show(UnitId(UuidBytes{9}));
    EXPECT_EQ(failed.count(), 1);
    EXPECT_FALSE(find<QLabel>("unitTag")->isVisible());
}

TEST_F(UnitPageTest, TheNameplateUnfoldsByKey)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    EXPECT_FALSE(find<QWidget>("nameplate")->isVisible());
    QTest::keyClick(find<QToolButton>("unfoldNameplate"), Qt::Key_Space);
    EXPECT_TRUE(find<QWidget>("nameplate")->isVisible());
}

TEST_F(UnitPageTest, TheNameplateSaysHowItsRefrigerantBurns)
{
    UnitRecord record = worseningUnit().build();
    record.unit.refrigerant = "R-32";
    write(record);
    show(record.unit.id);
    QTest::keyClick(find<QToolButton>("unfoldNameplate"), Qt::Key_Space);
    const auto* says = find<QLabel>("refrigerantFacts");
    EXPECT_TRUE(says->isVisible());
    EXPECT_TRUE(says->text().startsWith(QStringLiteral("R-32")));
}

TEST_F(UnitPageTest, EverythingThatTakesTheFocusHasANameAndTabReachesIt)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    for (QWidget* widget : m_page->findChildren<QWidget*>()) {
        if (widget->focusPolicy() != Qt::NoFocus && widget->isVisible() && !widget->inherits("QScrollBar")) {
            QAccessibleInterface* accessible = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(accessible, nullptr);
            EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
        }
    }
    // The chain of focus visits list, history and findings in the order in which they are read.
    std::vector<const QWidget*> order;
    const QWidget* widget = m_page.get();
    do {
        widget = widget->nextInFocusChain();
        order.push_back(widget);
    } while (widget != m_page.get() && order.size() < 500);
    const auto place = [&order](const QWidget* one) { return std::ranges::find(order, one) - order.begin(); };
    EXPECT_LT(place(find<QToolButton>("unfoldNameplate")), place(find<QPushButton>("startSpring")));
    EXPECT_LT(place(find<QPushButton>("startSpring")), place(find<QPushButton>("visitSummary")));
    EXPECT_LT(place(find<QPushButton>("visitSummary")), place(find<QWidget>("cutaway")));
    EXPECT_LT(place(find<QWidget>("cutaway")), place(find<QWidget>("nextList")));
    EXPECT_LT(place(find<QWidget>("nextList")), place(find<QWidget>("timeline")));
    EXPECT_LT(place(find<QWidget>("timeline")), place(find<QWidget>("findingTree")));
}

TEST_F(UnitPageTest, FitsASmallWindow)
{
    const UnitRecord record = worseningUnit().build();
    write(record);
    show(record.unit.id);
    // A list of units stands beside the page in a window of 1024 by 700.
    EXPECT_LE(m_page->minimumSizeHint().width(), 740);
    EXPECT_LE(m_page->minimumSizeHint().height(), 620);
}

} // namespace padside::test
