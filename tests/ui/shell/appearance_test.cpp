// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/preferences.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/appearance.h"
#include "ui/shell/main_window.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

#include <set>

namespace padside::test {

namespace {

constexpr int smallestTarget = 44; // WCAG 2.1, 2.5.5: 44 by 44 CSS pixels

bool isTarget(const QWidget& widget)
{
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget)
        || qobject_cast<const QPlainTextEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget)
        || qobject_cast<const QAbstractSpinBox*>(&widget);
}

/// Qt's own inner parts, like the field within a date field, are reached through what they are part of.
bool isInner(const QWidget& widget)
{
    return widget.objectName().startsWith(QStringLiteral("qt_"));
}

std::string described(const QWidget& widget)
{
    return std::string(widget.metaObject()->className()) + " " + widget.objectName().toStdString() + " “"
        + widget.accessibleName().toStdString() + widget.property("text").toString().toStdString() + "”";
}

} // namespace

class AppearanceTest : public WindowFixture
{
protected:
    AppearanceTest()
        : m_appearance(*qApp)
    {
        m_appearance.wear({});
        m_window = std::make_unique<MainWindow>(*m_book, m_appearance.theme());
        QObject::connect(m_window.get(), &MainWindow::lookRequested, m_window.get(),
                         [this](const Look& look) { m_appearance.wear(look); });
        m_window->resize(1280, 800);
        m_window->show();
        m_window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        for (const UnitId& unit : units()) {
            if (!m_store->visits().openVisitOf(unit))
                m_unit = unit;
        }
    }
    void choose(const char* entry)
    {
        for (QAction* action : m_window->findChildren<QAction*>()) {
            if (action->text().startsWith(QString::fromLatin1(entry)))
                action->trigger();
        }
        QCoreApplication::processEvents();
    }
    /// Waits for what is read beside the window: it would come in while the page is looked over.
    void settle() const
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_window->findChild<FleetReviewer*>()->isRunning(); }));
        QCoreApplication::processEvents();
    }
    [[nodiscard]] VisitPage& page() const { return *m_window->findChild<VisitPage*>(); }

    Appearance m_appearance;
    std::unique_ptr<MainWindow> m_window;
    UnitId m_unit;
};

TEST_F(AppearanceTest, AnotherLookKeepsPageZoneAndWhatIsBeingTyped)
{
    m_window->startVisit(m_unit, VisitReason::spring);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_2);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    const auto zone = page().zone();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F3);
    auto* typing = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(typing, nullptr);
    QTest::keyClicks(typing, QStringLiteral("12"));
    for (const char* entry : {"Sunli&ght", "Field si&ze", "&Dark", "Field si&ze", "&Light"}) {
        choose(entry);
        EXPECT_TRUE(page().isVisible()) << entry;
        EXPECT_EQ(page().zone(), zone) << entry;
        EXPECT_EQ(QApplication::focusWidget(), typing) << entry;
        EXPECT_EQ(typing->text(), QStringLiteral("12")) << entry;
        EXPECT_TRUE(page().steps().canUndo()) << entry;
    }
    EXPECT_EQ(m_appearance.look(), Look{});
}

TEST_F(AppearanceTest, ColoursAndSizesFollowAtOnce)
{
    const int letters = QFontInfo(m_window->font()).pixelSize();
    choose("Sunli&ght");
    choose("Field si&ze");
    EXPECT_EQ(m_appearance.look(), (Look{ThemeKind::sunlight, true}));
    EXPECT_EQ(m_window->palette().color(QPalette::WindowText), Theme::sunlight().ink);
    EXPECT_GT(QFontInfo(m_window->font()).pixelSize(), letters);
    choose("Field si&ze");
    EXPECT_EQ(QFontInfo(m_window->font()).pixelSize(), letters);
}

TEST_F(AppearanceTest, WithoutAChosenThemeTheComputersIsWorn)
{
    Preferences preferences;
    EXPECT_EQ(lookFor(preferences, true), (Look{ThemeKind::dark, false}));
    EXPECT_EQ(lookFor(preferences, false), (Look{ThemeKind::light, false}));
    preferences.theme = QStringLiteral("sunlight");
    preferences.fieldSize = true;
    EXPECT_EQ(lookFor(preferences, true), (Look{ThemeKind::sunlight, true}));
    for (const char* none : {"plaid", "paper"}) {
        preferences.theme = QString::fromLatin1(none);
        EXPECT_EQ(lookFor(preferences, false).theme, ThemeKind::light) << none << " is not one for screens";
    }
}

TEST_F(AppearanceTest, InFieldSizeNothingThatIsPressedOnAVisitIsSmall)
{
    m_window->startVisit(m_unit, VisitReason::spring);
    choose("Field si&ze");
    auto* side = page().findChild<QTabWidget*>(QStringLiteral("side"));
    int looked = 0;
    for (int tab = 0; tab < side->count(); ++tab) {
        side->setCurrentIndex(tab);
        if (tab == 1)
            QTest::keyClick(page().findChild<QWidget*>(QStringLiteral("treatmentPanel")), Qt::Key_2);
        QCoreApplication::processEvents();
        for (const QWidget* widget : page().findChildren<QWidget*>()) {
            if (!widget->isVisible() || isInner(*widget))
                continue;
            if (isTarget(*widget)) {
                ++looked;
                EXPECT_GE(widget->height(), smallestTarget) << described(*widget);
                EXPECT_GE(widget->width(), smallestTarget) << described(*widget);
            }
            if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
                for (int i = 0; i < tabs->count(); ++i)
                    EXPECT_GE(tabs->tabRect(i).height(), smallestTarget) << tabs->tabText(i).toStdString();
            }
        }
    }
    EXPECT_GT(looked, 60);
    const auto* list = page().findChild<QAbstractItemView*>(QStringLiteral("zoneList"));
    for (int row = 0; row < list->model()->rowCount(); ++row) {
        const QModelIndex index = list->model()->index(row, 0);
        if (index.flags().testFlag(Qt::ItemIsSelectable)) { // not the names of parts
            EXPECT_GE(list->visualRect(index).height(), smallestTarget) << index.data().toString().toStdString();
        }
    }
    for (QAction* action : m_window->menuBar()->actions()) {
        EXPECT_GE(m_window->menuBar()->actionGeometry(action).height(), smallestTarget) << action->text().toStdString();
        for (QAction* entry : action->menu()->actions()) {
            if (!entry->isSeparator()) {
                EXPECT_GE(action->menu()->actionGeometry(entry).height(), smallestTarget)
                    << entry->text().toStdString();
            }
        }
    }
}

