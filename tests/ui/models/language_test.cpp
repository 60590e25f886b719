// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.h"
#include "ui/models/language.h"
#include "ui/models/speaker.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>
#include <gtest/gtest.h>

namespace padside {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

const Language english{u"en"_s, u"English"_s, {}};

QString shipped()
{
    return QString::fromStdString(shippedTranslations());
}

class SpokenLanguage : public ::testing::Test
{
protected:
    ~SpokenLanguage() override { speak(english); }
};

} // namespace

TEST(Languages, EnglishAndSpanishComeWithTheProgram)
{
    const auto there = languagesIn({shipped()});
    ASSERT_EQ(there.size(), 2U);
    EXPECT_EQ(there[0], english);
    EXPECT_EQ(there[1].code, u"es"_s);
    EXPECT_EQ(there[1].name, u"español"_s) << "as its speakers call it";
}

TEST(Languages, AFileInAFolderOfThePersonIsOneMore)
{
    const QTemporaryDir own;
    ASSERT_TRUE(QFile::copy(shipped() + u"/padside_es.qm"_s, own.filePath(u"padside_pt_BR.qm"_s)));
    ASSERT_TRUE(QFile::copy(shipped() + u"/padside_es.qm"_s, own.filePath(u"padside_es.qm"_s)));
    QFile broken(own.filePath(u"padside_fr.qm"_s));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("no translation");
    broken.close();

    const auto there = languagesIn({own.path(), u"/nowhere"_s, shipped()});
    ASSERT_EQ(there.size(), 3U) << "the broken one is not offered";
    const auto spanish = std::ranges::find(there, u"es"_s, &Language::code);
    EXPECT_EQ(spanish->file, own.filePath(u"padside_es.qm"_s)) << "theirs stands before ours";
    const auto brazilian = std::ranges::find(there, u"pt_BR"_s, &Language::code);
    EXPECT_TRUE(brazilian->name.contains(u"Brasil"_s)) << brazilian->name.toStdString();
}

TEST(Languages, ThePersonsDataFolderIsLookedAtFirst)
{
    const QString data = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    const QString own = QDir(data).filePath(u"padside/translations"_s);
    ASSERT_TRUE(QDir().mkpath(own));
    const QStringList folders = translationFolders(shipped());
    EXPECT_EQ(folders.front(), own);
    EXPECT_EQ(folders.back(), shipped());
    EXPECT_TRUE(folders.join(u'\n').contains(u"share/padside/translations"_s));
    QDir(own).removeRecursively();
}

TEST(Languages, TheComputersWishesDecideUntilThePersonChooses)
{
    const auto there = languagesIn({shipped()});
    EXPECT_EQ(chosenLanguage({}, {u"es-MX"_s, u"es"_s, u"en"_s}, there).code, u"es"_s);
    EXPECT_EQ(chosenLanguage({}, {u"fr-FR"_s, u"fr"_s}, there).code, u"en"_s);
    EXPECT_EQ(chosenLanguage(u"en"_s, {u"es-MX"_s}, there).code, u"en"_s);
    EXPECT_EQ(chosenLanguage(u"xx"_s, {u"es-MX"_s}, there).code, u"en"_s) << "chosen, but gone";
}

TEST(Languages, NumbersAndDatesFollowTheLanguageAndTheCountry)
{
    const Language spanish{u"es"_s, u"español"_s, {}};
    EXPECT_EQ(localeFor(spanish, QLocale(u"es_MX"_s)), QLocale(u"es_MX"_s));
    EXPECT_EQ(localeFor(spanish, QLocale(u"en_US"_s)), QLocale(u"es_US"_s)) << "Spanish in the United States";
    EXPECT_EQ(localeFor(spanish, QLocale(u"fi_FI"_s)).language(), QLocale::Spanish);
    EXPECT_EQ(localeFor(english, QLocale::c()), QLocale::c());
    EXPECT_EQ(localeFor(english, QLocale(u"de_DE"_s)).language(), QLocale::English);
}

TEST_F(SpokenLanguage, ReachesCoreTheCatalogueAndQtsOwnButtons)
{
    const LocalSpeaker speaker(QLocale(u"es_ES"_s), UnitSystem::metric);
    ASSERT_TRUE(speak(chosenLanguage(u"es"_s, {}, languagesIn({shipped()}))));
    EXPECT_EQ(speaker.translate("marked"), "marcado");
    EXPECT_EQ(speaker.translate("Suction accumulator"), "Acumulador de succión");
    EXPECT_EQ(speaker.translate("Old Mill, north wall"), "Old Mill, north wall") << "a person's own words stay";
    EXPECT_EQ(QCoreApplication::translate("QPlatformTheme", "Cancel"), u"Cancelar"_s)
        << "install qt6-translations-l10n";

    ASSERT_TRUE(speak(english));
    EXPECT_EQ(speaker.translate("marked"), "marked");
    EXPECT_EQ(QCoreApplication::translate("QPlatformTheme", "Cancel"), u"Cancel"_s);
}

TEST_F(SpokenLanguage, IsEnglishWhereTheFileIsGone)
{
    EXPECT_FALSE(speak({u"es"_s, u"español"_s, u"/nowhere/padside_es.qm"_s}));
    EXPECT_EQ(LocalSpeaker(QLocale::c(), UnitSystem::metric).translate("marked"), "marked");
}

} // namespace padside
