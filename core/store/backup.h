// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <functional>

namespace padside {

class Store;

/// Copies the open store and its photographs to `target` (which must not exist): SQLite's backup API to a temporary
/// name, integrity_check, rename; then photo files not yet there. `progress` gets 0..1 and answers false to cancel
/// (then nothing is left behind). Throws StoreError. True if it was finished, false if cancelled.
bool backup(Store& store, const QString& target, const std::function<bool(double)>& progress = {});

} // namespace padside
