// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "core/review/reviewed_fleet.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <memory>
#include <set>
#include <stop_token>

namespace padside {

class RecordBook;
struct ReviewBatch;

/// Reviews all units of a file in the background, so that the window goes on meanwhile. The work has its own read-only
/// store in its own thread. What is done so far can be seen at any time; a unit that changes is reviewed again by
/// itself. Store and catalogue of the book outlive it.
class FleetReviewer : public QObject
{
    Q_OBJECT
public:
    explicit FleetReviewer(RecordBook& book, QObject* parent = nullptr);
    ~FleetReviewer() override; ///< stops the work and waits for it: one unit's review at most

    /// Reviews all units anew; what was under way is dropped, what was reviewed stays visible until the first new units
    /// are there.
    void start();
    /// Starts unless the fleet is reviewed as of today, or is being reviewed.
    void startIfStale();
    /// Stops; what is reviewed stays, and fleet()->isWhole() tells that some is missing.
    void cancel();

    /// Whether all units are being reviewed just now.
    [[nodiscard]] bool isRunning() const { return m_running; }
    /// What is reviewed so far; never null. A snapshot: it does not change, changed() tells of the next one.
    [[nodiscard]] std::shared_ptr<const ReviewedFleet> fleet() const { return m_fleet; }

    /// How long changes of a unit are gathered before it is reviewed again, in milliseconds.
    void setSettlingTime(int milliseconds) { m_settle.setInterval(milliseconds); }

Q_SIGNALS:
    void started();
    void progressed(int done, int total);
    void changed(); ///< fleet() is another one
    void finished(); ///< of all units: done, cancelled or failed
    void failed(const QString& sentence); ///< the file can't be read; one unit that can't is in fleet()->unread

private:
    void noteChange(UnitId unit);
    void reviewChanged();
    void run(std::set<UnitId> only);
    void take(const ReviewBatch& batch);
    void add(const ReviewBatch& batch);

    RecordBook& m_book;
    QThreadPool m_pool; ///< one thread: jobs follow each other
    QTimer m_settle;
    std::shared_ptr<const ReviewedFleet> m_fleet;
    std::set<UnitId> m_changed;
    std::stop_source m_stop; ///< of the review of all units
    int m_round = 0; ///< of start() and cancel(): batches of an earlier round are dropped
    bool m_running = false;
    bool m_afresh = false; ///< the next batch begins a new fleet
};

} // namespace padside
