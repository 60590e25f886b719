// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/outlook_change.h"

#include <QString>

#include <vector>

namespace padside {

class RecordBook;

/// What a visit did to the outlook, as rich text: for each zone its place, the chance of spent within a year and the
/// range of dates before and after, and why. Empty without any change.
[[nodiscard]] QString outlookChangesSaid(const RecordBook& book, const UnitRecord& record,
                                         const std::vector<OutlookChange>& changes);

} // namespace padside
