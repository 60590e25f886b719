// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"

namespace padside {
class Store;
}

namespace padside::test {

/// A record that fills every field of every kind of row, with texts in many scripts; its photograph is kept by `store`.
[[nodiscard]] UnitRecord fullRecord(Store& store);

} // namespace padside::test
