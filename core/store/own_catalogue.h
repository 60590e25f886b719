// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside {

class Connection;

/// The person's own changes to the catalogue: a JSON merge patch (RFC 7396) kept in the file, apart from what we ship.
class OwnCatalogue
{
public:
    explicit OwnCatalogue(Connection& connection);

    [[nodiscard]] std::string changes() const; ///< empty if there are none
    void setChanges(const std::string& mergePatch);

private:
    Connection& m_connection;
};

} // namespace padside
