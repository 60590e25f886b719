// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/speaker.h"

#include <QDate>

#include <gtest/gtest.h>

namespace padside {

using Qt::Literals::StringLiterals::operator""_s;

TEST(LocalSpeaker, ShowsAmountsInThePersonsUnitsAndNumberStyle)
{
    const Sentence sentence{"Wall {0}.", {Amount{0.0021, QuantityKind::length}}};
    EXPECT_EQ(LocalSpeaker(QLocale(QLocale::German), UnitSystem::metric).said(sentence),
              QStringLiteral("Wall 2,10 mm."));
    EXPECT_EQ(LocalSpeaker(QLocale::c(), UnitSystem::usCustomary).said(sentence), QStringLiteral("Wall 0.083 in."));
}

TEST(LocalSpeaker, WritesMoneyWithTheCurrencyWhereTheLocaleHasIt)
{
    const Sentence sentence{"About {0} a year.", {Money{12400, 0}}};
    const auto said = [&](const char* locale, const QString& currency) {
        return LocalSpeaker(QLocale(QLatin1String(locale)), UnitSystem::metric, currency)
            .said(sentence)
            .replace(QChar(0x00A0), u' ');
    };
    EXPECT_EQ(said("en_US", u"$"_s), u"About $12,400 a year."_s);
    EXPECT_EQ(said("en_US", u"EUR"_s), u"About EUR 12,400 a year."_s) << "letters keep a distance";
    EXPECT_EQ(said("de_DE", u"EUR"_s), u"About 12.400 EUR a year."_s);
    EXPECT_EQ(said("es_ES", u"€"_s), u"About 12.400 € a year."_s);
    EXPECT_EQ(said("en_GB", u"kr"_s), u"About kr 12,400 a year."_s);
    EXPECT_EQ(said("C", u"EUR"_s), u"About 12400 EUR a year."_s);
}

TEST(LocalSpeaker, WithoutACurrencyMoneyIsAPlainNumberWhereverTheComputerIs)
{
    for (const char* locale : {"en_US", "ja_JP", "en_GB"})
        EXPECT_EQ(LocalSpeaker(QLocale(QLatin1String(locale)), UnitSystem::metric).said({"{0}", {Money{12400, 0}}}),
                  u"12,400"_s)
            << locale;
}

TEST(LocalSpeaker, WritesDatesWithTheCentury)
{
    const Date date = *parseDate("2026-05-04");
    for (const auto& locale : {QLocale(QLocale::German), QLocale(QLocale::French), QLocale(QStringLiteral("en_US"))})
        EXPECT_TRUE(LocalSpeaker(locale, UnitSystem::metric).shownDate(date).contains(QStringLiteral("2026")))
            << locale.name().toStdString();
}

TEST(LocalSpeaker, KnowsTheNumberStyleOfALocale)
{
    EXPECT_EQ(numberStyleOf(QLocale(QLocale::German)).decimalSign, ',');
    EXPECT_EQ(numberStyleOf(QLocale(QLocale::French)).decimalSign, ',');
    EXPECT_EQ(numberStyleOf(QLocale(QStringLiteral("en_US"))).decimalSign, '.');
    EXPECT_EQ(usualUnits(QLocale(QStringLiteral("en_US"))), UnitSystem::usCustomary);
    EXPECT_EQ(usualUnits(QLocale(QLocale::German)), UnitSystem::metric);
}

TEST(QDateConversion, RoundTripsOverTheYears)
{
    for (const char* text : {"1970-01-01", "2000-02-29", "1999-12-31", "2026-11-25"}) {
        const Date date = *parseDate(text);
        EXPECT_EQ(fromQDate(toQDate(date)), date);
        EXPECT_EQ(toQDate(date).toString(Qt::ISODate).toStdString(), text);
    }
}

TEST(LocalSpeaker, WritesAChanceInTheNumberStyleOfTheLocaleOnOneLine)
{
    const LocalSpeaker german(QLocale(QLocale::German), UnitSystem::metric);
    EXPECT_EQ(german.shownChance(0.0231), QStringLiteral("2,3\u00a0%"));
    EXPECT_EQ(german.said({"{0}", {Chance{0.0231}}}), QStringLiteral("2,3 %"));
    EXPECT_EQ(german.shownChance(0.9999), QStringLiteral("over 99\u00a0%"));
}

} // namespace padside
