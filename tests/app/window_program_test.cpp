// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/window_program.h"
#include "tests/app/command_runner.h"
#include "ui/shell/main_window.h"
#include "ui/shell/message_line.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

/// The program with its window, with dialogs that write down what they were asked.
class WindowProgramTest : public ::testing::Test
{
protected:
    using Opened = WindowProgram::Opened;

    WindowProgramTest()
    {
        QSettings().clear();
        EXPECT_EQ(run({"demo", "--out", m_file.toStdString(), "--units", "2", "--years", "1", "--no-photos"}).exitCode,
                  exitDone);
    }

    [[nodiscard]] Dialogs dialogs()
    {
        return {[this](const QString& sentence) { m_told << sentence; },
                [this](const QString& question, const QString&, const QString&) {
                    m_asked << question;
                    return m_answer;
                }};
    }
    [[nodiscard]] std::unique_ptr<WindowProgram> program()
    {
        return std::make_unique<WindowProgram>(*qobject_cast<QApplication*>(qApp), dialogs());
    }
    /// As if a computer called shed-laptop had the file open.
    void markFromElsewhere() const
    {
        QFile mark(m_file + u".in-use"_s);
        ASSERT_TRUE(mark.open(QIODevice::WriteOnly));
        mark.write("4711\npadside\nshed-laptop\n0123456789abcdef\n\n");
    }
    [[nodiscard]] static QString lineOf(const WindowProgram& program)
    {
        return program.window()->findChild<MessageLine*>()->text();
    }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(u"harbour.padside"_s);
    QStringList m_told;
    QStringList m_asked;
    bool m_answer = false;
};

TEST_F(WindowProgramTest, AFileThatAnotherProgramHasOpenIsRefusedWithASentence)
{
    const auto first = program();
    ASSERT_EQ(first->open(m_file), Opened::here);
    const auto second = program();
    EXPECT_EQ(second->open(m_file), Opened::notAtAll);
    EXPECT_EQ(second->window(), nullptr);
    ASSERT_EQ(m_told.size(), 1);
    EXPECT_TRUE(m_told[0].contains(m_file)) << m_told[0].toStdString();
    EXPECT_TRUE(m_told[0].contains(QString::number(QCoreApplication::applicationPid()))) << m_told[0].toStdString();
}

TEST_F(WindowProgramTest, TheSentenceIsSaidInTheWindowThatAskedAndItsFileStaysOpen)
{
    const auto first = program();
    ASSERT_EQ(first->open(m_file), Opened::here);
    const auto second = program();
    ASSERT_EQ(second->open(m_folder.filePath(u"other.padside"_s)), Opened::here);
    EXPECT_EQ(second->open(m_file), Opened::notAtAll);
    EXPECT_TRUE(lineOf(*second).contains(m_file)) << lineOf(*second).toStdString();
    EXPECT_TRUE(second->window()->file().endsWith(u"other.padside"_s));
    EXPECT_TRUE(m_told.empty()) << "no dialog over a window that can say it itself";
}

TEST_F(WindowProgramTest, OpeningTheOpenFileAgainShowsTheSameWindow)
{
    const auto first = program();
    ASSERT_EQ(first->open(m_file), Opened::here);
    const MainWindow* window = first->window();
    EXPECT_EQ(first->open(m_file), Opened::here);
    EXPECT_EQ(first->window(), window);
}

TEST_F(WindowProgramTest, AnotherFileInTheSameWindowGivesTheFirstFree)
{
    const auto first = program();
    ASSERT_EQ(first->open(m_file), Opened::here);
    ASSERT_EQ(first->open(m_folder.filePath(u"other.padside"_s)), Opened::here);
    const auto second = program();
    EXPECT_EQ(second->open(m_file), Opened::here);
}

