// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/version.h"
#include "tests/app/command_runner.h"

#include <QProcess>
#include <QStandardPaths>

#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <regex>
#include <set>

namespace padside::test {

namespace {

const std::string manPage = PADSIDE_SOURCE_DIR "/resources/man/padside.1";

/// Long options by command; "" is the program without one.
using OptionsByCommand = std::map<std::string, std::set<std::string>>;

/// The words of a text that look like a long option.
std::set<std::string> longOptions(const std::string& text)
{
    static const std::regex option("(^|[\\s,|\\[(])(--[a-z][a-z0-9-]*)");
    std::set<std::string> found;
    for (std::sregex_iterator at(text.begin(), text.end(), option); at != std::sregex_iterator(); ++at)
        found.insert((*at)[2]);
    return found;
}

/// The commands that a help text lists below "Subcommands:".
std::vector<std::string> commandsIn(const std::string& help)
{
    std::vector<std::string> commands;
    const auto start = help.find("Subcommands:");
    std::istringstream lines(start == std::string::npos ? std::string() : help.substr(start));
    static const std::regex command("^  ([a-z][a-z-]*)( .*)?$");
    std::smatch match;
    for (std::string line; std::getline(lines, line);) {
        if (std::regex_match(line, match, command))
            commands.push_back(match[1]);
    }
    return commands;
}

void askHelp(std::vector<std::string> words, OptionsByCommand& found)
{
    std::string name;
    for (const std::string& word : words)
        name += (name.empty() ? "" : " ") + word;
    words.emplace_back("--help");
    const std::string help = run(words).out;
    found[name] = longOptions(help);
    if (!name.empty())
        found[name].erase("--help"); // said once, for all
    words.pop_back();
    for (const std::string& command : commandsIn(help)) {
        words.push_back(command);
        askHelp(words, found);
        words.pop_back();
    }
}

std::string withoutFonts(const std::string& line)
{
    const std::string plain = std::regex_replace(line, std::regex("\\\\f[BIR]"), "");
    return std::regex_replace(plain, std::regex("\\\\-"), "-");
}

OptionsByCommand fromManPage()
{
    OptionsByCommand found;
    std::ifstream page(manPage);
    static const std::regex heading("^\\.SS padside ((?:[a-z][a-z-]*)(?: [a-z][a-z-]*)*).*");
    std::string command;
    bool reading = false;
    std::smatch match;
    for (std::string line; std::getline(page, line);) {
        line = withoutFonts(line);
        if (line.rfind(".SH ", 0) == 0) {
            reading = line == ".SH OPTIONS" || line == ".SH COMMANDS";
            command.clear();
        }
        if (std::regex_match(line, match, heading))
            command = match[1];
        if (reading)
            found[command].merge(longOptions(line));
    }
    return found;
}

} // namespace

TEST(ManPage, HasEveryCommandWithItsOptionsAndNoOthers)
{
    OptionsByCommand told;
    askHelp({}, told);
    ASSERT_GT(told.size(), 7U) << "the help was not understood";
    const OptionsByCommand written = fromManPage();
    for (const auto& [command, options] : told) {
        const auto found = written.find(command);
        ASSERT_NE(found, written.end()) << "not in the man page: padside " << command;
        EXPECT_EQ(found->second, options) << "padside " << command;
    }
    for (const auto& [command, options] : written)
        EXPECT_TRUE(told.contains(command)) << "in the man page only: padside " << command;
}

TEST(ManPage, IsOfThisVersion)
{
    std::ifstream page(manPage);
    const std::string text((std::istreambuf_iterator<char>(page)), std::istreambuf_iterator<char>());
    EXPECT_NE(text.find(std::string("\"Padside ") + programVersion + "\""), std::string::npos);
}

TEST(ManPage, IsFormattedWithoutAWarning)
{
    if (QStandardPaths::findExecutable(QStringLiteral("groff")).isEmpty())
        GTEST_SKIP() << "groff is not installed";
    QProcess groff;
    groff.setProcessChannelMode(QProcess::MergedChannels);
    groff.start(QStringLiteral("groff"),
                {QStringLiteral("-man"), QStringLiteral("-Tutf8"), QStringLiteral("-ww"), QStringLiteral("-z"),
                 QString::fromStdString(manPage)});
    ASSERT_TRUE(groff.waitForFinished());
    EXPECT_EQ(groff.exitCode(), 0);
    EXPECT_EQ(groff.readAll().toStdString(), "");
}

} // namespace padside::test
