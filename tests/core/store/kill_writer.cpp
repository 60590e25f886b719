// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Writes entries without end and prints the key of each once its call has returned. The kill test ends it at random
// moments.

#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"

#include <QCoreApplication>

#include <cstdio>
#include <unistd.h>

namespace padside {

namespace {

/// Straight to the pipe: what was printed has left this process.
void confirm(const char* kind, const std::string& key)
{
    const std::string line = std::string(kind) + " " + key + "\n";
    if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
        ::_exit(4);
}

template <typename AnyEntry> AnyEntry entryAt(const Visit& visit, IdMaker& ids)
{
    AnyEntry entry;
    entry.id = ids.make<decltype(entry.id)>();
    entry.unitId = visit.unitId;
    entry.visitId = visit.id;
    entry.on = visit.on;
    entry.enteredAt = visit.openedAt;
    return entry;
}

void writeEntries(Store& store, const UnitRecord& record, const Visit& visit, IdMaker& ids)
{
    for (const Zone& zone : record.parts[0].zones) {
        auto finding = entryAt<Finding>(visit, ids);
        finding.zoneId = zone.id;
        finding.sight = Grade::marked;
        finding.note = "seen in the rain";
        store.visits().put(finding);
        confirm("finding", finding.id.text());
    }
    for (int i = 0; i < 3; ++i) {
        auto reading = entryAt<Reading>(visit, ids);
        reading.kind = "suction-pressure";
        reading.value = {1000.0 * i, QuantityKind::gaugePressure, "Pa", "x"};
        store.visits().put(reading);
        confirm("reading", reading.id.text());
    }
    auto photo = entryAt<Photo>(visit, ids);
    const auto kept = store.photos().keep(QByteArray::fromStdString(photo.id.text()).repeated(500), "image/jpeg");
    photo.sha256 = kept.sha256;
    photo.bytes = kept.bytes;
    photo.mediaType = "image/jpeg";
    store.visits().put(photo);
    confirm("photo", photo.id.text());
}

int writeForEver(const QString& path, std::uint64_t seed)
{
    const auto store = Store::open(path);
    IdMaker ids([] { return std::int64_t{1'700'000'000'000}; }, seed);
    const UnitRecord record = store->records().unitRecord(store->sites().units().at(0).id);
    Date on = record.visits.empty() ? Date(std::chrono::year(2024) / 2 / 29) : record.visits.back().on;
    if (const auto open = store->visits().openVisitOf(record.unit.id)) {
        store->visits().close(open->id, open->openedAt); // what the killed one left
        confirm("closed", open->id.text());
    }
    for (;;) {
        Visit visit;
        visit.id = ids.make<VisitId>();
        visit.unitId = record.unit.id;
        visit.on = on += std::chrono::days(1);
        visit.openedAt = Instant{on + std::chrono::hours(9), {}};
        store->visits().open(visit);
        confirm("visit", visit.id.text());
        writeEntries(*store, record, visit, ids);
        store->visits().close(visit.id, visit.openedAt);
        confirm("closed", visit.id.text());
    }
}

} // namespace

} // namespace padside

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    try {
        return padside::writeForEver(QString::fromLocal8Bit(argv[1]), std::stoull(argv[2]));
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 3;
    }
}
