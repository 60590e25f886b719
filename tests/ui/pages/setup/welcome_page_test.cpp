// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/welcome_page.h"

#include <QPushButton>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

TEST(WelcomePageTest, OffersFourWaysToBegin)
{
    WelcomePage page(true);
    QSignalSpy add(&page, &WelcomePage::addRequested);
    QSignalSpy list(&page, &WelcomePage::listRequested);
    QSignalSpy sample(&page, &WelcomePage::sampleRequested);
    QSignalSpy open(&page, &WelcomePage::openFileRequested);
    for (const QString& name : {u"welcome-add"_s, u"welcome-list"_s, u"welcome-sample"_s, u"welcome-open"_s}) {
        auto* button = page.findChild<QPushButton*>(name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        EXPECT_FALSE(button->accessibleDescription().isEmpty());
        button->click();
    }
    EXPECT_EQ(add.count(), 1);
    EXPECT_EQ(list.count(), 1);
    EXPECT_EQ(sample.count(), 1);
    EXPECT_EQ(open.count(), 1);
}

TEST(WelcomePageTest, AFileThatMayNotBeWrittenOffersOnlyTheWaysToAnother)
{
    const WelcomePage page(false);
    for (const QString& name : {u"welcome-add"_s, u"welcome-list"_s})
        EXPECT_FALSE(page.findChild<QPushButton*>(name)->isEnabled()) << name.toStdString();
    for (const QString& name : {u"welcome-sample"_s, u"welcome-open"_s})
        EXPECT_TRUE(page.findChild<QPushButton*>(name)->isEnabled()) << name.toStdString();
}

} // namespace padside::test
