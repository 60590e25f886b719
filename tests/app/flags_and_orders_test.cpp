// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/acknowledge.h"
#include "core/review/unit_review.h"
#include "core/store/judgement_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "tests/app/command_runner.h"

#include <QTemporaryDir>

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using Json = nlohmann::json;

/// What the command line says of flags acknowledged and parts to order, on a sample of its own.
class FlagsAndOrders : public ::testing::Test
{
protected:
    void SetUp() override
    {
        const Said said = run({"demo", "--out", m_file, "--no-photos", "--units", "6"});
        ASSERT_EQ(said.exitCode, exitDone) << said.err;
    }

    [[nodiscard]] Json answer(std::vector<std::string> words) const
    {
        words.insert(words.begin() + 1, m_file);
        words.insert(words.end(), {"--as", "json"});
        const Said said = run(words);
        EXPECT_EQ(said.exitCode, exitDone) << said.err;
        return Json::parse(said.out);
    }

    QTemporaryDir m_folder;
    std::string m_file = m_folder.filePath(QStringLiteral("sample.padside")).toStdString();
};

} // namespace

TEST_F(FlagsAndOrders, AFlagAcknowledgedComesLastWithDayPersonAndReason)
{
    std::string tag;
    std::string sentence;
    {
        const auto store = Store::open(QString::fromStdString(m_file));
        const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
        const OutlookModel model(catalogue);
        for (const Unit& unit : store->sites().units()) {
            const auto flags
                = review(store->records().unitRecord(unit.id), catalogue, model, *parseDate("2026-11-25")).flags;
            if (flags.size() < 2)
                continue;
            Acknowledgement acknowledgement = acknowledgementOf(flags.front());
            acknowledgement.id = AcknowledgementId(UuidBytes{7});
            acknowledgement.reason = "the customer knows";
            acknowledgement.technician = "R. Vane";
            acknowledgement.at = *parseInstant("2026-11-25T09:00:00+00:00");
            store->judgements().acknowledge(acknowledgement);
            tag = unit.tag;
            sentence = say(flags.front().sentence);
            break;
        }
    }
    const Json rows = answer({"flags", "--unit", tag});
    ASSERT_GT(rows.size(), 1U);
    EXPECT_EQ(rows.front().at("state"), "stands");
    EXPECT_TRUE(rows.front().at("acknowledged").is_null());
    const Json& last = rows.back();
    EXPECT_EQ(last.at("sentence"), sentence);
    EXPECT_EQ(last.at("state"), "acknowledged on 2026-11-25 by R. Vane: the customer knows");
    EXPECT_EQ(last.at("acknowledged").at("reason"), "the customer knows");
    EXPECT_EQ(last.at("acknowledged").at("on"), "2026-11-25");
    EXPECT_NE(run({"flags", m_file, "--unit", tag}).out.find("the customer knows"), std::string::npos);
}

TEST_F(FlagsAndOrders, PartsToOrderComeByTheDayAndSayWhy)
{
    const Json rows = answer({"checks", "--orders"});
    ASSERT_FALSE(rows.empty());
    std::string last;
    for (const Json& row : rows) {
        EXPECT_GE(row.at("order_by").get<std::string>(), "2026-11-25");
        EXPECT_GE(row.at("order_by").get<std::string>(), last);
        last = row.at("order_by").get<std::string>();
        EXPECT_NE(row.at("why").get<std::string>().find("the chance that it is spent"), std::string::npos);
    }
    const std::string calendar = run({"checks", m_file, "--orders", "--as", "ics"}).out;
    EXPECT_NE(calendar.find("Order a spare"), std::string::npos);
}

TEST_F(FlagsAndOrders, AChecksReasonNamesItsToleranceWhereTheOutlookSetsItsDate)
{
    const Json rows = answer({"checks"});
    EXPECT_TRUE(std::ranges::any_of(rows, [](const Json& row) {
        return row.at("why").get<std::string>().find("the chance that it is spent pass") != std::string::npos;
    }));
    EXPECT_NE(run({"checks", m_file, "--as", "ics"}).out.find("the chance that it is"), std::string::npos);
}

} // namespace padside::test
