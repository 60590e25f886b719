// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/money_words.h"

#include "ui/models/record_book.h"

#include <cmath>

namespace padside {

QString shownMoney(const RecordBook& book, double amount)
{
    constexpr double small = 10;
    const int decimals = amount != 0 && std::abs(amount) < small ? 2 : 0;
    return book.surroundings().locale.toCurrencyString(amount, QString(), decimals);
}

} // namespace padside
