// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/block_setter.h"

namespace padside {

/// Sets what is expected: heading and words, then a strip for each part along one axis of years. Words and figure stay
/// on one page.
[[nodiscard]] std::vector<SetItem> setOutlook(const OutlookBlock& outlook, double width);

} // namespace padside
