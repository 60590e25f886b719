// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

class Connection;
class Store;

/// A group of writes that happen together or not at all: BEGIN IMMEDIATE now, ROLLBACK in the destructor unless
/// commit() was called. Nested ones join the outer one. Throws StoreError.
class Transaction
{
public:
    explicit Transaction(Store& store);
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit();

private:
    Connection& m_connection;
    bool m_outermost;
    bool m_done = false;
};

} // namespace padside
