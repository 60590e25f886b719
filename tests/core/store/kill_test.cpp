// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "tests/core/store/store_fixture.h"

#include <QCoreApplication>
#include <QProcess>

#include <csignal>
#include <iostream>
#include <random>
#include <set>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

constexpr int rounds = 40;
constexpr int longestLifeMilliseconds = 200; ///< after the first confirmed entry

using Confirmed = std::set<std::pair<std::string, std::string>>; ///< kind and key

class KillTest : public StoreTest
{
protected:
    KillTest()
    {
        writeRecord(*m_store, aUnit("HB-01").withPart("suction-accumulator", {"crown", "shell", "bottom"}).build());
        m_unit = m_store->sites().units().at(0).id;
        m_store.reset();
    }

    /// Lets the writer live for a while, kills it, and answers what it had confirmed: whole lines only.
    Confirmed writeAndKill(unsigned seed, int life)
    {
        QProcess writer;
        writer.start(QCoreApplication::applicationDirPath() + u"/padside_store_kill_writer"_s,
                     {m_path, QString::number(seed)});
        EXPECT_TRUE(writer.waitForReadyRead(30'000)) << writer.readAllStandardError().toStdString();
        EXPECT_FALSE(writer.waitForFinished(life)) << writer.readAllStandardError().toStdString();
        ::kill(static_cast<pid_t>(writer.processId()), SIGKILL);
        writer.waitForFinished(30'000);
        EXPECT_EQ(writer.exitStatus(), QProcess::CrashExit);
        Confirmed confirmed;
        const QByteArray printed = writer.readAllStandardOutput();
        for (const QByteArray& line : printed.left(printed.lastIndexOf('\n') + 1).trimmed().split('\n')) {
            const auto words = line.split(' ');
            if (words.size() == 2)
                confirmed.emplace(words[0].toStdString(), words[1].toStdString());
        }
        return confirmed;
    }

    [[nodiscard]] Confirmed inFile()
    {
        const UnitRecord record = m_store->records().unitRecord(m_unit);
        Confirmed found;
        for (const Visit& visit : record.visits) {
            found.emplace("visit", visit.id.text());
            if (!visit.isOpen())
                found.emplace("closed", visit.id.text());
        }
        for (const Finding& finding : record.findings)
            found.emplace("finding", finding.id.text());
        for (const Reading& reading : record.readings)
            found.emplace("reading", reading.id.text());
        for (const Photo& photo : record.photos)
            found.emplace("photo", photo.id.text());
        return found;
    }

    UnitId m_unit;
};

} // namespace

TEST_F(KillTest, EveryConfirmedEntryIsThereAfterFortyKillsAtRandomMoments)
{
    std::random_device device;
    const unsigned seed = device();
    std::cout << "seed " << seed << '\n';
    std::mt19937 random(seed);
    Confirmed confirmed;
    for (int round = 0; round < rounds; ++round) {
        const int life = std::uniform_int_distribution<int>(0, longestLifeMilliseconds)(random);
        const Confirmed fresh = writeAndKill(static_cast<unsigned>(random()), life);
        EXPECT_FALSE(fresh.empty());
        confirmed.insert(fresh.begin(), fresh.end());
        m_store = Store::open(m_path);
        const Confirmed found = inFile();
        for (const auto& [kind, key] : confirmed)
            ASSERT_TRUE(found.contains({kind, key})) << "lost in round " << round << ": " << kind << " " << key;
        const VerifyReport report = verify(*m_store);
        for (const Sentence& complaint : report.complaints)
            ADD_FAILURE() << "round " << round << ": " << say(complaint);
        m_store.reset();
    }
    std::cout << confirmed.size() << " entries confirmed, none lost\n";
    EXPECT_GT(confirmed.size(), static_cast<std::size_t>(rounds));
}

} // namespace padside::test
