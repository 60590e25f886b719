// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/shell/unit_list_panel.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QTreeView>

namespace padside::test {

using UnitListPanelTest = WindowFixture;

TEST_F(UnitListPanelTest, ListsEveryUnitUnderItsSite)
{
    UnitListPanel panel(*m_book, Theme::light());
    const auto* tree = panel.findChild<QTreeView*>(QStringLiteral("unitList"));
    int count = 0;
    for (int site = 0; site < tree->model()->rowCount(); ++site)
        count += tree->model()->rowCount(tree->model()->index(site, 0));
    EXPECT_EQ(count, static_cast<int>(units().size()));
}

TEST_F(UnitListPanelTest, TypingNarrowsTheList)
{
    UnitListPanel panel(*m_book, Theme::light());
    auto* search = panel.findChild<QLineEdit*>(QStringLiteral("unitSearch"));
    const auto* tree = panel.findChild<QTreeView*>(QStringLiteral("unitList"));
    QTest::keyClicks(search, QStringLiteral("no such unit"));
    EXPECT_EQ(tree->model()->rowCount(), 0);
    search->clear();
    EXPECT_GT(tree->model()->rowCount(), 0);
}

TEST_F(UnitListPanelTest, EnterInTheSearchOpensTheFirstUnitFound)
{
    UnitListPanel panel(*m_book, Theme::light());
    panel.select(units().front());
    auto* search = panel.findChild<QLineEdit*>(QStringLiteral("unitSearch"));
    const std::string tag = m_book->record(units().back()).unit.tag;
    QTest::keyClicks(search, QString::fromStdString(tag));
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(panel.selected(), units().back());
    QTest::keyClicks(search, QStringLiteral(" is no unit"));
    QTest::keyClick(search, Qt::Key_Return); // nothing found: nothing happens
}

TEST_F(UnitListPanelTest, ArrowKeysGoFromUnitToUnit)
{
    UnitListPanel panel(*m_book, Theme::light());
    panel.resize(250, 600);
    panel.show(); // a list that was never laid out has no next line
    QSignalSpy selected(&panel, &UnitListPanel::unitSelected);
    panel.selectFirst();
    ASSERT_EQ(selected.count(), 1);
    const auto first = panel.selected();
    auto* tree = panel.findChild<QTreeView*>(QStringLiteral("unitList"));
    for (int i = 0; i < 4 && panel.selected() == first; ++i)
        QTest::keyClick(tree, Qt::Key_Down); // a site's line may lie between
    EXPECT_GE(selected.count(), 2);
}

TEST_F(UnitListPanelTest, KeepsTheChosenUnitWhenTheRecordChanges)
{
    UnitListPanel panel(*m_book, Theme::light());
    panel.select(units().back());
    Q_EMIT m_book->unitChanged(units().front());
    EXPECT_EQ(panel.selected(), units().back());
}

} // namespace padside::test
