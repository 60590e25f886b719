// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/panel_fit.h"
#include "core/quantity/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Reads grades seen through the years from CSV: the columns unit, years and grade, found by name; other columns are
/// passed over. Rows of one unit need not stand together, but must be in order of time among themselves. Answers the
/// steps from each row to the unit's next. A bad row refuses the whole file and is named with its line: a grade other
/// than 1 to 5, years that go back, a grade that gets better (rates are learned from decay alone) or changes in no
/// time.
[[nodiscard]] Result<std::vector<PanelStep>> readPanelFile(std::string_view text, std::string name);

} // namespace padside
