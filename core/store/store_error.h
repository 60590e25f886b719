// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <stdexcept>
#include <string>

namespace padside {

/// A store operation that could not be carried out. Thrown at the lowest place, caught once per user action. The
/// action's transaction has been rolled back by then: the file is as it was before.
class StoreError : public std::runtime_error
{
public:
    StoreError(Problem problem, int sqliteCode = 0, std::string statement = {});

    [[nodiscard]] const Problem& problem() const { return m_problem; }
    [[nodiscard]] int sqliteCode() const
    {
        return m_sqliteCode;
    } ///< extended result code; 0 if SQLite was not involved
    [[nodiscard]] const std::string& statement() const { return m_statement; }

private:
    Problem m_problem;
    int m_sqliteCode;
    std::string m_statement;
};

} // namespace padside
