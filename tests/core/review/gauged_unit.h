// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "tests/support/record_builder.h"

#include <string>
#include <vector>

namespace padside::test {

/// An accumulator fitted in 2014 whose bottom was graded and measured once a year, the last time on 2023-10-10; 2.2 mm
/// must be left of its wall. Values are SI.
[[nodiscard]] UnitRecord measuredUnit(const std::string& readingKind, const std::vector<double>& values,
                                      QuantityKind quantity, const std::string& unit, int grade = 2);

/// The same with walls, in millimetres.
[[nodiscard]] UnitRecord gaugedUnit(const std::vector<double>& millimetres, int grade = 2);

/// The same with a run capacitor beside it, seen worn with its last wall.
[[nodiscard]] UnitRecord gaugedUnitWithCapacitor(const std::vector<double>& millimetres);

} // namespace padside::test
