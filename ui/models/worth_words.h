// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/worth/carry_on.h"

#include <QString>

namespace padside {

class RecordBook;

/// As it would be typed: as many decimals as it needs, at most three, without thousands separators.
[[nodiscard]] QString writtenNumber(const RecordBook& book, double value);

/// "price of a new unit: €3,400 instead of €6,500".
[[nodiscard]] QString turningText(const RecordBook& book, const TurningPoint& point);

} // namespace padside
