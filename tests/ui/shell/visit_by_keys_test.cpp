// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// A whole spring visit by the keyboard alone, counted. What is typed (numbers, products, notes) is not counted.

#include "core/store/record_reader.h"
#include "core/store/visit_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QDialog>
#include <QMenuBar>
#include <QTest>

#include <algorithm>
#include <iostream>

namespace padside::test {

namespace {

constexpr int mostPresses = 90;
constexpr int zonesGraded = 15;

} // namespace

class VisitByKeysTest : public WindowFixture
{
protected:
    VisitByKeysTest()
        : m_window(*m_book, Theme::light())
    {
        m_window.resize(1280, 800);
        m_window.show();
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window));
        for (const UnitId& unit : units()) {
            if (!m_store->visits().openVisitOf(unit))
                m_unit = unit;
        }
        m_window.showUnit(m_unit);
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        ++m_presses;
        QWidget* target = QApplication::activePopupWidget();
        if (!target)
            target = QApplication::focusWidget();
        QTest::keyClick(target ? target : &m_window, key, modifiers);
    }
    static void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    [[nodiscard]] VisitPage& page() const { return *m_window.findChild<VisitPage*>(); }
    [[nodiscard]] UnitRecord record() const { return m_store->records().unitRecord(m_unit); }

    MainWindow m_window;
    UnitId m_unit;
    int m_presses = 0;
};

TEST_F(VisitByKeysTest, ASpringVisitTakesAtMostNinetyPressesBesidesWhatIsTyped)
{
    press(Qt::Key_V, Qt::AltModifier); // the menu of visits
    press(Qt::Key_S);
    ASSERT_TRUE(page().isVisible());
    const VisitId visit = page().sheet().visit.id;
    EXPECT_EQ(page().sheet().visit.reason, VisitReason::spring);
    ASSERT_GE(page().sheet().zones.size(), static_cast<std::size_t>(zonesGraded));

    std::vector<ZoneId> graded;
    const std::array grades{Qt::Key_1, Qt::Key_2, Qt::Key_2, Qt::Key_3, Qt::Key_1};
    for (int zone = 0; zone < zonesGraded; ++zone) {
        graded.push_back(*page().zone());
        press(grades[static_cast<std::size_t>(zone) % grades.size()]);
        if (zone % 5 == 3) { // the marked ones: wet, and two of them are coated
            press(Qt::Key_W);
            if (zone < 10) {
                press(Qt::Key_F4);
                press(Qt::Key_2);
                type(QStringLiteral("zinc-rich primer"));
                press(Qt::Key_Return);
                press(Qt::Key_Escape);
            }
        }
        press(Qt::Key_Return);
    }
    press(Qt::Key_F3);
    for (const char* value : {"20", "21", "22", "23", "24"}) {
        type(QString::fromLatin1(value));
        press(Qt::Key_Return);
    }
    press(Qt::Key_F6);
    press(Qt::Key_Return); // close
    press(Qt::Key_Return); // yes

    std::cout << "presses: " << m_presses << " for " << zonesGraded << " zones, 5 readings, 2 treatments\n";
    RecordProperty("presses", m_presses);
    EXPECT_LE(m_presses, mostPresses);

    const UnitRecord now = record();
    for (std::size_t i = 0; i < graded.size(); ++i) {
        const auto finding = std::ranges::find_if(
            now.findings, [&](const Finding& one) { return one.visitId == visit && one.zoneId == graded[i]; });
        ASSERT_NE(finding, now.findings.end()) << "zone " << i + 1;
        EXPECT_EQ(finding->grade(), gradeFromNumeral(grades[i % grades.size()] - Qt::Key_0)) << "zone " << i + 1;
        EXPECT_EQ(finding->wetness, i % 5 == 3 ? std::optional(Wetness::wet) : std::nullopt) << "zone " << i + 1;
    }
    EXPECT_EQ(std::ranges::count(now.findings, visit, &Finding::visitId), zonesGraded);
    EXPECT_EQ(std::ranges::count(now.readings, visit, &Reading::visitId), 5);
    std::vector<Treatment> work;
    std::ranges::copy_if(now.treatments, std::back_inserter(work),
                         [&](const Treatment& one) { return one.visitId == visit; });
    ASSERT_EQ(work.size(), 2U);
    for (std::size_t i = 0; i < work.size(); ++i) {
        EXPECT_EQ(work[i].kind, TreatmentKind::brushAndCoat);
        EXPECT_EQ(work[i].product, "zinc-rich primer");
        EXPECT_EQ(work[i].zoneId, graded[3 + 5 * i]);
    }
    EXPECT_FALSE(m_store->visits().visit(visit)->isOpen());
    EXPECT_TRUE(m_window.findChild<PrintPage*>()->isVisible());
}

