// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"

#include "core/store/bound.h"
#include "core/store/connection.h"
#include "core/store/cursor.h"

using namespace Qt::Literals::StringLiterals;

namespace padside {

Drafts::Drafts(Connection& connection)
    : m_connection(connection)
{
}

std::optional<QString> Drafts::text(const QString& key) const
{
    const std::string wanted = key.toStdString();
    Cursor row(m_connection, "SELECT text FROM draft WHERE key = ?");
    row.bind(1, wanted);
    return row.next() ? std::optional<QString>(QString::fromStdString(row.text(0))) : std::nullopt;
}

void Drafts::setText(const QString& key, const QString& text)
{
    m_connection.write(
        u"INSERT INTO draft (key, text) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET text = excluded.text"_s,
        {key, bound(text.toStdString())});
}

void Drafts::remove(const QString& key)
{
    m_connection.write(u"DELETE FROM draft WHERE key = ?"_s, {key});
}

} // namespace padside
