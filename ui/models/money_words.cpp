// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/money_words.h"

#include "core/quantity/amounts.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

namespace padside {

QString shownMoney(const RecordBook& book, double amount)
{
    return shown(book.speaker().money(roundMoney(amount)));
}

} // namespace padside
