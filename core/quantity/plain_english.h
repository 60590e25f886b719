// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <string>

namespace padside {

/// English, decimal point, ISO dates, metric units; the name of the currency before amounts of money ("EUR 1240"), if
/// there is one.
class PlainEnglish final : public Speaker
{
public:
    explicit PlainEnglish(std::string currency = {});

    [[nodiscard]] std::string translate(const std::string& english) const override;
    [[nodiscard]] std::string number(double value, int decimals) const override;
    [[nodiscard]] std::string amount(const Amount& amount) const override;
    [[nodiscard]] std::string money(const Money& money) const override;
    [[nodiscard]] std::string date(Date date) const override;

private:
    std::string m_currency;
};

} // namespace padside
