// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/trend/trend_point.h"
#include "tests/support/reference_table.h"

#include <map>
#include <string>
#include <vector>

namespace padside::test {

/// A series with the answers that belong to it.
struct ReferenceSeries
{
    std::string id;
    std::vector<TrendPoint> points;
    std::map<std::string, double> answers; ///< by column name; columns without a number are left out
};

/// The series of published_examples.json with the answers of published_results.csv.
[[nodiscard]] std::vector<ReferenceSeries> publishedSeries();

/// The series of gen_series.csv with the answers of gen_results.csv.
[[nodiscard]] std::vector<ReferenceSeries> generatedSeries();

/// Both.
[[nodiscard]] std::vector<ReferenceSeries> allReferenceSeries();

/// Sixteen digits are given; a few units in the last place may go to the order of adding up. Answers near 0 are
/// differences of larger numbers: the tolerance is set by the size of the values, not of the answer, there.
void expectSame(double actual, double expected, const std::string& what);

} // namespace padside::test
