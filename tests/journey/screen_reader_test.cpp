// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/journey/screen_reader.h"

#include <QCoreApplication>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace padside::test {

namespace {

const std::string program = "padside";

ScreenReader::Wanted named(const std::string& role, const std::string& beginning)
{
    return
        [role, beginning](const Heard& heard) { return heard.role() == role && heard.name().starts_with(beginning); };
}

/// Works the real program, in its real window, with nothing but what a screen reader is told.
class ScreenReaderTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        m_file = m_folder.filePath(QStringLiteral("aloud.padside"));
        ASSERT_EQ(QProcess::execute(QStringLiteral(PADSIDE_PROGRAM),
                                    {QStringLiteral("demo"), QStringLiteral("--out"), m_file, QStringLiteral("--units"),
                                     QStringLiteral("1"), QStringLiteral("--years"), QStringLiteral("2"),
                                     QStringLiteral("--no-photos")}),
                  0);
        QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
        for (const char* kind : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
            surroundings.insert(QString::fromLatin1(kind), m_folder.path());
        m_program.setProcessEnvironment(surroundings);
        m_program.setProcessChannelMode(QProcess::ForwardedChannels);
        m_program.start(QStringLiteral(PADSIDE_PROGRAM), {m_file});
        ASSERT_TRUE(m_program.waitForStarted());
    }

    void TearDown() override
    {
        m_program.kill();
        m_program.waitForFinished();
    }

    [[nodiscard]] std::optional<Heard> waitFor(const std::string& role, const std::string& beginning) const
    {
        return m_reader.waitFor(program, named(role, beginning));
    }

    QTemporaryDir m_folder;
    QString m_file;
    QProcess m_program;
    ScreenReader m_reader;
};

} // namespace

TEST_F(ScreenReaderTest, AVisitIsStartedAndAGradeGivenWithoutSeeingTheScreen)
{
    const auto start = waitFor("push button", "Start spring visit");
    ASSERT_TRUE(start) << "the unit's page offers no spring visit";
    ASSERT_TRUE(start->press());

    const auto marked = m_reader.waitFor(
        program, [](const Heard& heard) { return heard.name().starts_with("3 marked") && heard.role() != "label"; });
    ASSERT_TRUE(marked) << "the visit page names no grade 3";
    EXPECT_GT(marked->name().size(), std::string("3 marked: ").size()) << "and says what it means for this zone";
    ASSERT_TRUE(marked->press());

    const auto given = [&] {
        const auto store = Store::open(m_file, Store::Access::readOnly);
        const auto visits = store->visits().openVisits();
        if (visits.empty())
            return false;
        const auto record = store->records().unitRecord(visits.front().unitId);
        return std::ranges::any_of(record.findings, [&](const Finding& finding) {
            return finding.visitId == visits.front().id && finding.grade() == Grade::marked;
        });
    };
    for (int tries = 0; tries < 100 && !given(); ++tries)
        QThread::msleep(100);
    EXPECT_TRUE(given()) << "the grade is not in the file";
}

TEST_F(ScreenReaderTest, EverythingOnTheVisitPageThatTakesTheFocusHasAName)
{
    const auto start = waitFor("push button", "Start spring visit");
    ASSERT_TRUE(start);
    ASSERT_TRUE(start->press());
    ASSERT_TRUE(waitFor("check box", "3 marked"));

    std::multiset<std::string> nameless;
    std::size_t named = 0;
    for (const Heard& heard : m_reader.everythingOf(program)) {
        if (!heard.takesFocus() || heard.role() == "scroll pane" || heard.role() == "filler")
            continue;
        if (heard.name().empty())
            nameless.insert(heard.role() + " (" + heard.description() + ")");
        else
            ++named;
    }
    EXPECT_THAT(nameless, ::testing::IsEmpty());
    EXPECT_GT(named, 20U) << "the page is not there";
}

} // namespace padside::test

/// No window of its own: a screen reader that asks itself for an answer waits for ever.
int main(int argc, char** argv)
{
    ::testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
