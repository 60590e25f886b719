// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/store_error.h"
#include "ui/models/long_work.h"

#include <QSignalSpy>
#include <QThread>

#include <gtest/gtest.h>
#include <semaphore>

namespace padside::test {

namespace {

constexpr int patience = 20000; // ms; a deadline against hanging, not a measure

} // namespace

TEST(LongWork, RunsBesideTheWindowAndTellsHowFarItIs)
{
    LongWork work;
    QSignalSpy progressed(&work, &LongWork::progressed);
    QSignalSpy done(&work, &LongWork::done);
    const QThread* ranIn = nullptr;
    ASSERT_TRUE(work.start([&](const LongWork::Tell& tell) {
        ranIn = QThread::currentThread();
        return tell(0.25) && tell(1);
    }));
    ASSERT_TRUE(done.wait(patience));
    EXPECT_NE(ranIn, QThread::currentThread());
    ASSERT_EQ(progressed.size(), 2);
    EXPECT_DOUBLE_EQ(progressed.at(0).at(0).toDouble(), 0.25);
    EXPECT_FALSE(work.isRunning());
}

TEST(LongWork, StopsWhenItIsCancelled)
{
    LongWork work;
    QSignalSpy cancelled(&work, &LongWork::cancelled);
    QSignalSpy done(&work, &LongWork::done);
    ASSERT_TRUE(work.start([](const LongWork::Tell& tell) {
        while (tell(0.5))
            QThread::msleep(1);
        return false;
    }));
    work.cancel();
    ASSERT_TRUE(cancelled.wait(patience));
    EXPECT_TRUE(done.isEmpty());
}

TEST(LongWork, SaysWhatWentWrong)
{
    LongWork work;
    std::optional<Sentence> why;
    QSignalSpy failed(&work, &LongWork::failed);
    QObject::connect(&work, &LongWork::failed, [&](const Sentence& sentence) { why = sentence; });
    ASSERT_TRUE(work.start([](const LongWork::Tell&) -> bool {
        throw StoreError(Problem{ProblemKind::cannotWrite, Sentence{"The disk {0} is full.", {std::string("A")}}});
    }));
    ASSERT_TRUE(failed.wait(patience));
    EXPECT_EQ(say(*why), "The disk A is full.");
}

TEST(LongWork, DoesOneThingAtATime)
{
    LongWork work;
    std::binary_semaphore mayEnd(0);
    QSignalSpy done(&work, &LongWork::done);
    ASSERT_TRUE(work.start([&](const LongWork::Tell&) {
        mayEnd.acquire();
        return true;
    }));
    EXPECT_FALSE(work.start([](const LongWork::Tell&) { return true; }));
    mayEnd.release();
    ASSERT_TRUE(done.wait(patience));
    EXPECT_EQ(done.size(), 1);
    EXPECT_TRUE(work.start([](const LongWork::Tell&) { return true; })) << "and the next afterwards";
    ASSERT_TRUE(done.wait(patience));
}

TEST(LongWork, GoingAwayCancelsAndWaits)
{
    std::atomic<bool> ended = false;
    {
        LongWork work;
        ASSERT_TRUE(work.start([&](const LongWork::Tell& tell) {
            while (tell(0))
                QThread::msleep(1);
            ended = true;
            return false;
        }));
    }
    EXPECT_TRUE(ended);
}

} // namespace padside::test
