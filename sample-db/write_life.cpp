// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/write_life.h"

#include "core/store/photo_files.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "sample-db/life_forecasts.h"

#include <algorithm>
#include <future>
#include <thread>

namespace padside {

namespace {

/// Draws all pictures of a unit, as many at once as the machine has processors.
std::vector<MadePhoto> developed(const std::vector<PhotoOrder>& orders)
{
    std::vector<MadePhoto> made(orders.size());
    const std::size_t workers = std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, 8);
    std::vector<std::future<void>> running;
    for (std::size_t worker = 0; worker < workers; ++worker) {
        running.push_back(std::async(std::launch::async, [&orders, &made, worker, workers] {
            for (std::size_t i = worker; i < orders.size(); i += workers)
                made[i] = makePhoto(orders[i]);
        }));
    }
    for (std::future<void>& one : running)
        one.get();
    return made;
}

template <typename AnyEntry>
void putEntries(VisitBook& book, const std::vector<AnyEntry>& entries, VisitId visit, bool corrections)
{
    for (const AnyEntry& entry : entries) {
        if (entry.visitId == visit && entry.correction.has_value() == corrections)
            book.put(entry);
    }
}

void putPhotos(Store& store, const UnitLife& life, const std::vector<MadePhoto>& made, VisitId visit)
{
    for (std::size_t i = 0; i < life.record.photos.size(); ++i) {
        Photo photo = life.record.photos[i];
        if (photo.visitId != visit)
            continue;
        const PhotoFiles::Kept kept = store.photos().keep(made[i].jpeg, photo.mediaType);
        photo.sha256 = kept.sha256;
        photo.bytes = kept.bytes;
        store.visits().put(photo);
        store.photos().setThumbnail(photo.id, made[i].thumbnail);
    }
}

/// A promise is written when it is made, and again when it is settled.
void putFollowUps(VisitBook& book, const std::vector<FollowUp>& followUps, VisitId visit)
{
    for (FollowUp followUp : followUps) {
        if (followUp.settledAt == visit) {
            book.put(followUp);
        } else if (followUp.madeAt == visit) {
            followUp.settledAt.reset();
            followUp.settledNote.clear();
            book.put(followUp);
        }
    }
}

} // namespace

void writeLife(Store& store, const UnitLife& life, const Catalogue& catalogue, const ForecastModels& models)
{
    const UnitRecord& record = life.record;
    const std::vector<MadePhoto> made = developed(life.orders);
    const auto forecasts = life.block == 0 ? lifeForecasts(life, catalogue, models)
                                           : std::vector<std::vector<KeptForecast>>(record.visits.size());
    store.sites().addUnit(record.unit);
    for (const Part& part : record.parts)
        store.sites().addPart(part);
    VisitBook& book = store.visits();
    for (std::size_t i = 0; i < record.visits.size(); ++i) {
        const Visit& visit = record.visits[i];
        Visit opened = visit;
        opened.closedAt.reset();
        book.open(opened);
        putEntries(book, record.findings, visit.id, false);
        putEntries(book, record.readings, visit.id, false);
        putEntries(book, record.treatments, visit.id, false);
        putEntries(book, record.charges, visit.id, false);
        putPhotos(store, life, made, visit.id);
        putFollowUps(book, record.followUps, visit.id);
        if (visit.closedAt)
            book.close(visit.id, *visit.closedAt, forecasts[i]);
        putEntries(book, record.findings, visit.id, true);
    }
}

} // namespace padside
