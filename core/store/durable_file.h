// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QString>

namespace padside {

/// Writes `content` so that after a power cut the file is either complete or not there: temporary name, synced,
/// renamed, folder synced. Throws StoreError; then no trace is left.
void writeDurably(const QString& path, const QByteArray& content);

/// Makes new names in a folder last. Throws StoreError.
void syncFolder(const QString& folder);

/// Gives a finished, closed database its name, which must not be taken: synced, renamed, folder synced. Throws
/// StoreError if the name is taken or if some of the database still lies in a log beside it.
void publishDatabase(const QString& from, const QString& to);

/// Removes a database that was being made, with the journals SQLite keeps beside it; what is not there is no error.
void removeDatabaseFiles(const QString& path);

} // namespace padside
