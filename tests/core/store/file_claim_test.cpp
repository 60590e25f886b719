// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/file_claim.h"
#include "core/store/store_error.h"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QSysInfo>
#include <QTemporaryDir>

#include <chrono>
#include <csignal>
#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

class FileClaimTest : public ::testing::Test
{
protected:
    FileClaimTest() { write(m_file, "a record"); }

    static void write(const QString& path, const QByteArray& content)
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }

    /// Another program that claims the file; what it said.
    QByteArray startHolder(QProcess& holder)
    {
        holder.start(QCoreApplication::applicationDirPath() + u"/padside_store_claim_holder"_s, {m_file});
        EXPECT_TRUE(holder.waitForReadyRead(30'000)) << holder.readAllStandardError().toStdString();
        return holder.readAllStandardOutput().trimmed();
    }

    [[nodiscard]] bool canBeClaimed() const { return std::holds_alternative<FileClaim>(FileClaim::make(m_file)); }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(u"harbour.padside"_s);
    QString m_mark = m_file + u".in-use"_s;
};

TEST_F(FileClaimTest, LeavesAMarkBesideTheFileForAsLongAsItIsHeld)
{
    {
        const auto outcome = FileClaim::make(m_file);
        ASSERT_TRUE(std::holds_alternative<FileClaim>(outcome));
        EXPECT_TRUE(QFile::exists(m_mark));
    }
    EXPECT_FALSE(QFile::exists(m_mark));
}

TEST_F(FileClaimTest, ASecondClaimIsToldWhoWhereAndSinceWhen)
{
    QProcess other;
    ASSERT_EQ(startHolder(other), "held");
    const auto outcome = FileClaim::make(m_file);
    const auto* holder = std::get_if<FileHolder>(&outcome);
    ASSERT_NE(holder, nullptr);
    EXPECT_EQ(holder->process, other.processId());
    EXPECT_EQ(holder->host, QSysInfo::machineHostName());
    EXPECT_TRUE(holder->onThisHost);
    ASSERT_TRUE(holder->since.has_value());
    const auto age = std::chrono::system_clock::now() - holder->since->utc;
    EXPECT_LT(age, std::chrono::minutes(1));
    const std::string sentence = say(inUseSentence(m_file, *holder));
    EXPECT_NE(sentence.find("harbour.padside"), std::string::npos) << sentence;
    EXPECT_NE(sentence.find(std::to_string(other.processId())), std::string::npos) << sentence;
    EXPECT_NE(sentence.find(instantText(*holder->since).substr(0, 10)), std::string::npos) << sentence;
    other.kill();
    other.waitForFinished();
}

TEST_F(FileClaimTest, AHolderThatEndsFreesTheFile)
{
    QProcess other;
    ASSERT_EQ(startHolder(other), "held");
    EXPECT_FALSE(canBeClaimed());
    other.closeWriteChannel();
    ASSERT_TRUE(other.waitForFinished());
    EXPECT_TRUE(canBeClaimed());
}

TEST_F(FileClaimTest, AKilledHolderDoesNotStandInTheWay)
{
    QProcess other;
    ASSERT_EQ(startHolder(other), "held");
    ::kill(static_cast<pid_t>(other.processId()), SIGKILL);
    ASSERT_TRUE(other.waitForFinished());
    ASSERT_EQ(other.exitStatus(), QProcess::CrashExit);
    EXPECT_TRUE(QFile::exists(m_mark)) << "the kill left its mark, or this tests nothing";
    EXPECT_TRUE(canBeClaimed());
}

TEST_F(FileClaimTest, AMarkOfAnotherComputerIsRefusedUntilThePersonDropsIt)
{
    write(m_mark, "4711\npadside\nshed-laptop\n0123456789abcdef\n\n");
    const auto outcome = FileClaim::make(m_file);
    const auto* holder = std::get_if<FileHolder>(&outcome);
    ASSERT_NE(holder, nullptr);
    EXPECT_FALSE(holder->onThisHost);
    EXPECT_NE(say(inUseSentence(m_file, *holder)).find("shed-laptop"), std::string::npos);
    EXPECT_TRUE(FileClaim::dropMarkOfOtherHost(m_file));
    EXPECT_TRUE(canBeClaimed());
}

TEST_F(FileClaimTest, AComputerOfTheSameNameButAnotherMachineNumberIsAnother)
{
    write(m_mark, "4711\npadside\n" + QSysInfo::machineHostName().toUtf8() + "\n0123456789abcdef\n\n");
    if (QSysInfo::machineUniqueId().isEmpty())
        GTEST_SKIP() << "this machine has no number";
    const auto outcome = FileClaim::make(m_file);
    ASSERT_TRUE(std::holds_alternative<FileHolder>(outcome));
    EXPECT_FALSE(std::get<FileHolder>(outcome).onThisHost);
}

TEST_F(FileClaimTest, TheMarkOfARunningProgramHereIsNeverDropped)
{
    const auto held = FileClaim::make(m_file);
    EXPECT_FALSE(FileClaim::dropMarkOfOtherHost(m_file));
    EXPECT_TRUE(QFile::exists(m_mark));
}

TEST_F(FileClaimTest, TwoLinksToOneFileAreOneFile)
{
    const QString link = m_folder.filePath(u"link.padside"_s);
    ASSERT_TRUE(QFile::link(m_file, link));
    const auto held = FileClaim::make(m_file);
    EXPECT_TRUE(std::holds_alternative<FileHolder>(FileClaim::make(link)));
}

TEST_F(FileClaimTest, ACommandThatWritesIsRefusedWithTheSentence)
{
    const auto held = FileClaim::make(m_file);
    try {
        const FileClaim second = FileClaim::makeOrThrow(m_file);
        FAIL() << "two claims on one file";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.problem().kind, ProblemKind::refused);
        EXPECT_NE(say(error.problem().what).find("harbour.padside"), std::string::npos);
    }
}

TEST_F(FileClaimTest, WhereNoMarkCanLieTheProblemIsSaid)
{
    const auto outcome = FileClaim::make(m_folder.filePath(u"no such folder/x.padside"_s));
    ASSERT_TRUE(std::holds_alternative<Problem>(outcome));
    EXPECT_NE(say(std::get<Problem>(outcome).what).find("no such folder"), std::string::npos);
}

} // namespace padside::test
