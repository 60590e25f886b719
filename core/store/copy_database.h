// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <functional>

namespace padside {

class Connection;

/// Copies the database as it stands to `target`, which must not exist: SQLite's backup API in small steps to a
/// temporary name, integrity check, sync, rename. `progress` gets 0..1 after each step and answers false to cancel.
/// Throws StoreError; then, and when cancelled, nothing is left behind. True if it was finished.
bool copyDatabase(Connection& connection, const QString& target, const std::function<bool(double)>& progress);

} // namespace padside
