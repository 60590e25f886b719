// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/entry.h"

#include <QByteArray>
#include <QString>

namespace padside {

class Connection;

/// Photographs as files beside the database, named by their SHA-256; never re-encoded, never deleted with a row.
class PhotoFiles
{
public:
    PhotoFiles(Connection& connection, QString folder);

    /// What is known of a file once it is kept.
    struct Kept
    {
        std::string sha256;
        std::int64_t bytes = 0;
    };

    /// Copies the bytes into the folder: temporary name, synced, renamed, folder synced. The same content twice is one
    /// file.
    [[nodiscard]] Kept keep(const QByteArray& content, const std::string& mediaType);

    /// The file's path; it may be missing (then verify says so).
    [[nodiscard]] QString path(const Photo& photo) const;
    [[nodiscard]] QString folder() const { return m_folder; }

    /// A small JPEG kept in the database for quick lists; empty if none was made.
    [[nodiscard]] QByteArray thumbnail(PhotoId id) const;
    void setThumbnail(PhotoId id, const QByteArray& jpeg);

private:
    Connection& m_connection;
    QString m_folder;
};

} // namespace padside
