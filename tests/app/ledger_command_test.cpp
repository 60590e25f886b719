// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/on_sample.h"

#include <gtest/gtest.h>
#include <map>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using nlohmann::json;

/// The ledger of the sample, made once.
class LedgerCommand : public OnSample
{
protected:
    [[nodiscard]] static json ledger(const std::vector<std::string>& more = {})
    {
        std::vector<std::string> words{"ledger", file, "--as", "json"};
        words.insert(words.end(), more.begin(), more.end());
        const Said said = run(words);
        EXPECT_EQ(said.exitCode, exitDone) << said.err;
        return json::parse(said.out);
    }
    /// The first unit that leaked.
    [[nodiscard]] static json leaking()
    {
        for (const json& row : ledger()) {
            if (row.at("of") == "unit" && !row.at("last_top_up").is_null())
                return row;
        }
        throw std::runtime_error("no unit of the sample leaks");
    }
};

TEST_F(LedgerCommand, AccountsForTheSameMassByUnitAndByCylinder)
{
    std::map<std::string, double> sums;
    for (const json& row : ledger()) {
        for (const char* key : {"in_kg", "recovered_kg", "out_of_cylinder_kg", "into_cylinder_kg"})
            sums[key] += row.contains(key) ? row.at(key).get<double>() : 0;
    }
    EXPECT_GT(sums["in_kg"], 0);
    EXPECT_GT(sums["recovered_kg"], 0);
    EXPECT_NEAR(sums["in_kg"], sums["out_of_cylinder_kg"], 1e-9);
    EXPECT_NEAR(sums["recovered_kg"], sums["into_cylinder_kg"], 1e-9);
}

TEST_F(LedgerCommand, TellsBothRatesTheLimitAndWhetherItBinds)
{
    const json unit = leaking();
    EXPECT_GT(unit.at("leak_rate_annualizing").get<double>(), 0);
    EXPECT_GT(unit.at("leak_rate_rolling").get<double>(), 0);
    EXPECT_EQ(unit.at("limit").get<double>(), 0.1); // comfort cooling: 40 CFR 82.157
    EXPECT_EQ(unit.at("limit_force"), "advisory"); // small units
    EXPECT_NE(unit.at("says").get<std::string>().find("advisory"), std::string::npos);
}

TEST_F(LedgerCommand, OfOneUnitHasItsRowAndItsCylinders)
{
    const std::string tag = leaking().at("name").get<std::string>();
    const json rows = ledger({"--unit", tag});
    ASSERT_GE(rows.size(), 2U);
    EXPECT_EQ(rows.at(0).at("name"), tag);
    for (std::size_t i = 1; i < rows.size(); ++i)
        EXPECT_EQ(rows.at(i).at("of"), "cylinder");
}

TEST_F(LedgerCommand, OnADayBeforeTheRecordHasNothingToSay)
{
    EXPECT_TRUE(ledger({"--on", "1990-01-01"}).empty());
    EXPECT_EQ(run({"ledger", file, "--on", "1990-01-01"}).out,
              "No refrigerant was put in or taken out up to 1990-01-01.\n");
}

TEST_F(LedgerCommand, AsATableShowsMassesToTwoPlaces)
{
    const Said said = run({"ledger", file});
    EXPECT_EQ(said.out.substr(0, 2), "OF");
    EXPECT_EQ(said.out.find("000000"), std::string::npos);
}

TEST_F(LedgerCommand, RefusesATagThatIsNotThere)
{
    const Said said = run({"ledger", file, "--unit", "NO-99"});
    EXPECT_EQ(said.exitCode, exitDataSayNo);
    EXPECT_NE(said.err.find("NO-99"), std::string::npos);
}

TEST_F(LedgerCommand, FlagsNameTheUnitsThatHadToBeFilledAgain)
{
    bool found = false;
    for (const json& row : json::parse(run({"flags", file, "--as", "json"}).out)) {
        if (row.at("rule") != "charge-added-again")
            continue;
        found = true;
        EXPECT_FALSE(row.at("evidence").empty());
        EXPECT_EQ(row.at("part"), "");
    }
    EXPECT_TRUE(found);
}

} // namespace

} // namespace padside::test
