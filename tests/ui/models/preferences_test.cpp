// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/preferences.h"

#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class KeptPreferences : public ::testing::Test
{
protected:
    QTemporaryDir m_folder;
    QSettings m_settings{m_folder.filePath(u"padside.conf"_s), QSettings::IniFormat};
};

} // namespace

TEST_F(KeptPreferences, AreNothingUntilThePersonChooses)
{
    EXPECT_EQ(readPreferences(m_settings), Preferences{});
}

TEST_F(KeptPreferences, ComeBackAsTheyWere)
{
    Preferences chosen;
    chosen.technician = u"A. Tester"_s;
    chosen.contractor = u"Breakwater Cooling and Heating"_s;
    chosen.paperSize = u"letter"_s;
    chosen.currency = u"kr"_s;
    chosen.language = u"es"_s;
    chosen.theme = u"sunlight"_s;
    chosen.fieldSize = true;
    chosen.units = UnitHabit::usCustomary;
    chosen.ownUnits = {{QuantityKind::gaugePressure, "barg"}, {QuantityKind::temperature, "degC"}};
    keepPreferences(chosen, m_settings);
    EXPECT_EQ(readPreferences(m_settings), chosen);

    keepPreferences({}, m_settings);
    EXPECT_EQ(readPreferences(m_settings), Preferences{}) << "what is not chosen leaves nothing behind";
}

TEST_F(KeptPreferences, ACurrencyThatCantBeCountsAsNoneChosen)
{
    m_settings.setValue(u"currency"_s, u"1000"_s);
    EXPECT_EQ(readPreferences(m_settings).currency, QString());
}

TEST_F(KeptPreferences, OfTheTimeWithTwoThemesAreStillRead)
{
    m_settings.setValue(u"dark"_s, true);
    EXPECT_EQ(readPreferences(m_settings).theme, u"dark"_s);
    m_settings.setValue(u"dark"_s, false);
    EXPECT_EQ(readPreferences(m_settings).theme, u"light"_s);

    Preferences later;
    later.theme = u"sunlight"_s;
    keepPreferences(later, m_settings);
    EXPECT_EQ(readPreferences(m_settings).theme, u"sunlight"_s);
    keepPreferences({}, m_settings);
    EXPECT_EQ(readPreferences(m_settings).theme, QString()) << "as the computer is set, not as it was long ago";
}

TEST_F(KeptPreferences, ThatCantBeUnderstoodCountAsNotChosen)
{
    m_settings.setValue(u"units/all"_s, u"imperial"_s);
    m_settings.setValue(u"units/mass"_s, u"degC"_s);
    m_settings.setValue(u"units/length"_s, u"cubit"_s);
    EXPECT_EQ(readPreferences(m_settings), Preferences{});
}

TEST_F(KeptPreferences, DecideTheUnits)
{
    Preferences preferences;
    EXPECT_EQ(unitChoice(preferences, UnitSystem::usCustomary).system, UnitSystem::usCustomary);
    preferences.units = UnitHabit::metric;
    preferences.ownUnits[QuantityKind::gaugePressure] = "psig";
    const UnitChoice choice = unitChoice(preferences, UnitSystem::usCustomary);
    EXPECT_EQ(shownUnit(QuantityKind::temperature, choice).code, "degC");
    EXPECT_EQ(shownUnit(QuantityKind::gaugePressure, choice).code, "psig");
}

} // namespace padside
