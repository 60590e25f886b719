// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/preferences/preferences_fixture.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QTabWidget>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

class PreferencesDialogTest : public PreferencesFixture
{
};

TEST_F(PreferencesDialogTest, ShowsWhatWasChosenAndSaysItAgainUnchanged)
{
    Preferences before;
    before.technician = u"A. Tester"_s;
    before.contractor = u"Breakwater"_s;
    before.paperSize = u"letter"_s;
    before.currency = u"EUR"_s;
    before.language = u"es"_s;
    before.theme = u"sunlight"_s;
    before.fieldSize = true;
    before.units = UnitHabit::metric;
    before.ownUnits = {{QuantityKind::gaugePressure, "psig"}};
    open(before);
    m_dialog->accept();
    ASSERT_EQ(m_chosen.size(), 1U);
    EXPECT_EQ(m_chosen.back(), before);
    EXPECT_FALSE(m_catalogueChanged);
    EXPECT_FALSE(m_dialog->isVisible());
}

TEST_F(PreferencesDialogTest, CancelSaysNothing)
{
    open();
    find<QLineEdit>(u"technician"_s)->setText(u"B. Other"_s);
    m_dialog->reject();
    EXPECT_TRUE(m_chosen.empty());
}

TEST_F(PreferencesDialogTest, EachQuantityMayHaveItsOwnUnit)
{
    open();
    EXPECT_TRUE(find<QComboBox>(u"units-temperature"_s)->itemText(0).contains(u"°F"_s))
        << "usual where this computer is";
    choose(u"units-all"_s, static_cast<int>(UnitHabit::metric));
    EXPECT_TRUE(find<QComboBox>(u"units-temperature"_s)->itemText(0).contains(u"°C"_s));
    choose(u"units-gauge-pressure"_s, u"barg"_s);
    m_dialog->accept();
    EXPECT_EQ(m_chosen.back().units, UnitHabit::metric);
    const std::map<QuantityKind, std::string> own{{QuantityKind::gaugePressure, "barg"}};
    EXPECT_EQ(m_chosen.back().ownUnits, own);
}

TEST_F(PreferencesDialogTest, ALanguageWhoseTranslationIsGoneStaysChosen)
{
    Preferences before;
    before.language = u"pt_BR"_s;
    open(before);
    m_dialog->accept();
    EXPECT_EQ(m_chosen.back().language, u"pt_BR"_s);
}

TEST_F(PreferencesDialogTest, AWrongEntryKeepsItOpenOnThatEntryAndLosesNothing)
{
    open();
    find<QLineEdit>(u"technician"_s)->setText(u"B. Other"_s);
    find<QSpinBox>(u"spring-first-0"_s)->setValue(30);
    m_dialog->accept();
    EXPECT_TRUE(m_chosen.empty());
    EXPECT_TRUE(m_dialog->isVisible());
    EXPECT_TRUE(said().contains(u"Harbour House"_s)) << said().toStdString();
    EXPECT_TRUE(find<QSpinBox>(u"spring-first-0"_s)->isVisible()) << "its page is in front";
    EXPECT_EQ(find<QLineEdit>(u"technician"_s)->text(), u"B. Other"_s);

    find<QSpinBox>(u"spring-first-0"_s)->setValue(12);
    m_dialog->accept();
    EXPECT_EQ(m_chosen.back().technician, u"B. Other"_s);
}

TEST_F(PreferencesDialogTest, ACurrencyThatWouldBeReadAsAFigureIsSaidAndStays)
{
    open();
    auto* currency = find<QLineEdit>(u"currency"_s);
    currency->setText(u"100"_s);
    m_dialog->accept();
    EXPECT_TRUE(m_chosen.empty());
    EXPECT_TRUE(said().startsWith(u"“100” can't stand beside amounts of money."_s)) << said().toStdString();
    EXPECT_TRUE(currency->isVisible()) << "its page is in front";
    EXPECT_EQ(currency->text(), u"100"_s);
    currency->setText(u" kr "_s);
    m_dialog->accept();
    EXPECT_EQ(m_chosen.back().currency, u"kr"_s);
}

TEST_F(PreferencesDialogTest, EveryControlThatTakesFocusHasAName)
{
    open();
    auto* tabs = find<QTabWidget>(u"preference-tabs"_s);
    for (int tab = 0; tab < tabs->count(); ++tab) {
        tabs->setCurrentIndex(tab);
        for (const QWidget* widget : m_dialog->findChildren<QWidget*>()) {
            const bool takesFocus = widget->focusPolicy() != Qt::NoFocus && widget->isVisible();
            const bool isInner = widget->inherits("QTabBar") || widget->objectName().startsWith(u"qt_"_s);
            if (!takesFocus || isInner)
                continue;
            const bool named = !widget->accessibleName().isEmpty() || !widget->property("text").toString().isEmpty();
            EXPECT_TRUE(named) << widget->metaObject()->className() << " " << widget->objectName().toStdString();
        }
    }
}

} // namespace padside::test
