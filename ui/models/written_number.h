// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace padside {

class RecordBook;

/// As it would be typed: as many decimals as it needs, at most six, without thousands separators.
[[nodiscard]] QString writtenNumber(const RecordBook& book, double value);

} // namespace padside
