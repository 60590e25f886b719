// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

namespace padside {

/// Looks at a file before SQLite touches it, so that nothing foreign is ever changed. Throws StoreError for a path that
/// is missing, a folder, not readable, empty, not a database, or the database of another program.
void requireRecordFile(const QString& path);

} // namespace padside
