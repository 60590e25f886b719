// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/command_runner.h"

#include <gtest/gtest.h>

namespace padside::test {

using ::testing::TestWithParam;

TEST(CommandLine, HelpNamesEachCommandAndTheExitCodes)
{
    const Said said = run({"--help"});
    EXPECT_EQ(said.exitCode, exitDone);
    for (const char* name : {"demo", "summary", "flags", "checks", "verify", "backup", "calc"})
        EXPECT_NE(said.out.find(name), std::string::npos) << name;
    EXPECT_NE(said.out.find("Exit codes"), std::string::npos);
    EXPECT_TRUE(said.err.empty());
}

class HelpOfCommand : public TestWithParam<std::vector<std::string>>
{
};

TEST_P(HelpOfCommand, IsThere)
{
    auto words = GetParam();
    words.emplace_back("--help");
    const Said said = run(words);
    EXPECT_EQ(said.exitCode, exitDone);
    EXPECT_NE(said.out.find(words[words.size() - 2]), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(
    EachOne, HelpOfCommand,
    ::testing::Values(std::vector<std::string>{"demo"}, std::vector<std::string>{"summary"},
                      std::vector<std::string>{"flags"}, std::vector<std::string>{"checks"},
                      std::vector<std::string>{"verify"}, std::vector<std::string>{"backup"},
                      std::vector<std::string>{"calc"}, std::vector<std::string>{"calc", "air"},
                      std::vector<std::string>{"calc", "saturation"}, std::vector<std::string>{"calc", "superheat"},
                      std::vector<std::string>{"calc", "subcooling"},
                      std::vector<std::string>{"calc", "target-superheat"},
                      std::vector<std::string>{"calc", "corrosivity"}, std::vector<std::string>{"calc", "weather"},
                      std::vector<std::string>{"calc", "loss"}, std::vector<std::string>{"calc", "rust-grade"},
                      std::vector<std::string>{"calc", "required-wall"}, std::vector<std::string>{"calc", "wall"},
                      std::vector<std::string>{"calc", "trend"}, std::vector<std::string>{"calc", "trips"}));

TEST(CommandLine, VersionIsOneLine)
{
    const Said said = run({"--version"});
    EXPECT_EQ(said.exitCode, exitDone);
    EXPECT_EQ(said.out.rfind("padside ", 0), 0U);
}

TEST(CommandLine, WithoutACommandItAsksForAWindow)
{
    EXPECT_TRUE(run({}).wantsWindow);
    EXPECT_TRUE(run({"records.padside"}).wantsWindow);
}

TEST(CommandLine, AnUnknownOptionIsWrongUse)
{
    const Said said = run({"flags", "x.padside", "--nonsense"});
    EXPECT_EQ(said.exitCode, exitWrongUse);
    EXPECT_NE(said.err.find("--nonsense"), std::string::npos);
}

TEST(CommandLine, AnEmptyWordIsWrongUse)
{
    // This line once never came to an end.
    const Said said = run({"calc", "saturation", "R-410A", "", "--gauge\"\"-inf", "118psi"});
    EXPECT_EQ(said.exitCode, exitWrongUse);
    EXPECT_NE(said.err.find("one of the words is empty"), std::string::npos) << said.err;
    EXPECT_EQ(run({"flags", ""}).exitCode, exitWrongUse);
}

TEST(CommandLine, AMissingFileNameIsWrongUse)
{
    EXPECT_EQ(run({"flags"}).exitCode, exitWrongUse);
    EXPECT_EQ(run({"backup", "x.padside"}).exitCode, exitWrongUse);
}

TEST(CommandLine, AnUnknownFormIsWrongUse)
{
    EXPECT_EQ(run({"checks", "x.padside", "--as", "xml"}).exitCode, exitWrongUse);
}

TEST(CommandLine, AFileThatIsNotThereIsSaidInOneSentence)
{
    for (const char* command : {"flags", "checks", "verify"}) {
        const Said said = run({command, "/nowhere/at all.padside"});
        EXPECT_EQ(said.exitCode, exitFileTrouble) << command;
        EXPECT_NE(said.err.find("/nowhere/at all.padside"), std::string::npos) << said.err;
        EXPECT_TRUE(said.out.empty());
    }
}

TEST(CommandLine, EachKindOfProblemHasItsExitCode)
{
    EXPECT_EQ(exitCodeOf(ProblemKind::badInput), 2);
    EXPECT_EQ(exitCodeOf(ProblemKind::cannotRead), 3);
    EXPECT_EQ(exitCodeOf(ProblemKind::cannotWrite), 3);
    EXPECT_EQ(exitCodeOf(ProblemKind::refused), 1);
}

} // namespace padside::test
