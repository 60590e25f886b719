// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/background_review.h"

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"

#include <QElapsedTimer>

#include <utility>

namespace padside {

namespace {

constexpr int handOverTime = 200; ///< milliseconds between batches: often enough to see it grow

ReviewBatch emptyBatch(const BackgroundReview& work, std::size_t count)
{
    ReviewBatch batch;
    batch.round = work.round;
    batch.ofAll = work.only.empty();
    batch.today = work.today;
    batch.count = count;
    return batch;
}

void reviewOne(Store& store, const BackgroundReview& work, const Unit& unit, ReviewBatch& batch)
{
    try {
        batch.units.push_back(std::make_shared<const ReviewedUnit>(
            reviewedUnit(store.records().unitRecord(unit.id), work.catalogue, *work.outlook, work.today)));
    } catch (const StoreError& error) {
        batch.unread.push_back(UnreadUnit{unit.id, unit.tag, error.problem().what});
    }
}

} // namespace

void runInBackground(const BackgroundReview& work)
{
    ReviewBatch batch = emptyBatch(work, 0);
    try {
        const auto store = Store::open(work.path, Store::Access::readOnly);
        const std::vector<Unit> units = store->sites().units();
        batch.count = units.size();
        QElapsedTimer sinceHandOver;
        sinceHandOver.start();
        for (const Unit& unit : units) {
            if (work.stop.stop_requested())
                break;
            if (!work.only.empty() && !work.only.contains(unit.id))
                continue;
            reviewOne(*store, work, unit, batch);
            if (sinceHandOver.elapsed() >= handOverTime) {
                work.handOver(std::exchange(batch, emptyBatch(work, units.size())));
                sinceHandOver.restart();
            }
        }
    } catch (const StoreError& error) {
        batch.failure = error.problem().what;
    }
    batch.last = true;
    work.handOver(std::move(batch));
}

} // namespace padside
