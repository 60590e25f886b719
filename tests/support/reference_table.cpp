// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/reference_table.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace padside::test {

namespace {

/// The reference tables hold no quotes.
std::vector<std::string> cellsOf(const std::string& line)
{
    std::vector<std::string> cells;
    std::istringstream stream(line + ",");
    for (std::string cell; std::getline(stream, cell, ',');)
        cells.push_back(cell);
    return cells;
}

} // namespace

std::string referencePath(const std::string& fileName)
{
    return PADSIDE_SOURCE_DIR "/tests/reference/" + fileName;
}

ReferenceTable::ReferenceTable(const std::string& fileName)
{
    std::ifstream file(referencePath(fileName));
    std::string line;
    if (!std::getline(file, line))
        throw std::runtime_error("cannot read " + referencePath(fileName));
    for (const std::string& column : cellsOf(line))
        m_columns.emplace(column, m_columns.size());
    while (std::getline(file, line))
        m_rows.push_back(cellsOf(line));
}

const std::string& ReferenceTable::text(std::size_t row, const std::string& column) const
{
    return m_rows.at(row).at(m_columns.at(column));
}

double ReferenceTable::number(std::size_t row, const std::string& column) const
{
    return std::stod(text(row, column));
}

} // namespace padside::test
