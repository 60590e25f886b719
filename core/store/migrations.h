// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <functional>
#include <span>

namespace padside {

class Connection;

/// One step of the schema: what it does to a file of the version before.
struct Migration
{
    int version = 0; ///< the version it leads to
    std::function<void(Connection&)> apply;
};

/// All steps, from an empty file (version 0) on, in order.
[[nodiscard]] std::span<const Migration> migrations();

/// The version the last step leads to.
[[nodiscard]] int latestVersion(std::span<const Migration> steps);

/// Carries out the steps the file does not have yet: each in one transaction with its version, foreign keys checked
/// before it is committed. A file that holds something is copied beside itself first; answers that copy's path, empty
/// if none was needed. Throws StoreError; then the file stays at the last version that was reached.
QString bringUpToDate(Connection& connection, std::span<const Migration> steps);

} // namespace padside
