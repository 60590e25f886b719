// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/exchange/csv.h"

#include <cstdint>

namespace padside {

/// Reads the values of a table, always with "." as decimal sign. Every refusal names file, line and column.
class CsvValues
{
public:
    explicit CsvValues(const CsvTable& table)
        : m_table(table)
    {
    }

    /// Where a column stands that must be there.
    [[nodiscard]] Result<std::size_t> column(std::string_view name) const;

    /// A finite number.
    [[nodiscard]] Result<double> number(const CsvRow& row, std::size_t column) const;

    /// A whole number from `least` to `most`.
    [[nodiscard]] Result<std::int64_t> wholeNumber(const CsvRow& row, std::size_t column, std::int64_t least,
                                                   std::int64_t most) const;

    /// A refusal of a row: {0} file, {1} line, then `more` from {2} on.
    [[nodiscard]] tl::unexpected<Problem> refuse(const CsvRow& row, std::string pattern,
                                                 const std::vector<Argument>& more) const;

private:
    const CsvTable& m_table;
};

} // namespace padside
