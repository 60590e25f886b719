// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <string>
#include <vector>

namespace padside::test {

/// Where a file of tests/reference lies.
[[nodiscard]] std::string referencePath(const std::string& fileName);

/// A table of tests/reference by column name; numbers are read where asked for.
class ReferenceTable
{
public:
    explicit ReferenceTable(const std::string& fileName);

    [[nodiscard]] std::size_t rows() const { return m_rows.size(); }
    [[nodiscard]] const std::string& text(std::size_t row, const std::string& column) const;
    [[nodiscard]] double number(std::size_t row, const std::string& column) const;

private:
    std::map<std::string, std::size_t> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace padside::test
