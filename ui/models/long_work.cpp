// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/long_work.h"

#include "core/store/store_error.h"

#include <QThread>

namespace padside {

LongWork::LongWork(QObject* parent)
    : QObject(parent)
{
}

LongWork::~LongWork()
{
    cancel();
    if (m_thread)
        m_thread->wait();
}

bool LongWork::start(Work work)
{
    if (isRunning())
        return false;
    m_stop = false;
    const auto tell = [this](double share) {
        QMetaObject::invokeMethod(
            this, [this, share] { Q_EMIT progressed(share); }, Qt::QueuedConnection);
        return !m_stop;
    };
    const auto report = [this](End end, const std::optional<Sentence>& why) {
        QMetaObject::invokeMethod(
            this, [this, end, why] { ended(end, why); }, Qt::QueuedConnection);
    };
    m_thread.reset(QThread::create([work = std::move(work), tell, report] {
        try {
            report(work(tell) ? End::done : End::cancelled, {});
        } catch (const StoreError& error) {
            report(End::failed, error.problem().what);
        }
    }));
    m_thread->start();
    return true;
}

void LongWork::cancel()
{
    m_stop = true;
}

void LongWork::ended(End end, const std::optional<Sentence>& why)
{
    m_thread->wait();
    m_thread.reset();
    switch (end) {
    case End::done:
        Q_EMIT done();
        return;
    case End::cancelled:
        Q_EMIT cancelled();
        return;
    case End::failed:
        Q_EMIT failed(*why);
        return;
    }
}

} // namespace padside
