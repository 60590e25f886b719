// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/transaction.h"

#include "core/store/connection.h"
#include "core/store/store.h"

#include <sqlite3.h>

namespace padside {

Transaction::Transaction(Store& store)
    : Transaction(store.connection())
{
}

Transaction::Transaction(Connection& connection)
    : m_connection(connection)
    , m_outermost(connection.m_transactions == 0)
{
    if (!m_outermost)
        m_connection.requireUnbroken();
    m_connection.run(m_outermost ? "BEGIN IMMEDIATE" : "SAVEPOINT inner_step");
    ++m_connection.m_transactions;
}

Transaction::~Transaction()
{
    --m_connection.m_transactions;
    if (m_done || !m_connection.inTransaction()) // SQLite itself rolls back after a full disk or a failed write
        return;
    // A rollback that fails leaves nothing to do here: SQLite rolls back when the file is next opened.
    sqlite3_exec(m_connection.handle(), m_outermost ? "ROLLBACK" : "ROLLBACK TO inner_step; RELEASE inner_step",
                 nullptr, nullptr, nullptr);
}

void Transaction::commit()
{
    m_connection.run(m_outermost ? "COMMIT" : "RELEASE inner_step");
    m_done = true;
}

} // namespace padside
