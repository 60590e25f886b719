// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <optional>

namespace padside {

class Connection;

/// Unfinished input, kept as it is typed so that a power cut loses nothing. Keys are made by the form that owns the
/// draft.
class Drafts
{
public:
    explicit Drafts(Connection& connection);

    [[nodiscard]] std::optional<QString> text(const QString& key) const;
    void setText(const QString& key, const QString& text);
    void remove(const QString& key);

private:
    Connection& m_connection;
};

} // namespace padside
