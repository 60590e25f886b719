// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/speaker.h"

#include "core/quantity/chance_words.h"

#include <QCoreApplication>
#include <QDate>

#include <cmath>
#include <utility>

namespace padside {

namespace {

constexpr QChar currencySign(0x00A4); // stands for any currency in a locale's pattern
constexpr QChar noBreakSpace(0x00A0);

/// Letters keep a distance from a figure ("EUR 1,240"), signs don't ("$1,240").
bool keepsDistance(QChar ofCurrency, QChar beside)
{
    return ofCurrency.category() != QChar::Symbol_Currency && beside.isDigit();
}

} // namespace

LocalSpeaker::LocalSpeaker(const QLocale& locale, UnitChoice units, QString currency)
    : m_locale(locale)
    , m_units(std::move(units))
    , m_currency(std::move(currency))
    , m_style(numberStyleOf(m_locale))
{
}

std::string LocalSpeaker::translate(const std::string& english) const
{
    const QString asWritten = QString::fromStdString(english);
    for (const char* context : {"core", "catalogue"}) {
        const QString translated = QCoreApplication::translate(context, english.c_str());
        if (translated != asWritten)
            return translated.toStdString();
    }
    return english;
}

std::string LocalSpeaker::number(double value, int decimals) const
{
    constexpr double grouped = 1000; // as in the tables and pictures beside the sentence
    if (std::abs(value) >= grouped)
        return m_locale.toString(value, 'f', decimals).toStdString();
    return showNumber(value, decimals, m_style);
}

std::string LocalSpeaker::amount(const Amount& amount) const
{
    return showMeasure(amount.si, fittingUnit(amount.kind, m_units, amount.si), m_style);
}

std::string LocalSpeaker::money(const Money& money) const
{
    if (m_currency.isEmpty())
        return number(money.amount, money.decimals);
    QString text = m_locale.toCurrencyString(money.amount, QString(currencySign), money.decimals);
    const qsizetype at = text.indexOf(currencySign);
    QString currency = m_currency;
    if (at + 1 < text.size() && keepsDistance(m_currency.back(), text[at + 1]))
        currency.append(noBreakSpace);
    if (at > 0 && keepsDistance(m_currency.front(), text[at - 1]))
        currency.prepend(noBreakSpace);
    return text.replace(at, 1, currency).toStdString();
}

std::string LocalSpeaker::date(Date date) const
{
    return shownDate(date).toStdString();
}

QString LocalSpeaker::said(const Sentence& sentence) const
{
    return QString::fromStdString(say(sentence, *this));
}

QString LocalSpeaker::shownChance(double chance) const
{
    return said(chanceWords(chance)).replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"));
}

QString LocalSpeaker::shownDate(Date date) const
{
    QString format = m_locale.dateFormat(QLocale::ShortFormat);
    if (!format.contains(QStringLiteral("yyyy"))) // a record kept for decades needs the century
        format.replace(QStringLiteral("yy"), QStringLiteral("yyyy"));
    return m_locale.toString(toQDate(date), format);
}

NumberStyle numberStyleOf(const QLocale& locale)
{
    NumberStyle style;
    style.decimalSign = locale.decimalPoint() == QStringLiteral(",") ? ',' : '.';
    style.groupSign = locale.groupSeparator().toStdString();
    return style;
}

UnitSystem usualUnits(const QLocale& locale)
{
    return locale.measurementSystem() == QLocale::ImperialUSSystem ? UnitSystem::usCustomary : UnitSystem::metric;
}

QDate toQDate(Date date)
{
    return QDate(1970, 1, 1).addDays(date.time_since_epoch().count());
}

Date fromQDate(const QDate& date)
{
    return Date(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}

} // namespace padside
