// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How a person learns lives from their records, uses some and puts ours back: once by keys alone, once by mouse alone.

#include "app/window_program.h"
#include "core/catalogue/own_changes.h"
#include "core/outlook/kind_lesson.h"
#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "tests/app/command_runner.h"
#include "ui/pages/track/rates_model.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QMenuBar>
#include <QPushButton>
#include <QSettings>
#include <QStyleOptionViewItem>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

class LearningByHand : public ::testing::Test
{
protected:
    LearningByHand()
        : m_file(m_folder.filePath(u"small.padside"_s))
        , m_program(*qobject_cast<QApplication*>(qApp))
    {
        QSettings().clear();
        EXPECT_EQ(run({"demo", "--out", m_file.toStdString(), "--units", "2", "--years", "2", "--no-photos"}).exitCode,
                  exitDone);
        EXPECT_EQ(m_program.open(m_file), WindowProgram::Opened::here);
        awaitWindow();
    }
    ~LearningByHand() override { QSettings().clear(); }

    [[nodiscard]] MainWindow& window() const { return *m_program.window(); }
    template <typename Widget> [[nodiscard]] Widget& part(const QString& name) const
    {
        return *window().findChild<Widget*>(name);
    }
    [[nodiscard]] QPushButton& button(const QString& name) const { return part<QPushButton>(name); }
    [[nodiscard]] QTableView& table() const { return part<QTableView>(u"rates"_s); }
    [[nodiscard]] const RatesModel& lessons() const { return window().findChild<RatesPanel*>()->model(); }

    /// Accepting and putting back make the window anew.
    void awaitWindow()
    {
        ASSERT_TRUE(QTest::qWaitFor([this] { return m_program.window() != m_before; }, 30'000));
        m_before = m_program.window();
        window().activateWindow(); // where no window manager does
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
    }
    void awaitLessons() const
    {
        ASSERT_TRUE(
            QTest::qWaitFor([this] { return button(u"learn"_s).isEnabled() && lessons().anyLearnt(); }, 120'000));
        ASSERT_GT(lessons().rowCount(), 3);
    }
    /// What the file has as learned of this lesson's life.
    [[nodiscard]] bool isKept(const KindLesson& lesson) const
    {
        const auto store = Store::open(m_file, Store::Access::readOnly);
        const Catalogue kept = Catalogue::load(shippedCatalogue(), store->ownCatalogue().changes()).value();
        return lifeLearntOn(kept, lesson.partKind, lesson.soils).has_value();
    }

    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr) << "no key would be heard";
        QTest::keyClick(focus, key, modifiers);
    }
    void click(const QString& name) const
    {
        ASSERT_TRUE(button(name).isVisible() && button(name).isEnabled()) << name.toStdString();
        QTest::mouseClick(&button(name), Qt::LeftButton);
    }
    /// The box before the name of a part kind.
    [[nodiscard]] QPoint boxOf(int row) const
    {
        const QRect cell = table().visualRect(table().model()->index(row, RatesModel::kind));
        return {cell.left() + cell.height() / 2, cell.center().y()};
    }

    QTemporaryDir m_folder;
    QString m_file;
    WindowProgram m_program;
    const MainWindow* m_before = nullptr;
};

TEST_F(LearningByHand, ByKeysAlone)
{
    press(Qt::Key_4, Qt::ControlModifier);
    press(Qt::Key_L, Qt::AltModifier); // how long parts last
    ASSERT_TRUE(button(u"learn"_s).isVisible());
    press(Qt::Key_T, Qt::AltModifier);
    awaitLessons();
    const std::vector<KindLesson> found{lessons().lesson(0), lessons().lesson(1), lessons().lesson(2)};

    EXPECT_EQ(QApplication::focusWidget(), &table()) << "the lessons have the focus as soon as they are there";
    press(Qt::Key_Space);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Right);
    press(Qt::Key_Space); // in any column
    EXPECT_EQ(lessons().chosen().size(), 2U);
    press(Qt::Key_C, Qt::AltModifier);
    awaitWindow();
    EXPECT_EQ(window().place()->page, Place::Page::rates) << "where they were";
    EXPECT_TRUE(isKept(found[0]));
    EXPECT_FALSE(isKept(found[1])) << "was not chosen";
    EXPECT_TRUE(isKept(found[2]));
    EXPECT_EQ(lessons().rowCount(), 2) << "those in use";

    EXPECT_EQ(QApplication::focusWidget(), &table());
    press(Qt::Key_Space);
    press(Qt::Key_O, Qt::AltModifier);
    awaitWindow();
    EXPECT_EQ(lessons().rowCount(), 1);
    EXPECT_NE(isKept(found[0]), isKept(found[2])) << "one of the two is ours again";
    press(Qt::Key_A, Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return lessons().chosen().size() == 1; })); // a key holds a button a moment
    press(Qt::Key_O, Qt::AltModifier);
    awaitWindow();
    EXPECT_EQ(lessons().rowCount(), 0);
    EXPECT_FALSE(isKept(found[0]) || isKept(found[2]));
    EXPECT_EQ(QApplication::focusWidget(), &button(u"learn"_s)) << "learning again is one key away";
}

TEST_F(LearningByHand, ByMouseAlone)
{
    window().showTrack();
    auto* tabs = part<QTabWidget>(u"track"_s).tabBar();
    QTest::mouseClick(tabs, Qt::LeftButton, {}, tabs->tabRect(1).center());
    click(u"learn"_s);
    awaitLessons();
    const KindLesson first = lessons().lesson(0);
    const KindLesson second = lessons().lesson(1);
    EXPECT_FALSE(button(u"accept"_s).isEnabled()) << "nothing is chosen";
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, boxOf(0));
    EXPECT_EQ(lessons().chosen().size(), 1U);
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, boxOf(0));
    EXPECT_TRUE(lessons().chosen().empty()) << "a second click takes it back";
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, boxOf(1));
    click(u"accept"_s);
    awaitWindow();
    EXPECT_FALSE(isKept(first));
    EXPECT_TRUE(isKept(second));
    ASSERT_EQ(lessons().rowCount(), 1);

    click(u"all"_s);
    EXPECT_FALSE(button(u"accept"_s).isEnabled()) << "nothing new was learned";
    click(u"putBack"_s);
    awaitWindow();
    EXPECT_FALSE(isKept(second));
    EXPECT_FALSE(table().isVisible()) << "nothing is left to list";
}

} // namespace padside::test
