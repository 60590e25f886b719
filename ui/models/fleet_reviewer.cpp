// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/fleet_reviewer.h"

#include "core/store/store.h"
#include "ui/models/background_review.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <utility>

namespace padside {

namespace {

constexpr int settlingTime = 300; ///< a visit being logged changes its unit with every key

} // namespace

FleetReviewer::FleetReviewer(RecordBook& book, QObject* parent)
    : QObject(parent)
    , m_book(book)
    , m_fleet(std::make_shared<const ReviewedFleet>())
{
    m_pool.setMaxThreadCount(1);
    m_settle.setSingleShot(true);
    m_settle.setInterval(settlingTime);
    connect(&m_settle, &QTimer::timeout, this, &FleetReviewer::reviewChanged);
    connect(&m_book, &RecordBook::unitChanged, this, &FleetReviewer::noteChange);
    connect(&m_book, &RecordBook::sitesChanged, this, [this] {
        if (m_round > 0)
            start();
    });
}

FleetReviewer::~FleetReviewer()
{
    m_stop.request_stop();
    m_pool.clear();
    m_pool.waitForDone();
}

void FleetReviewer::start()
{
    m_stop.request_stop();
    m_stop = std::stop_source();
    ++m_round;
    m_running = true;
    m_afresh = true;
    m_changed.clear();
    m_settle.stop();
    run({});
    Q_EMIT started();
}

void FleetReviewer::startIfStale()
{
    const bool isFresh = m_round > 0 && m_fleet->today == m_book.today() && m_fleet->isWhole();
    if (!m_running && !isFresh)
        start();
}

void FleetReviewer::cancel()
{
    if (!m_running)
        return;
    m_stop.request_stop();
    ++m_round;
    m_running = false;
    Q_EMIT finished();
}

void FleetReviewer::noteChange(UnitId unit)
{
    if (m_round == 0) // nobody has asked for the fleet yet
        return;
    m_changed.insert(unit);
    m_settle.start();
}

void FleetReviewer::reviewChanged()
{
    if (!m_changed.empty())
        run(std::exchange(m_changed, {}));
}

void FleetReviewer::run(std::set<UnitId> only)
{
    BackgroundReview work{m_book.store().path(),
                          m_book.catalogue(),
                          m_book.outlookModel(),
                          m_book.today(),
                          std::move(only),
                          m_round,
                          {},
                          {}};
    if (work.only.empty())
        work.stop = m_stop.get_token();
    work.handOver = [this](ReviewBatch batch) {
        QMetaObject::invokeMethod(
            this, [this, whole = std::move(batch)] { take(whole); }, Qt::QueuedConnection);
    };
    m_pool.start([work = std::move(work)] { runInBackground(work); });
}

void FleetReviewer::take(const ReviewBatch& batch)
{
    if (batch.ofAll && batch.round != m_round)
        return;
    if (batch.failure)
        Q_EMIT failed(m_book.speaker().said(*batch.failure));
    else
        add(batch);
    if (batch.ofAll && batch.last) {
        m_running = false;
        Q_EMIT finished();
    }
}

void FleetReviewer::add(const ReviewBatch& batch)
{
    auto fleet = std::make_shared<ReviewedFleet>();
    if (!batch.ofAll || !std::exchange(m_afresh, false))
        *fleet = *m_fleet;
    if (batch.ofAll) {
        fleet->today = batch.today;
        fleet->count = batch.count;
    }
    put(*fleet, batch.units, batch.unread);
    m_fleet = std::move(fleet);
    Q_EMIT changed();
    if (batch.ofAll)
        Q_EMIT progressed(static_cast<int>(m_fleet->units.size() + m_fleet->unread.size()),
                          static_cast<int>(m_fleet->count));
}

} // namespace padside
