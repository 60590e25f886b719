// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/visit/visit_fixture.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>

#include <set>

namespace padside::test {

namespace {

/// What a person can act on, leaving out Qt's own inner parts.
bool isControl(const QWidget* widget)
{
    const bool kind = qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget)
        || qobject_cast<const QPlainTextEdit*>(widget) || qobject_cast<const QComboBox*>(widget)
        || qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QTabBar*>(widget);
    return kind && !widget->objectName().startsWith(QStringLiteral("qt_")) && widget->isVisible() && widget->isEnabled()
        && widget->focusPolicy() != Qt::NoFocus;
}

QString nameOf(const QWidget* widget)
{
    if (!widget->accessibleName().isEmpty())
        return widget->accessibleName();
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return button ? button->text() : QString();
}

std::string described(const QWidget* widget)
{
    return std::string(widget->metaObject()->className()) + " " + widget->objectName().toStdString() + " “"
        + nameOf(widget).toStdString() + "”";
}

} // namespace

TEST_F(VisitPageTest, EveryControlHasANameAndIsReachedByTab)
{
    open();
    start();
    for (const int tab : {0, 1, 2, 3}) {
        find<QTabWidget>("side")->setCurrentIndex(tab);
        find("zonePanel")->setFocus();
        std::set<const QWidget*> reached;
        for (int presses = 0; presses < 300; ++presses) {
            QWidget* focus = QApplication::focusWidget();
            ASSERT_NE(focus, nullptr);
            if (presses > 0 && focus == find("zonePanel"))
                break; // once round
            reached.insert(focus);
            QTest::keyClick(focus, Qt::Key_Tab);
        }
        for (const QWidget* widget : m_page->findChildren<QWidget*>()) {
            if (!isControl(widget))
                continue;
            EXPECT_FALSE(nameOf(widget).isEmpty()) << described(widget);
            EXPECT_TRUE(reached.contains(widget)) << "not reached by Tab: " << described(widget);
        }
    }
}

TEST_F(VisitPageTest, WhatAScreenReaderTogglesIsEnteredAsIfItWerePressed)
{
    open();
    start();
    goTo("bottom");
    const auto toggle = [this](const char* name) {
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(find(name));
        ASSERT_TRUE(face && face->actionInterface()) << name;
        ASSERT_TRUE(face->actionInterface()->actionNames().contains(QAccessibleActionInterface::toggleAction()))
            << name;
        face->actionInterface()->doAction(QAccessibleActionInterface::toggleAction());
        EXPECT_TRUE(face->state().checked) << name;
    };
    toggle("grade3");
    ASSERT_TRUE(finding("bottom"));
    EXPECT_EQ(finding("bottom")->grade(), Grade::marked);
    toggle("wetness-wet");
    EXPECT_EQ(finding("bottom")->wetness, Wetness::wet);
    toggle("grade3"); // once more: it stays what it is
    EXPECT_EQ(finding("bottom")->grade(), Grade::marked);
    toggle("readingsAsLeft");
    EXPECT_FALSE(find<QPushButton>("readingsAsFound")->isChecked());

    find<QTabWidget>("side")->setCurrentIndex(1);
    EXPECT_FALSE(find("enterWork")->isVisible());
    toggle("work-clean");
    EXPECT_TRUE(find("enterWork")->isVisible());
    find<QTabWidget>("side")->setCurrentIndex(2);
    toggle("charge-recovered");
    EXPECT_FALSE(find<QPushButton>("charge-added")->isChecked());
}

TEST_F(VisitPageTest, WhatIsPressedIsLargeEnoughForGloves)
{
    open();
    start();
    for (const QPushButton* button : m_page->findChildren<QPushButton*>()) {
        if (button->isVisible()) {
            EXPECT_GE(button->height(), 40) << described(button);
        }
    }
}

} // namespace padside::test
