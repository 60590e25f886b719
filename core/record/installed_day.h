// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/problem.h"

#include <string_view>

namespace padside {

/// Reads the day a unit was installed as people know it: "2008-06-14", or only "2008-06" or "2008", which stand for the
/// first day of the month or year. Refused with a sentence: other forms (14/6/08 could mean two days), a day that does
/// not exist, one after `today`, one before 1900.
[[nodiscard]] Result<Date> readInstalledDay(std::string_view text, Date today);

} // namespace padside