TEST_F(VisitByKeysTest, UndoAndRedoFromTheKeyboardShowThePlaceThatChanged)
{
    m_window.startVisit(m_unit, VisitReason::spring);
    const ZoneId first = *page().zone();
    const auto undo = m_window.findChild<QAction*>(QStringLiteral("undo"));
    const auto redo = m_window.findChild<QAction*>(QStringLiteral("redo"));
    ASSERT_TRUE(undo && redo);
    EXPECT_FALSE(undo->isEnabled());
    const UnitRecord before = record();
    press(Qt::Key_3);
    press(Qt::Key_Return);
    EXPECT_NE(page().zone(), first);
    EXPECT_TRUE(undo->text().contains(QStringLiteral("grade 3 on"))) << undo->text().toStdString();
    const UnitRecord after = record();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(page().zone(), first);
    EXPECT_EQ(record(), before);
    EXPECT_TRUE(redo->text().contains(QStringLiteral("grade 3 on"))) << redo->text().toStdString();
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(record(), after);

    // In a field whose text was entered, undo is the visit's; while one is typing it is the typing's.
    press(Qt::Key_F3);
    type(QStringLiteral("20"));
    press(Qt::Key_Return);
    ASSERT_EQ(record().readings.size(), after.readings.size() + 1);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(record(), after);
    type(QStringLiteral("7"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(record(), after) << "only the typing was taken back";
}

TEST_F(VisitByKeysTest, UndoIsThatOfThePageInFront)
{
    m_window.startVisit(m_unit, VisitReason::spring);
    const VisitId visit = page().sheet().visit.id;
    const auto undo = m_window.findChild<QAction*>(QStringLiteral("undo"));
    press(Qt::Key_3);
    EXPECT_TRUE(undo->isEnabled());
    const UnitRecord graded = record();
    m_window.showSeason();
    EXPECT_FALSE(undo->isEnabled()) << "no trip was moved";
    m_window.showUnit(m_unit);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(record(), graded) << "a visit that is not in sight stays as it is";
    m_window.showVisit(visit);
    EXPECT_TRUE(undo->isEnabled());
}

TEST_F(VisitByKeysTest, AClosedVisitIsNotUndoneAndTheMenuSaysWhy)
{
    m_window.startVisit(m_unit, VisitReason::spring);
    const VisitId visit = page().sheet().visit.id;
    press(Qt::Key_3);
    press(Qt::Key_F6);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_FALSE(m_store->visits().visit(visit)->isOpen());
    m_window.showVisit(visit);
    const auto undo = m_window.findChild<QAction*>(QStringLiteral("undo"));
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(undo->text().contains(QStringLiteral("correct it with a reason"))) << undo->text().toStdString();
}

TEST_F(VisitByKeysTest, TheKeysAreListedOnOneSheet)
{
    for (const Qt::Key key : {Qt::Key_F1, Qt::Key_Question}) {
        QTest::keyClick(&m_window, key);
        auto* sheet = m_window.findChild<QDialog*>(QStringLiteral("keySheet"));
        ASSERT_NE(sheet, nullptr);
        EXPECT_TRUE(sheet->isVisible());
        EXPECT_FALSE(sheet->isModal()) << "the work goes on beside it";
        sheet->close();
        m_window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&m_window));
    }
}

} // namespace padside::test
