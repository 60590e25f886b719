// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// One line of values.
struct CsvRow
{
    std::size_t line = 0; ///< of the file, counted from 1, where the row begins
    std::vector<std::string> cells; ///< as many as there are columns

    friend bool operator==(const CsvRow&, const CsvRow&) = default;
};

/// A file of comma-separated values with a line of column names on top.
struct CsvTable
{
    std::string name; ///< of the file, for problems
    std::vector<std::string> columns;
    std::vector<CsvRow> rows;

    /// Where a column stands; empty if there is none of that name.
    [[nodiscard]] std::optional<std::size_t> column(std::string_view columnName) const;
};

/// A row that could not be read, and why.
struct CsvFault
{
    std::size_t line = 0;
    Sentence what;
};

/// What could be read of a table, and the rows that could not.
struct CsvSalvage
{
    CsvTable table;
    std::vector<CsvFault> faults; ///< by line
};

/// Reads RFC 4180: quoted cells may hold commas, doubled quotes and line breaks; lines end in CRLF, LF or CR; a byte
/// order mark and empty lines are passed over; blanks around column names are dropped, those around values kept.
/// Refused, with file and line: text that is not UTF-8, a quote that is never closed or stands in the open, a row with
/// more or fewer cells than columns, a column name that is empty or there twice, semicolons or tabs for commas, a file
/// without a line.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view text, std::string name);

/// The same, but a bad row (not UTF-8, a quote out of place or never closed, too many or too few cells) costs only
/// itself. Refused are only: a bad or missing line of column names, semicolons or tabs for commas.
[[nodiscard]] Result<CsvSalvage> salvageCsv(std::string_view text, std::string name);

/// One line of RFC 4180 with CRLF at its end. Cells are quoted where they need it. A cell that a spreadsheet would take
/// for a formula (it begins with = + - @ or a tab or a carriage return, and is no number) gets an apostrophe in front.
[[nodiscard]] std::string csvLine(std::span<const std::string> cells);

} // namespace padside
