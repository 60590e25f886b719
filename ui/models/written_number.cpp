// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/written_number.h"

#include "core/quantity/measure.h"
#include "ui/models/record_book.h"

#include <cmath>

namespace padside {

QString writtenNumber(const RecordBook& book, double value)
{
    int decimals = 0;
    for (double scaled = value; decimals < 6 && std::abs(scaled - std::round(scaled)) > 1e-6; scaled *= 10)
        ++decimals;
    return QString::fromStdString(showNumber(value, decimals, book.numberStyle()));
}

} // namespace padside
