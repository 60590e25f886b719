// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>
#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

/// The built program as a desktop starts it, in a home of its own.
class WindowProcessTest : public ::testing::Test
{
protected:
    WindowProcessTest()
    {
        m_environment.insert(u"HOME"_s, m_home.path());
        for (const auto* name : {"CONFIG", "DATA", "CACHE", "STATE"})
            m_environment.insert(u"XDG_%1_HOME"_s.arg(QString::fromLatin1(name)),
                                 m_home.filePath(u"xdg/"_s) + QString::fromLatin1(name));
        const QString runtime = m_home.filePath(u"run"_s);
        QDir().mkpath(runtime);
        QFile::setPermissions(runtime, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        m_environment.insert(u"XDG_RUNTIME_DIR"_s, runtime);
        m_environment.insert(u"QT_QPA_PLATFORM"_s, u"offscreen"_s);
    }

    void start(QProcess& process, const QStringList& arguments)
    {
        process.setProcessEnvironment(m_environment);
        process.start(QCoreApplication::applicationDirPath() + u"/padside"_s, arguments);
        ASSERT_TRUE(process.waitForStarted());
    }

    /// Waits until `process` has marked the file as its own and listens.
    [[nodiscard]] bool holds(QProcess& process)
    {
        return QTest::qWaitFor(
            [&] {
                QFile mark(m_file + u".in-use"_s);
                return mark.open(QIODevice::ReadOnly)
                    && mark.readLine().trimmed() == QByteArray::number(process.processId())
                    && !QDir(m_home.filePath(u"run"_s)).entryList({u"padside-*"_s}, QDir::System).empty();
            },
            30'000);
    }

    static void kill(QProcess& process)
    {
        ::kill(static_cast<pid_t>(process.processId()), SIGKILL);
        EXPECT_TRUE(process.waitForFinished());
    }

    QTemporaryDir m_home;
    QString m_file = m_home.filePath(u"harbour.padside"_s);
    QProcessEnvironment m_environment = QProcessEnvironment::systemEnvironment();
};

TEST_F(WindowProcessTest, ASecondStartOnTheSameFileAsksTheFirstToComeForward)
{
    QProcess first;
    start(first, {m_file});
    ASSERT_TRUE(holds(first));
    QProcess second;
    start(second, {m_file});
    ASSERT_TRUE(second.waitForFinished());
    EXPECT_EQ(second.exitCode(), 0);
    EXPECT_TRUE(second.readAllStandardError().contains("come forward"));
    EXPECT_EQ(first.state(), QProcess::Running);
    kill(first);
}

TEST_F(WindowProcessTest, AKilledWindowDoesNotKeepTheFile)
{
    QProcess first;
    start(first, {m_file});
    ASSERT_TRUE(holds(first));
    kill(first);
    ASSERT_TRUE(QFile::exists(m_file + u".in-use"_s)) << "the kill left its mark, or this tests nothing";
    QProcess second;
    start(second, {m_file});
    EXPECT_TRUE(holds(second));
    kill(second);
}

TEST_F(WindowProcessTest, WritesOnlyWhereXdgSaysAndBesideItsFile)
{
    QProcess first;
    start(first, {m_file});
    ASSERT_TRUE(holds(first));
    const QString settings = m_home.filePath(u"xdg/CONFIG/padside/padside.conf"_s);
    EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(settings); }, 30'000));
    kill(first);
    QDirIterator all(m_home.path(), QDir::Files | QDir::Hidden | QDir::System, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        const QString file = QDir(m_home.path()).relativeFilePath(all.next());
        EXPECT_TRUE(file.startsWith(u"xdg/"_s) || file.startsWith(u"run/padside-"_s)
                    || file.startsWith(u"harbour.padside"_s))
            << file.toStdString();
    }
}

} // namespace padside::test
