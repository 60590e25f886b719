// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/exchange/csv.h"

namespace padside {

/// Cuts text into rows of cells, one call of next() for each. Knows nothing of columns.
class CsvReader
{
public:
    CsvReader(std::string_view text, std::string_view name);

    [[nodiscard]] bool atEnd() const { return m_place >= m_text.size(); }
    [[nodiscard]] std::size_t line() const { return m_line; } ///< of the file, counted from 1
    void skipEmptyLines();
    [[nodiscard]] Result<CsvRow> next();
    /// After a row that could not be read: goes on behind the line on which it began.
    void passBadRow();

private:
    [[nodiscard]] Result<std::string> cell();
    [[nodiscard]] Result<std::string> quotedCell();
    [[nodiscard]] bool atLineEnd() const;
    void passLineEnd();
    [[nodiscard]] tl::unexpected<Problem> refuse(std::string pattern, std::size_t line) const;

    std::string_view m_text;
    std::string_view m_name;
    std::size_t m_place = 0;
    std::size_t m_line = 1;
    std::size_t m_rowPlace = 0; ///< where the last row began
    std::size_t m_rowLine = 1;
};

} // namespace padside
