// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <vector>

namespace padside {

class Store;

/// What verify found; clean if there is no complaint.
struct VerifyReport
{
    std::vector<Sentence> complaints; ///< what is wrong, where, what to do
    std::int64_t sites = 0;
    std::int64_t units = 0;
    std::int64_t visits = 0;
    std::int64_t findings = 0;
    std::int64_t readings = 0;
    std::int64_t photos = 0;

    [[nodiscard]] bool clean() const { return complaints.empty(); }
};

/// Checks the whole file: SQLite's integrity and foreign keys, our own rules (entries dated as their visit, zones of
/// their unit, closed visits unchanged, corrections that point at something), and that every photo file is there with
/// its SHA-256. Changes nothing. Throws StoreError if the file can't be read at all.
[[nodiscard]] VerifyReport verify(Store& store);

} // namespace padside
