// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/snapshot.h"

#include "core/store/connection.h"
#include "core/store/cursor.h"

#include <sqlite3.h>

namespace padside {

Snapshot::Snapshot(Connection& connection)
    : m_connection(connection)
    , m_own(!connection.inTransaction())
{
    if (m_own)
        (void)Cursor(m_connection, "BEGIN").next(); // prepared once: units are read by the thousand
}

Snapshot::~Snapshot()
{
    if (m_own) // nothing was written: ending it can't lose anything
        sqlite3_exec(m_connection.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

} // namespace padside
