// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

namespace padside::test {

/// A unit of twenty parts with two zones each, looked at every spring and fall of 2005 to 2024: 40 lanes, 40 visits.
/// Zones decay at different paces, are treated at grade 4, and are not seen now and then; there are call-outs with
/// top-ups, and one part is replaced.
[[nodiscard]] UnitRecord twentyYears();

} // namespace padside::test
