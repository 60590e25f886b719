// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/measure.h"
#include "core/quantity/sentence.h"
#include "core/quantity/unit_choice.h"

#include <QLocale>
#include <QString>

namespace padside {

/// Says core's sentences in the person's language, number style, units and currency. Patterns and words are looked up
/// among the installed translations in the context "core", and then, for the catalogue's words, in "catalogue". What is
/// in neither (a name or sentence the person gave) stays as it is.
class LocalSpeaker final : public Speaker
{
public:
    /// `currency`: the person's own, as they write it; empty: amounts of money are plain numbers.
    LocalSpeaker(const QLocale& locale, UnitChoice units, QString currency = {});

    [[nodiscard]] std::string translate(const std::string& english) const override;
    [[nodiscard]] std::string number(double value, int decimals) const override;
    [[nodiscard]] std::string amount(const Amount& amount) const override;
    /// With the currency before or behind the number, as the locale does.
    [[nodiscard]] std::string money(const Money& money) const override;
    [[nodiscard]] std::string date(Date date) const override;

    [[nodiscard]] QString said(const Sentence& sentence) const;
    /// A chance that stands by itself: chanceWords(), with its percent sign on the line of its number.
    [[nodiscard]] QString shownChance(double chance) const;
    [[nodiscard]] QString shownDate(Date date) const; ///< the locale's short format, always with a four-digit year

private:
    QLocale m_locale;
    UnitChoice m_units;
    QString m_currency;
    NumberStyle m_style;
};

/// How numbers are typed and written in a locale.
[[nodiscard]] NumberStyle numberStyleOf(const QLocale& locale);

/// The units usual in a locale: US customary in the United States, metric elsewhere. Only a first guess: the person may
/// choose.
[[nodiscard]] UnitSystem usualUnits(const QLocale& locale);

[[nodiscard]] QDate toQDate(Date date);
[[nodiscard]] Date fromQDate(const QDate& date);

/// UTF-8 text of the core as QString.
[[nodiscard]] inline QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace padside
