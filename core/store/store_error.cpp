// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/store_error.h"

#include <utility>

namespace padside {

StoreError::StoreError(Problem problem, int sqliteCode, std::string statement)
    : std::runtime_error(say(problem.what))
    , m_problem(std::move(problem))
    , m_sqliteCode(sqliteCode)
    , m_statement(std::move(statement))
{
}

} // namespace padside
