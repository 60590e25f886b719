// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"
#include "tests/support/made_up_weather.h"

#include <QTemporaryDir>

#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace padside::test {

namespace {

using Words = std::vector<std::string>;

nlohmann::json corrosionAnswer(Words words)
{
    words.insert(words.begin(), "calc");
    const Said said = run(words);
    EXPECT_EQ(said.exitCode, exitDone) << said.err;
    return said.exitCode == exitDone ? nlohmann::json::parse(said.out) : nlohmann::json::object();
}

std::string corrosionRefusal(Words words)
{
    words.insert(words.begin(), "calc");
    const Said said = run(words);
    EXPECT_EQ(said.exitCode, exitWrongUse) << said.out;
    EXPECT_EQ(said.out, "");
    return said.err;
}

/// A file that is there as long as this.
class FileOf
{
public:
    explicit FileOf(const std::string& text)
        : m_path(m_folder.filePath(QStringLiteral("file")).toStdString())
    {
        std::ofstream(m_path, std::ios::binary) << text;
    }
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    QTemporaryDir m_folder;
    std::string m_path;
};

Words corrosivityWords(const std::string& temperature, const std::string& chloride)
{
    return {"corrosivity", "--temperature", temperature, "--rh", "75%", "--so2", "10", "--chloride", chloride};
}

} // namespace

// Values: tests/reference/corrosivity.csv.
TEST(CalcCorrosivity, AnswersRateAndCategoryOfEachMetal)
{
    const auto answer = corrosionAnswer(corrosivityWords("10C", "5"));
    EXPECT_NEAR(answer.at("steel").at("rate_um_per_a"), 31.1714, 5e-5);
    EXPECT_EQ(answer.at("steel").at("category"), "C3");
    EXPECT_NEAR(answer.at("zinc").at("rate_um_per_a"), 1.3059, 5e-5);
    EXPECT_NEAR(answer.at("copper").at("rate_um_per_a"), 1.1899, 5e-5);
    EXPECT_NEAR(answer.at("aluminium").at("rate_g_per_m2a"), 0.2013, 5e-5);
    EXPECT_EQ(answer.at("aluminium").at("category"), "C2");
    EXPECT_EQ(answer.at("extrapolated"), false);
    const auto outside = corrosionAnswer(corrosivityWords("50F", "900"));
    EXPECT_EQ(outside.at("extrapolated"), true);
    EXPECT_EQ(outside.at("outside"), nlohmann::json::array({"chloride"}));
}

TEST(CalcCorrosivity, RefusesWhatIsNoAir)
{
    EXPECT_THAT(corrosionRefusal(corrosivityWords("10", "5")), testing::HasSubstr("no unit"));
    EXPECT_THAT(corrosionRefusal(corrosivityWords("10C", "-5")), testing::HasSubstr("less than nothing"));
    EXPECT_THAT(corrosionRefusal(corrosivityWords("nan", "5")), testing::HasSubstr("not a number"));
    EXPECT_THAT(corrosionRefusal(corrosivityWords("-300C", "5")), testing::HasSubstr("absolute zero"));
    EXPECT_THAT(corrosionRefusal(corrosivityWords("10C", "1e999")), testing::HasSubstr("not a number"));
}

// ISO 9224 in the tangent's form: 302.201 µm; tests/reference/long_term_loss.csv.
TEST(CalcLoss, AnswersTheLossAfterYears)
{
    EXPECT_NEAR(corrosionAnswer({"loss", "--metal", "steel", "--rate", "50um", "--years", "30"}).at("loss_um"), 302.201,
                0.01);
    EXPECT_NEAR(
        corrosionAnswer({"loss", "--metal", "steel", "--rate", "50um", "--years", "20", "--upper"}).at("loss_um"),
        50 * 5.599, 0.05);
    EXPECT_THAT(corrosionRefusal({"loss", "--metal", "tin", "--rate", "50um", "--years", "30"}),
                testing::HasSubstr("tin"));
    EXPECT_THAT(corrosionRefusal({"loss", "--metal", "steel", "--rate", "50um", "--years", "-1"}),
                testing::HasSubstr("1000 years"));
}

