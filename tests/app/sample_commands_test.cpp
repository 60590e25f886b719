// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/on_sample.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace padside::test {

/// Commands on the sample, made once for all of them (without photographs: they are tested with the sample).
class SampleCommands : public OnSample
{
protected:
    [[nodiscard]] static std::string path(const char* name)
    {
        return folder->filePath(QString::fromLatin1(name)).toStdString();
    }
    [[nodiscard]] static std::string firstTag()
    {
        const auto rows = nlohmann::json::parse(run({"checks", file, "--as", "json"}).out);
        return rows.at(0).at("unit").get<std::string>();
    }
};

TEST_F(SampleCommands, DemoDoesNotOverwriteAFile)
{
    const Said said = run({"demo", "--out", file});
    EXPECT_EQ(said.exitCode, exitDataSayNo);
    EXPECT_NE(said.err.find(file), std::string::npos) << said.err;
}

TEST_F(SampleCommands, VerifyIsClean)
{
    const Said said = run({"verify", file});
    EXPECT_EQ(said.exitCode, exitDone) << said.out;
    EXPECT_NE(said.out.find("all in order"), std::string::npos);
}

TEST_F(SampleCommands, FlagsAsJsonNameTheirUnitAndSayWhy)
{
    const Said said = run({"flags", file, "--as", "json"});
    ASSERT_EQ(said.exitCode, exitDone) << said.err;
    const auto rows = nlohmann::json::parse(said.out);
    ASSERT_FALSE(rows.empty());
    for (const auto& row : rows) {
        EXPECT_FALSE(row.at("unit").get<std::string>().empty());
        EXPECT_FALSE(row.at("sentence").get<std::string>().empty());
        EXPECT_FALSE(row.at("clears").get<std::string>().empty());
        EXPECT_EQ(row.at("sentence").get<std::string>().find('{'), std::string::npos) << row.at("sentence");
    }
}

TEST_F(SampleCommands, ChecksOfEachTripFitIntoItsDay)
{
    const auto rows = nlohmann::json::parse(run({"checks", file, "--as", "json"}).out);
    ASSERT_FALSE(rows.empty());
    for (const auto& row : rows) {
        EXPECT_LE(row.at("earliest").get<std::string>(), row.at("latest").get<std::string>());
        EXPECT_FALSE(row.at("why").get<std::string>().empty());
        const auto trip = row.at("trip").get<std::string>();
        const bool overdue = row.at("latest").get<std::string>() < "2026-11-25";
        EXPECT_TRUE(overdue || trip <= row.at("latest").get<std::string>()) << row;
        EXPECT_GE(trip, "2026-11-25");
    }
}

TEST_F(SampleCommands, ChecksOfOneUnitAreOnlyThat)
{
    const std::string tag = firstTag();
    const auto rows = nlohmann::json::parse(run({"checks", file, "--unit", tag, "--as", "json"}).out);
    ASSERT_FALSE(rows.empty());
    EXPECT_TRUE(std::ranges::all_of(rows, [&](const auto& row) { return row.at("unit") == tag; }));
}

TEST_F(SampleCommands, TheSameQuestionOnAnEarlierDayHasAnotherAnswer)
{
    EXPECT_NE(run({"flags", file, "--on", "2021-01-01"}).out, run({"flags", file}).out);
}

TEST_F(SampleCommands, CsvHasOneHeaderAndAsManyLinesAsJsonHasRows)
{
    const auto rows = nlohmann::json::parse(run({"flags", file, "--as", "json"}).out);
    const std::string csv = run({"flags", file, "--as", "csv"}).out;
    EXPECT_EQ(csv.rfind("unit,site,rule", 0), 0U);
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(csv, '\n')), rows.size() + 1);
}

TEST_F(SampleCommands, ChecksAsCalendarAreEventsOfRfc5545)
{
    const std::string calendar = run({"checks", file, "--as", "ics"}).out;
    EXPECT_EQ(calendar.rfind("BEGIN:VCALENDAR\r\n", 0), 0U);
    EXPECT_NE(calendar.find("DTSTAMP:20261125T120000Z\r\n"), std::string::npos);
    EXPECT_NE(calendar.find("END:VCALENDAR\r\n"), std::string::npos);
}

