// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/reference_table.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace padside::test {

namespace {

std::vector<std::string> pieces(const std::string& text, char separator)
{
    std::vector<std::string> all;
    std::istringstream stream(text + separator);
    for (std::string piece; std::getline(stream, piece, separator);)
        all.push_back(piece);
    return all;
}

} // namespace

ReferenceTable::ReferenceTable(const std::string& fileName)
{
    const std::string path = PADSIDE_SOURCE_DIR "/tests/reference/" + fileName;
    std::ifstream file(path);
    std::string line;
    if (!std::getline(file, line))
        throw std::runtime_error("cannot read " + path);
    for (const std::string& column : pieces(line, ','))
        m_columns.emplace(column, m_columns.size());
    while (std::getline(file, line))
        m_rows.push_back(pieces(line, ','));
}

const std::string& ReferenceTable::text(std::size_t row, const std::string& column) const
{
    return m_rows.at(row).at(m_columns.at(column));
}

double ReferenceTable::number(std::size_t row, const std::string& column) const
{
    return std::stod(text(row, column));
}

CheckRow::CheckRow(const ReferenceTable& table, std::size_t row)
    : wanted(table.text(row, "wanted"))
    , tolerance(table.number(row, "tolerance"))
    , what(table.text(row, "topic") + " " + table.text(row, "given") + " " + wanted + " (" + table.text(row, "source")
           + ")")
{
    for (const std::string& one : pieces(table.text(row, "given"), ';')) {
        const auto equals = one.find('=');
        m_given[one.substr(0, equals)] = one.substr(equals + 1);
    }
    if (!table.text(row, "expected").empty())
        expected = table.number(row, "expected");
}

std::vector<CheckRow> checkRows(const std::string& fileName, const std::string& topic)
{
    const ReferenceTable table(fileName);
    std::vector<CheckRow> all;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        if (table.text(row, "topic") == topic)
            all.emplace_back(table, row);
    }
    if (all.empty())
        throw std::runtime_error("no rows of " + topic + " in " + fileName);
    return all;
}

} // namespace padside::test
