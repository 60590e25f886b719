// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/json_rows.h"

#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace padside {

namespace {

std::string textOf(const std::vector<nlohmann::ordered_json>& rows)
{
    return jsonRows(rows);
}

} // namespace

TEST(JsonRows, KeepTheOrderOfTheirKeys)
{
    EXPECT_EQ(textOf({{{"unit", "HB-01"}, {"grade", 3}, {"part", nullptr}}}),
              "[\n  {\n    \"unit\": \"HB-01\",\n    \"grade\": 3,\n    \"part\": null\n  }\n]\n");
    EXPECT_EQ(textOf({}), "[]\n");
}

// RFC 8259, section 6: "numeric values that cannot be represented in the grammar (such as Infinity and NaN) are not
// permitted".
TEST(JsonRows, HaveNoWordForWhatIsNotFinite)
{
    const auto rows = nlohmann::json::parse(textOf({{{"a", std::numeric_limits<double>::quiet_NaN()},
                                                     {"b", std::numeric_limits<double>::infinity()},
                                                     {"c", 0.1}}}));
    EXPECT_TRUE(rows[0]["a"].is_null());
    EXPECT_TRUE(rows[0]["b"].is_null());
    EXPECT_EQ(rows[0]["c"].get<double>(), 0.1);
}

TEST(JsonRows, OneBadByteDoesNotSpoilTheAnswer)
{
    const auto rows = nlohmann::json::parse(textOf({{{"note", "M\xFCller"}}, {{"note", "Müller"}}}));
    EXPECT_EQ(rows[0]["note"], "M\uFFFDller");
    EXPECT_EQ(rows[1]["note"], "Müller");
}

} // namespace padside
