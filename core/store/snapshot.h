// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

class Connection;

/// Several reads that see the file at one moment, whatever another program writes meanwhile.
class Snapshot
{
public:
    explicit Snapshot(Connection& connection); ///< joins a transaction that is under way
    ~Snapshot();
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

private:
    Connection& m_connection;
    bool m_own;
};

} // namespace padside