TEST_F(SampleCommands, ATagThatIsNotThereNamesSomeThatAre)
{
    const Said said = run({"flags", file, "--unit", "NO-SUCH"});
    EXPECT_EQ(said.exitCode, exitDataSayNo);
    EXPECT_NE(said.err.find("NO-SUCH"), std::string::npos);
    EXPECT_NE(said.err.find(firstTag()), std::string::npos) << said.err;
}

TEST_F(SampleCommands, ABadDateIsWrongUse)
{
    const Said said = run({"flags", file, "--on", "25.11.2026"});
    EXPECT_EQ(said.exitCode, exitWrongUse);
    EXPECT_NE(said.err.find("25.11.2026"), std::string::npos);
}

TEST_F(SampleCommands, BackupMakesAFileThatVerifies)
{
    const Said said = run({"backup", file, "--to", path("copy.padside")});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    EXPECT_EQ(run({"verify", path("copy.padside")}).exitCode, exitDone);
    EXPECT_EQ(run({"backup", file, "--to", path("copy.padside")}).exitCode, exitDataSayNo) << "must not overwrite";
}

TEST_F(SampleCommands, AForeignFileIsRefusedAndNotTouched)
{
    QFile foreign(QString::fromStdString(path("letter.txt")));
    ASSERT_TRUE(foreign.open(QIODevice::WriteOnly));
    foreign.write("Dear neighbour, the unit hums again.\n");
    foreign.close();
    const Said said = run({"flags", path("letter.txt")});
    EXPECT_EQ(said.exitCode, exitFileTrouble);
    EXPECT_FALSE(said.err.empty());
    ASSERT_TRUE(foreign.open(QIODevice::ReadOnly));
    EXPECT_EQ(foreign.readAll(), QByteArray("Dear neighbour, the unit hums again.\n"));
}

TEST_F(SampleCommands, SummaryWritesAPdf)
{
    const std::string pdf = path("summary.pdf");
    const Said said = run({"summary", file, "--unit", firstTag(), "--out", pdf});
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    QFile written(QString::fromStdString(pdf));
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_EQ(written.read(5), QByteArray("%PDF-"));
}

TEST_F(SampleCommands, SummaryOfADayWithoutAVisitNamesTheVisitsThereAre)
{
    const Said said = run({"summary", file, "--unit", firstTag(), "--visit", "1999-01-01", "--out", path("none.pdf")});
    EXPECT_EQ(said.exitCode, exitDataSayNo);
    EXPECT_NE(said.err.find("20"), std::string::npos) << said.err;
    EXPECT_FALSE(QFile::exists(QString::fromStdString(path("none.pdf"))));
}

TEST_F(SampleCommands, SummaryIntoAMissingFolderIsSaid)
{
    const Said said = run({"summary", file, "--unit", firstTag(), "--out", "/nowhere/summary.pdf"});
    EXPECT_EQ(said.exitCode, exitFileTrouble);
    EXPECT_NE(said.err.find("/nowhere"), std::string::npos) << said.err;
}

TEST_F(SampleCommands, OutlookTellsChancesARangeOfDatesAndWhyTheLikeliestFirst)
{
    const Said said = run({"outlook", file, "--unit", firstTag(), "--as", "json"});
    ASSERT_EQ(said.exitCode, 0) << said.err;
    const auto rows = nlohmann::json::parse(said.out);
    ASSERT_GT(rows.size(), 20U);
    double last = 1;
    for (const auto& row : rows) {
        const double year = row.at("chance_1_year").get<double>();
        EXPECT_LE(year, last);
        last = year;
        EXPECT_GE(row.at("chance_5_years").get<double>(), year);
        EXPECT_GE(year, row.at("chance_6_months").get<double>());
        EXPECT_FALSE(row.at("sentence").get<std::string>().empty());
        EXPECT_FALSE(row.at("because").get<std::string>().empty());
        if (row.at("early").is_string() && row.at("late").is_string()) {
            EXPECT_LE(row.at("early").get<std::string>(), row.at("late").get<std::string>());
        }
    }
    EXPECT_EQ(run({"outlook", file, "--unit", firstTag()}).out.find("nan"), std::string::npos);
}

} // namespace padside::test
