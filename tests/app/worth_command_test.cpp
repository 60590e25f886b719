// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/on_sample.h"

#include <QFile>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using nlohmann::json;
using ::testing::HasSubstr;

/// The worth of units of the sample, made once.
class WorthCommand : public OnSample
{
protected:
    [[nodiscard]] static json worth(const std::string& unit)
    {
        const Said said = run({"worth", file, "--unit", unit, "--on", "2026-11-20", "--as", "json"});
        EXPECT_EQ(said.exitCode, exitDone) << said.err;
        return json::parse(said.out);
    }
};

TEST_F(WorthCommand, SaysBothYearlyCostsAndWhatWouldTurnTheAnswer)
{
    const json unit = worth("HW-01");
    EXPECT_EQ(unit.at("unit"), "HW-01");
    const json& answer = unit.at("carry_on_or_replace");
    ASSERT_FALSE(answer.is_null());
    EXPECT_EQ(answer.at("carry_on").get<bool>(),
              answer.at("carry_on_a_year").get<double>() <= answer.at("replace_a_year").get<double>());
    EXPECT_TRUE(answer.at("energy_counted").get<bool>());
    for (const json& turn : answer.at("turning")) {
        const double factor = turn.at("turns_at").get<double>() / turn.at("today").get<double>();
        EXPECT_GE(factor, 0.2499);
        EXPECT_LE(factor, 4.001);
    }
}

TEST_F(WorthCommand, RanksTheChoicesOfEachPartByCostAndNamesWhatIsMissing)
{
    const json parts = worth("HW-01").at("parts");
    ASSERT_GT(parts.size(), 8U);
    bool someMissing = false;
    for (const json& part : parts) {
        double before = 0;
        for (const json& choice : part.at("choices")) {
            if (choice.at("present_cost").is_null())
                continue;
            EXPECT_GE(choice.at("present_cost").get<double>(), before) << part.at("part");
            before = choice.at("present_cost").get<double>();
            EXPECT_FALSE(choice.at("reason").get<std::string>().empty());
        }
        someMissing |= !part.at("needed").empty();
    }
    EXPECT_TRUE(someMissing) << "the sample leaves a cost out on purpose";
}

TEST_F(WorthCommand, TheTableEndsInTheAnswerAndItsTurningPoints)
{
    const Said said = run({"worth", file, "--unit", "HW-01", "--on", "2026-11-20"});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    EXPECT_THAT(said.out, HasSubstr("YEARS GAINED"));
    EXPECT_THAT(said.out, HasSubstr(" a year"));
}

TEST_F(WorthCommand, AmountsHaveTheCurrencyThatIsNamed)
{
    const std::vector<std::string> asked{"worth", file, "--unit", "HW-01", "--on", "2026-11-20"};
    std::vector<std::string> named = asked;
    named.insert(named.end(), {"--currency", "EUR"});
    const Said plain = run(asked);
    const Said euros = run(named);
    EXPECT_EQ(euros.exitCode, exitDone) << euros.err;
    EXPECT_THAT(euros.out, HasSubstr("about EUR "));
    EXPECT_THAT(euros.out, HasSubstr("price of a new unit: EUR "));
    EXPECT_THAT(plain.out, testing::Not(HasSubstr("EUR")));
    named.back() = "12";
    const Said refused = run(named);
    EXPECT_EQ(refused.exitCode, exitWrongUse);
    EXPECT_THAT(refused.err, HasSubstr("“12” can't stand beside amounts of money."));
}

TEST_F(WorthCommand, AUnitIsNeededAndMustBeThere)
{
    EXPECT_EQ(run({"worth", file}).exitCode, exitWrongUse);
    const Said unknown = run({"worth", file, "--unit", "XX-99"});
    EXPECT_NE(unknown.exitCode, exitDone);
    EXPECT_THAT(unknown.err, HasSubstr("XX-99"));
}

TEST_F(WorthCommand, TheOwnersHistoryIsWrittenAsPdf)
{
    const QString pdf = folder->filePath(QStringLiteral("history.pdf"));
    const Said said = run({"history", file, "--unit", "HW-01", "--on", "2026-11-20", "--out", pdf.toStdString()});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    QFile written(pdf);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_TRUE(written.read(5) == QByteArray("%PDF-"));
    const Said nowhere = run({"history", file, "--unit", "HW-01", "--out", "/nowhere/history.pdf"});
    EXPECT_NE(nowhere.exitCode, exitDone);
    EXPECT_THAT(nowhere.err, HasSubstr("/nowhere"));
}

} // namespace

} // namespace padside::test