TEST_F(AppearanceTest, InFieldSizeNothingThatIsPressedOnTheOtherPagesIsSmall)
{
    choose("Field si&ze");
    const std::vector<std::pair<std::string, std::function<void()>>> pages{
        {"unit", [&] { m_window->showUnit(m_unit); }},
        {"season", [&] { m_window->showSeason(); }},
        {"fleet", [&] { m_window->showFleet(); }},
        {"history paper", [&] { m_window->showHistoryPaper(m_unit); }}};
    for (const auto& [name, show] : pages) {
        show();
        settle();
        int looked = 0;
        for (const QWidget* widget : m_window->findChildren<QWidget*>()) {
            if (!widget->isVisible() || isInner(*widget) || !isTarget(*widget))
                continue;
            ++looked;
            EXPECT_GE(widget->height(), smallestTarget) << name << ": " << described(*widget);
            EXPECT_GE(widget->width(), smallestTarget) << name << ": " << described(*widget);
        }
        EXPECT_GE(looked, 2) << name;
    }
    const auto* fleet = m_window->findChild<QTableView*>(QStringLiteral("fleet"));
    EXPECT_GE(fleet->rowHeight(0), smallestTarget);
}

/// Walks with Tab until it is back where it began.
std::vector<const QWidget*> reachedByTab()
{
    std::vector<const QWidget*> reached;
    for (int presses = 0; presses < 400; ++presses) {
        QWidget* focus = QApplication::focusWidget();
        if (!focus || (presses > 0 && focus == reached.front()))
            break;
        if (reached.empty() || reached.back() != focus) // links within a text are one widget
            reached.push_back(focus);
        QTest::keyClick(focus, Qt::Key_Tab);
    }
    return reached;
}

TEST_F(AppearanceTest, EveryControlOfEveryPageHasANameAndIsReachedByTab)
{
    m_window->startVisit(m_unit, VisitReason::spring);
    const VisitId visit = page().sheet().visit.id;
    const std::vector<std::pair<std::string, std::function<void()>>> pages{
        {"unit", [&] { m_window->showUnit(m_unit); }},
        {"visit", [&] { m_window->showVisit(visit); }},
        {"season", [&] { m_window->showSeason(); }},
        {"fleet", [&] { m_window->showFleet(); }},
        {"summary", [&] { m_window->showSummary(m_unit, visit); }}};
    for (const auto& [name, show] : pages) {
        show();
        settle();
        m_window->setFocus();
        QTest::keyClick(m_window.get(), Qt::Key_Tab);
        const std::vector<const QWidget*> reached = reachedByTab();
        const std::set<const QWidget*> all(reached.begin(), reached.end());
        EXPECT_GT(all.size(), 2U) << name;
        EXPECT_EQ(all.size(), reached.size()) << name << ": Tab goes round in a part of the page";
        for (const QWidget* widget : m_window->findChildren<QWidget*>()) {
            const bool control = isTarget(*widget) || qobject_cast<const QAbstractItemView*>(widget)
                || qobject_cast<const QTabBar*>(widget);
            if (!control || isInner(*widget) || !widget->isVisible() || !widget->isEnabled()
                || widget->focusPolicy() == Qt::NoFocus)
                continue;
            EXPECT_FALSE(widget->accessibleName().isEmpty() && widget->property("text").toString().isEmpty())
                << name << ": " << described(*widget);
            EXPECT_TRUE(all.contains(widget)) << name << ", not reached by Tab: " << described(*widget);
        }
    }
}

TEST_F(AppearanceTest, TabGoesThroughAVisitAreaByArea)
{
    m_window->startVisit(m_unit, VisitReason::spring);
    const auto areaOf = [&](const QWidget* widget) {
        for (const QWidget* at = widget; at; at = at->parentWidget()) {
            if (at->objectName() == QStringLiteral("zoneList") || at->objectName() == QStringLiteral("zonePanel")
                || at->objectName() == QStringLiteral("side"))
                return at->objectName();
        }
        return QStringLiteral("head");
    };
    std::vector<QString> areas;
    m_window->findChild<QComboBox*>(QStringLiteral("visitReason"))->setFocus();
    for (const QWidget* widget : reachedByTab()) {
        if (areas.empty() || areas.back() != areaOf(widget))
            areas.push_back(areaOf(widget));
    }
    EXPECT_EQ(areas,
              (std::vector<QString>{QStringLiteral("head"), QStringLiteral("zoneList"), QStringLiteral("zonePanel"),
                                    QStringLiteral("side")}));
}

} // namespace padside::test
