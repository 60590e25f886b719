// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/trend/reference_series.h"

#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

std::map<std::string, double> answersOf(const ReferenceTable& table, std::size_t row)
{
    std::map<std::string, double> answers;
    for (const char* column : {"n", "S", "varS", "Z", "p_mk", "lo90", "hi90", "lo95", "hi95", "slope",
                               "intercept_separate", "gilbert_lo90", "gilbert_hi90", "gilbert_lo95", "gilbert_hi95"})
        answers[column] = table.number(row, column);
    return answers;
}

} // namespace

std::vector<ReferenceSeries> publishedSeries()
{
    std::ifstream file(referencePath("published_examples.json"));
    const auto examples = nlohmann::json::parse(file);
    const ReferenceTable results("published_results.csv");
    std::vector<ReferenceSeries> all;
    for (std::size_t row = 0; row < results.rows(); ++row) {
        ReferenceSeries series{results.text(row, "id"), {}, answersOf(results, row)};
        const auto& example = examples.at(series.id);
        for (std::size_t i = 0; i < example.at("x").size(); ++i)
            series.points.push_back({example["x"][i].get<double>(), example["y"][i].get<double>()});
        all.push_back(series);
    }
    return all;
}

std::vector<ReferenceSeries> generatedSeries()
{
    const ReferenceTable results("gen_results.csv");
    const ReferenceTable values("gen_series.csv");
    std::vector<ReferenceSeries> all;
    for (std::size_t row = 0; row < results.rows(); ++row) {
        ReferenceSeries series{results.text(row, "id"), {}, answersOf(results, row)};
        series.answers["slope_per_year"] = results.number(row, "slope_per_year");
        for (std::size_t i = 0; i < values.rows(); ++i) {
            if (values.text(i, "series_id") == series.id)
                series.points.push_back({values.number(i, "t_days"), values.number(i, "y")});
        }
        all.push_back(series);
    }
    return all;
}

std::vector<ReferenceSeries> allReferenceSeries()
{
    std::vector<ReferenceSeries> all = publishedSeries();
    for (ReferenceSeries& series : generatedSeries())
        all.push_back(std::move(series));
    return all;
}

void expectSame(double actual, double expected, const std::string& what)
{
    EXPECT_NEAR(actual, expected, 1e-13 + 1e-12 * std::abs(expected)) << what;
}

} // namespace padside::test
