// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/worth_words.h"

#include "core/quantity/measure.h"
#include "ui/models/money_words.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QCoreApplication>

#include <cmath>
#include <string_view>

namespace padside {

namespace {

struct WorthWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::WorthWords)
};

QString valueText(const RecordBook& book, std::string_view assumption, double value)
{
    const auto number = [&](int decimals) { return shown(book.speaker().number(value, decimals)); };
    if (assumption == "interest")
        return shown(book.speaker().amount(Amount{value, QuantityKind::ratio}));
    if (assumption == "life of a new unit")
        return WorthWords::tr("%1 years").arg(number(0));
    if (assumption == "hours of cooling a year")
        return WorthWords::tr("%1 h").arg(number(0));
    if (assumption.starts_with("efficiency"))
        return WorthWords::tr("SEER %1").arg(number(1));
    return shownMoney(book, value);
}

} // namespace

QString writtenNumber(const RecordBook& book, double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 3 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10)
        ++decimals;
    return QString::fromStdString(showNumber(value, decimals, book.numberStyle()));
}

QString turningText(const RecordBook& book, const TurningPoint& point)
{
    return WorthWords::tr("%1: %2 instead of %3", "assumption, where it turns, today")
        .arg(shown(book.speaker().translate(point.assumption)), valueText(book, point.assumption, point.turnsAt),
             valueText(book, point.assumption, point.today));
}

} // namespace padside
