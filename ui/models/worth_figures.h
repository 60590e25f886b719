// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/cost_figures.h"

namespace padside {

class Store;

/// What the file keeps of costs and general figures, laid over ours; ours alone where it does not fit (which is said
/// where the catalogue is read). Throws StoreError.
[[nodiscard]] CostFigures costsIn(Store& store);

} // namespace padside
