// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/store/migrations.h"

#include <QString>

#include <memory>
#include <optional>
#include <span>

namespace padside {

class Connection;

/// An open, checked file of the version the steps lead to (or a newer one, for reading only).
struct OpenedFile
{
    std::unique_ptr<Connection> connection;
    std::optional<Sentence> readOnlyBecause; ///< set if writing was wanted or would be usual, but can't be
    QString backup; ///< the copy made before the first step; empty if none was needed
};

/// Makes a new, empty record file under a temporary name, synced, then renamed to `path`. Throws StoreError.
void createRecordFile(const QString& path);

/// Opens and checks a record file, bringing it up to date by `steps`. Throws StoreError; then the file is as it was.
[[nodiscard]] OpenedFile openRecordFile(const QString& path, bool onlyToRead, std::span<const Migration> steps);

} // namespace padside
