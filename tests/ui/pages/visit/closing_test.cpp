// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"
#include "tests/ui/pages/visit/visit_fixture.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace padside::test {

TEST_F(VisitPageTest, ClosingSaysWhatChangedAndWhatWasNotLookedAt)
{
    open();
    start();
    goTo("bottom");
    key(Qt::Key_4);
    key(Qt::Key_F6);
    const QString changes = find<QLabel>("changes")->text();
    EXPECT_TRUE(changes.contains(QStringLiteral("4 poor"))) << changes.toStdString();
    const QString open = find<QLabel>("notLookedAt")->text();
    EXPECT_TRUE(open.contains(QStringLiteral("(5)"))) << open.toStdString();

    QSignalSpy closed(m_page.get(), &VisitPage::closed);
    find<QPushButton>("closeVisit")->click();
    EXPECT_TRUE(m_store->visits().visit(m_visit)->isOpen()) << "one press is not enough";
    EXPECT_TRUE(find<QLabel>("closeQuestion")->isVisible());
    key(Qt::Key_Space); // the answer has the focus
    EXPECT_FALSE(m_store->visits().visit(m_visit)->isOpen());
    EXPECT_EQ(closed.count(), 1);
}

TEST_F(VisitPageTest, KeepingItOpenLeavesTheKeysOnTheButtonThatCloses)
{
    open();
    start();
    key(Qt::Key_F6);
    find<QPushButton>("closeVisit")->click();
    find<QPushButton>("keepOpen")->click();
    EXPECT_TRUE(find<QPushButton>("closeVisit")->hasFocus()) << "not on a field that the next key would change";
    EXPECT_TRUE(m_store->visits().visit(m_visit)->isOpen());
}

TEST_F(VisitPageTest, ClosingSaysWhatTheVisitDoesToTheOutlookAndWhy)
{
    open();
    start();
    key(Qt::Key_F6);
    EXPECT_FALSE(find<QLabel>("outlookChanges")->isVisible()) << "nothing was looked at";
    goTo("bottom");
    key(Qt::Key_4);
    key(Qt::Key_F6);
    const QString said = find<QLabel>("outlookChanges")->text();
    EXPECT_TRUE(find<QLabel>("outlookChanges")->isVisible());
    EXPECT_TRUE(said.contains(QStringLiteral("Spent within a year: "))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral(" → "))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("Range of dates: "))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("Found 4 poor: "))) << said.toStdString();
}

TEST_F(VisitPageTest, AClosedVisitIsReadOnlyUntilAReasonIsGiven)
{
    open();
    start();
    goTo("crown");
    key(Qt::Key_2);
    ASSERT_TRUE(m_book->change(m_unit, [this] { m_store->visits().close(m_visit, springMorning()); }));
    m_page->showVisit(m_visit);
    goTo("crown");
    key(Qt::Key_5);
    EXPECT_EQ(finding("crown")->grade(), Grade::worn);
    EXPECT_TRUE(find<QLineEdit>("reading-line-voltage")->isReadOnly());

    find<QPushButton>("correctEntry")->click();
    find("zonePanel")->setFocus();
    key(Qt::Key_5);
    EXPECT_EQ(finding("crown")->grade(), Grade::worn) << "no reason, no correction";

    find<QLineEdit>("correctionReason")->setText(QStringLiteral("wrong key"));
    find<QPushButton>("correctEntry")->click();
    find("zonePanel")->setFocus();
    key(Qt::Key_3);
    ASSERT_TRUE(finding("crown").has_value());
    EXPECT_EQ(finding("crown")->grade(), Grade::marked);
    ASSERT_TRUE(finding("crown")->correction.has_value());
    EXPECT_EQ(finding("crown")->correction->reason, "wrong key");
    EXPECT_EQ(std::ranges::count(record().findings, m_visit, &Finding::visitId), 2) << "the old one stays";

    key(Qt::Key_Return);
    key(Qt::Key_1); // nothing was entered there
    EXPECT_FALSE(finding("shell").has_value());
    EXPECT_TRUE(message().contains(QStringLiteral("nothing to correct"))) << message().toStdString();
}

TEST_F(VisitPageTest, WhatWasNotEnteredYetHoldsTheVisitOpen)
{
    open();
    start();
    typeInto("reading-line-voltage", QStringLiteral("two hundred"));
    find("zonePanel")->setFocus();
    key(Qt::Key_T);
    type(QStringLiteral("drips"));
    key(Qt::Key_Escape);
    key(Qt::Key_F6);
    find<QPushButton>("closeVisit")->click();
    const QString said = find<QLabel>("closeQuestion")->text();
    EXPECT_TRUE(said.contains(QStringLiteral("two hundred"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("no grade yet"))) << said.toStdString();
    EXPECT_FALSE(find("confirmClose")->isVisible());
}

TEST_F(VisitPageTest, TheVisitNoteIsKeptWhenTheCursorLeaves)
{
    open();
    start();
    key(Qt::Key_F6);
    find<QPlainTextEdit>("visitNote")->setFocus();
    type(QStringLiteral("hums at night"));
    find("zonePanel")->setFocus();
    EXPECT_EQ(m_store->visits().visit(m_visit)->note, "hums at night");
}

TEST_F(VisitPageTest, AStoreThatRefusesKeepsTheInputAndSaysWhy)
{
    open();
    start();
    m_page.reset();
    m_book.reset();
    m_store.reset();
    m_store = Store::open(m_path, Store::Access::readOnly);
    open();
    m_page->showVisit(m_visit);
    typeInto("reading-line-voltage", QStringLiteral("231"));
    EXPECT_EQ(find<QLineEdit>("reading-line-voltage")->text(), QStringLiteral("231"));
    EXPECT_FALSE(message().isEmpty());
    EXPECT_TRUE(std::ranges::none_of(record().readings, [](const Reading& one) { return one.kind == "line-voltage"; }));

    goTo("crown");
    key(Qt::Key_T);
    type(QStringLiteral("leak?"));
    key(Qt::Key_Escape);
    key(Qt::Key_Return);
    EXPECT_EQ(find<QPlainTextEdit>("zoneNote")->toPlainText(), QStringLiteral("leak?")) << "the note stays in sight";
    EXPECT_EQ(m_page->zone(), zoneId("crown"));
    key(Qt::Key_3);
    EXPECT_FALSE(finding("crown").has_value());
    EXPECT_FALSE(message().isEmpty());
}

} // namespace padside::test
