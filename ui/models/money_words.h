// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace padside {

class RecordBook;

/// An amount of the person's own money, with the name they gave their currency. Without decimals, unless it is a small
/// one ("0.21").
[[nodiscard]] QString shownMoney(const RecordBook& book, double amount);

} // namespace padside