TEST_F(WindowProgramTest, CommandsReadWhileTheWindowHasTheFileOpen)
{
    const auto first = program();
    ASSERT_EQ(first->open(m_file), Opened::here);
    const std::string file = m_file.toStdString();
    EXPECT_EQ(run({"verify", file}).exitCode, exitDone);
    EXPECT_EQ(run({"checks", file}).exitCode, exitDone);
    EXPECT_EQ(run({"backup", file, "--to", m_folder.filePath(u"copy.padside"_s).toStdString()}).exitCode, exitDone);
}

TEST_F(WindowProgramTest, AFileMarkedByAnotherComputerIsOpenedOnlyIfThePersonSaysSo)
{
    markFromElsewhere();
    const auto first = program();
    EXPECT_EQ(first->open(m_file), Opened::notAtAll);
    ASSERT_EQ(m_asked.size(), 1);
    EXPECT_TRUE(m_asked[0].contains(u"shed-laptop"_s)) << m_asked[0].toStdString();
    m_answer = true;
    EXPECT_EQ(first->open(m_file), Opened::here);
}

TEST_F(WindowProgramTest, AFileThatIsNotThereIsMadeAndThatIsSaid)
{
    const QString fresh = m_folder.filePath(u"fresh.padside"_s);
    const auto first = program();
    ASSERT_EQ(first->open(fresh), Opened::here);
    EXPECT_TRUE(lineOf(*first).contains(fresh)) << lineOf(*first).toStdString();
}

TEST_F(WindowProgramTest, ADamagedFileIsToldAndNotLeftMarked)
{
    const QString letter = m_folder.filePath(u"letter.padside"_s);
    {
        QFile file(letter);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("Dear neighbour, the unit hums again.\n");
    }
    const auto first = program();
    EXPECT_EQ(first->open(letter), Opened::notAtAll);
    EXPECT_EQ(m_told.size(), 1);
    EXPECT_FALSE(QFile::exists(letter + u".in-use"_s));
}

TEST_F(WindowProgramTest, TheSampleIsAFileOfThePersonsOwnAndNotTheOneOfTheNextStart)
{
    const QDir data(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString sample = data.filePath(u"sample.padside"_s);
    data.mkpath(u"."_s);
    QFile::remove(sample);
    ASSERT_TRUE(QFile::copy(m_file, sample)); // made before; how it is made stands in own_sample_test.cpp
    {
        const auto first = program();
        ASSERT_EQ(first->openUsual(), Opened::here);
        const QString own = first->window()->file();
        Q_EMIT first->window()->sampleRequested();
        ASSERT_TRUE(QTest::qWaitFor([&] { return first->window()->file() != own; }, 5000));
        EXPECT_EQ(first->window()->file(), sample);
        EXPECT_TRUE(lineOf(*first).contains(QFileInfo(own).fileName())) << "it says where the person's own file is";
    }
    const auto next = program();
    ASSERT_EQ(next->openUsual(), Opened::here);
    EXPECT_NE(next->window()->file(), sample);
}

TEST_F(WindowProgramTest, TheLastFileIsOpenedAgain)
{
    ASSERT_EQ(program()->open(m_file), Opened::here);
    const auto next = program();
    ASSERT_EQ(next->openUsual(), Opened::here);
    EXPECT_EQ(next->window()->file(), m_file);
}

TEST_F(WindowProgramTest, ALastFileThatIsGoneIsSaidAndFoundAgainWhenItIsBack)
{
    ASSERT_EQ(program()->open(m_file), Opened::here);
    const QString away = m_file + u".away"_s;
    ASSERT_TRUE(QFile::rename(m_file, away));
    {
        const auto next = program();
        ASSERT_EQ(next->openUsual(), Opened::here);
        EXPECT_TRUE(lineOf(*next).contains(m_file)) << lineOf(*next).toStdString();
        EXPECT_TRUE(
            next->window()->file().startsWith(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)));
        EXPECT_FALSE(QFile::exists(m_file)) << "a moved file is not made anew where it was";
    }
    ASSERT_TRUE(QFile::rename(away, m_file));
    const auto later = program();
    ASSERT_EQ(later->openUsual(), Opened::here);
    EXPECT_EQ(later->window()->file(), m_file);
}

} // namespace padside::test
