// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "tests/support/reference_table.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace padside::test {

/// One check of a published figure: what is given ("T_F=40;branch=dew"), what is wanted where one source gives several
/// figures, what is expected (empty: no answer) and how near.
class CheckRow
{
public:
    CheckRow(const ReferenceTable& table, std::size_t row);

    [[nodiscard]] bool gives(const std::string& name) const { return m_given.contains(name); }
    [[nodiscard]] const std::string& text(const std::string& name) const { return m_given.at(name); }
    [[nodiscard]] double number(const std::string& name) const { return std::stod(text(name)); }

    std::string wanted;
    std::optional<double> expected;
    double tolerance = 0;
    std::string what; ///< the whole row in words, for a failing test

private:
    std::map<std::string, std::string> m_given;
};

/// The rows of a topic in a table with the columns topic, given, wanted, expected, tolerance, source. Throws if there
/// are none: a check that checks nothing must not pass.
[[nodiscard]] std::vector<CheckRow> checkRows(const std::string& fileName, const std::string& topic);

} // namespace padside::test
