// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/plain_english.h"

#include "core/quantity/measure.h"

#include <utility>

namespace padside {

PlainEnglish::PlainEnglish(std::string currency)
    : m_currency(std::move(currency))
{
}

std::string PlainEnglish::translate(const std::string& english) const
{
    return english;
}

std::string PlainEnglish::number(double value, int decimals) const
{
    return showNumber(value, decimals);
}

std::string PlainEnglish::amount(const Amount& amount) const
{
    return showMeasure(amount.si, fittingUnit(amount.kind, UnitSystem::metric, amount.si));
}

std::string PlainEnglish::money(const Money& money) const
{
    const std::string plain = number(money.amount, money.decimals);
    return m_currency.empty() ? plain : m_currency + " " + plain;
}

std::string PlainEnglish::date(Date date) const
{
    return isoText(date);
}

} // namespace padside
