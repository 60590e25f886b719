// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/speaker.h"

#include "core/quantity/chance_words.h"

#include <QCoreApplication>
#include <QDate>

#include <cmath>
#include <utility>

namespace padside {

LocalSpeaker::LocalSpeaker(const QLocale& locale, UnitChoice units)
    : m_locale(locale)
    , m_units(std::move(units))
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