TEST(CalcRustGrade, AnswersBothGrades)
{
    const auto answer = corrosionAnswer({"rust-grade", "--percent", "0.7"});
    EXPECT_EQ(answer.at("iso4628_3"), "Ri3");
    EXPECT_EQ(answer.at("astm_d610"), 6);
    EXPECT_THAT(corrosionRefusal({"rust-grade", "--percent", "101"}), testing::HasSubstr("0 to 100"));
}

// Values: tests/reference/required_wall.csv.
TEST(CalcRequiredWall, AnswersShellAndHead)
{
    const auto answer = corrosionAnswer({"required-wall", "--pressure", "2.21MPa", "--outside-diameter", "127mm",
                                         "--stress", "118N/mm2", "--efficiency", "0.85"});
    EXPECT_NEAR(answer.at("shell_mm"), 1.3869, 0.0002);
    EXPECT_NEAR(answer.at("head_mm"), 1.3719, 0.0002);
    EXPECT_EQ(answer.at("least_mm"), 1.5);
    const auto inside = corrosionAnswer(
        {"required-wall", "--pressure", "500psi", "--inside-diameter", "36in", "--stress", "15000psi"});
    EXPECT_NEAR(inside.at("shell_mm").get<double>() / 25.4, 0.6122, 0.0001);
    EXPECT_THAT(corrosionRefusal({"required-wall", "--pressure", "2.21MPa", "--stress", "118MPa"}),
                testing::HasSubstr("--outside-diameter"));
    EXPECT_THAT(
        corrosionRefusal({"required-wall", "--pressure", "90MPa", "--outside-diameter", "127mm", "--stress", "118MPa"}),
        testing::HasSubstr("0.385"));
}

TEST(CalcWall, AnswersRatesAndLife)
{
    const FileOf file("date,thickness_mm\n2006-05-04,3.5\n2016-05-04,3.0\n2026-05-04,2.4\n");
    const auto answer = corrosionAnswer({"wall", file.path(), "--required", "1.8mm"});
    EXPECT_NEAR(answer.at("long_rate"), 0.055, 0.0001);
    EXPECT_NEAR(answer.at("short_rate"), 0.06, 0.0001);
    EXPECT_NEAR(answer.at("remaining_life_a"), 10, 0.01);
    EXPECT_NEAR(answer.at("next_interval_a"), 5, 0.01);
    EXPECT_EQ(answer.at("next_on").get<std::string>().substr(0, 7), "2031-05");
    const FileOf still("date,thickness_mm\n2016-05-04,3.0\n2026-05-04,3.0\n");
    const auto none = corrosionAnswer({"wall", still.path(), "--required", "1.8mm"});
    EXPECT_TRUE(none.at("remaining_life_a").is_null());
    EXPECT_NEAR(none.at("at_least_a"), 120, 0.5);
}

TEST(CalcWeather, AnswersMeansAndWetHoursAndNamesBadRows)
{
    const FileOf file(madeUpEpw(8760) + "2025,13,1,1,0,?9,warm,9,50\n2025,13,1,2,0,?9,99.9,9,50\n");
    const auto answer = corrosionAnswer({"weather", file.path()});
    EXPECT_EQ(answer.at("rows"), 8760);
    EXPECT_EQ(answer.at("skipped"), 2);
    EXPECT_EQ(answer.at("gaps"), 1);
    EXPECT_THAT(answer.at("faults").at(0).get<std::string>(), testing::HasSubstr("line 8769: “warm”"));
    EXPECT_NEAR(answer.at("mean_temperature_C"), 12, 0.3);
    EXPECT_GT(answer.at("wet_hours"), 1000);
    const double cold = answer.at("sweating_percent");
    EXPECT_LT(corrosionAnswer({"weather", file.path(), "--surface", "60F"}).at("sweating_percent").get<double>(), cold);
    EXPECT_THAT(corrosionRefusal({"weather", file.path(), "--surface", "8"}), testing::HasSubstr("no unit"));
    EXPECT_EQ(run({"calc", "weather", "/nowhere/x.epw"}).exitCode, exitFileTrouble);
}

} // namespace padside::test
