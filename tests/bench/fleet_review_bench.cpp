// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Measures the review of a whole fleet, cold from the file, with everything in it: 2 000 units with 12 zones and 20
// visits each (480 000 findings) read, reviewed (histories, flags, checks) and given their outlook (chances by four
// horizons, dates of 10, 50 and 90 %), one after the other in one thread; against SQLite's own C interface stepping
// over the same rows. Cold means: a connection opened for this run, so that no page, no statement and no result of an
// earlier run is at hand; the system may still hold the file's pages in memory, for both alike. The machine's other
// work disturbs the clock, so the time the processor spent on this program is told too.
//
// padside_fleet_review_bench [ROUNDS [FOLDER]]: the fleets take minutes to build; in a FOLDER they stay for the next
// run.

#include "core/outlook/outlook_model.h"
#include "core/review/unit_forecast.h"
#include "core/review/unit_review.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "resources/resources.h"
#include "tests/bench/bench_fleet.h"
#include "tests/bench/raw_read.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string_view>

namespace padside::bench {

namespace {

struct Spent
{
    double clock = 1e9; ///< s
    double processor = 1e9; ///< s

    void keepLess(const Spent& other)
    {
        clock = std::min(clock, other.clock);
        processor = std::min(processor, other.processor);
    }
};

double processorSeconds()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

template <typename Action> Spent timeOf(const Action& action)
{
    const auto start = std::chrono::steady_clock::now();
    const double processor = processorSeconds();
    action();
    return {std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count(),
            processorSeconds() - processor};
}

/// What the program knows of a fleet when it has reviewed it.
struct Reviewed
{
    std::vector<UnitReview> reviews;
    std::vector<UnitForecast> forecasts;
};

/// The whole way from the file, as the program goes it. `reading` and `reviewing` stop earlier, to see what costs what.
enum class Upto { reading, reviewing, outlook };

Reviewed reviewFleet(const QString& path, const Catalogue& catalogue, Upto upto)
{
    Reviewed all;
    const OutlookModel model(catalogue);
    const auto store = Store::open(path, Store::Access::readOnly);
    for (const Unit& unit : store->sites().units()) {
        UnitRecord record = store->records().unitRecord(unit.id);
        if (upto == Upto::reading)
            continue;
        const KnownUnit known = knownUnit(std::move(record), catalogue, model, lastVisitDay());
        all.reviews.push_back(review(known, catalogue));
        if (upto == Upto::outlook)
            all.forecasts.push_back(unitForecast(known, catalogue));
    }
    return all;
}

void print(const char* what, const Spent& spent, const Spent& raw)
{
    std::printf("%-42s %7.0f ms, ratio %5.2f; processor %7.0f ms, ratio %5.2f\n", what, spent.clock * 1e3,
                spent.clock / raw.clock, spent.processor * 1e3, spent.processor / raw.processor);
}

void checkAnswers(const Reviewed& all, const FleetSize& size)
{
    std::size_t zones = 0;
    std::size_t dated = 0;
    for (const UnitForecast& unit : all.forecasts) {
        zones += unit.zones.size();
        dated += static_cast<std::size_t>(
            std::ranges::count_if(unit.zones, [](const ZoneForecast& zone) { return zone.dates.early.has_value(); }));
    }
    const auto expected = static_cast<std::size_t>(size.units) * static_cast<std::size_t>(size.zonesPerUnit);
    if (zones != expected || dated < expected / 2) {
        std::printf("the review is not whole: %zu zones of %zu, %zu with dates\n", zones, expected, dated);
        std::exit(1);
    }
}

void measureFleet(const Catalogue& catalogue, bool livedIn, int rounds, const QDir& folder)
{
    const QString path = folder.filePath(livedIn ? QStringLiteral("lived-in.padside") : QStringLiteral("even.padside"));
    FleetSize size;
    size.livedIn = livedIn;
    size.visitsOfTheLongUnit = size.visitsPerUnit;
    if (!QFileInfo::exists(path))
        (void)buildFleet(path, catalogue, size); // and closed again
    Spent raw;
    Spent reading;
    Spent reviewing;
    Spent whole;
    std::uint64_t rows = 0;
    for (int round = 0; round < rounds; ++round) { // in turns, so that a busy machine disturbs all alike
        raw.keepLess(timeOf([&] {
            RawRead read(path);
            (void)read.allRecords();
            rows = read.rows();
        }));
        reading.keepLess(timeOf([&] { (void)reviewFleet(path, catalogue, Upto::reading); }));
        reviewing.keepLess(timeOf([&] { (void)reviewFleet(path, catalogue, Upto::reviewing); }));
        Reviewed all;
        whole.keepLess(timeOf([&] { all = reviewFleet(path, catalogue, Upto::outlook); }));
        checkAnswers(all, size);
    }
    std::printf("%s: %llu rows\n", livedIn ? "a lived-in fleet" : "an even fleet",
                static_cast<unsigned long long>(rows));
    print("  SQLite alone", raw, raw);
    print("  records read", reading, raw);
    print("  read and reviewed", reviewing, raw);
    print("  read, reviewed, with outlook (aim 5)", whole, raw);
}

void measureUnit(const Catalogue& catalogue)
{
    const QTemporaryDir folder;
    FleetSize size{1, 40, 20, 20, true};
    const Fleet fleet = buildFleet(folder.filePath(QStringLiteral("unit.padside")), catalogue, size);
    const OutlookModel model(catalogue);
    const UnitRecord record = fleet.store->records().unitRecord(fleet.longUnit);
    Spent best;
    for (int round = 0; round < 100; ++round) {
        best.keepLess(timeOf([&] {
            const KnownUnit known = knownUnit(record, catalogue, model, lastVisitDay());
            const auto reviewed = review(known, catalogue);
            const auto forecast = unitForecast(known, catalogue);
            if (forecast.zones.size() != 40 || reviewed.zones.size() != 40)
                std::exit(1);
        }));
    }
    std::printf("one unit of 40 zones and 20 visits reviewed, with outlook: %.3f ms (aim 2)\n", best.clock * 1e3);
}

} // namespace

} // namespace padside::bench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    using namespace padside; // NOLINT(google-build-using-namespace): a program of its own
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 5;
    const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    const QTemporaryDir forThisRun;
    const QDir folder(argc > 2 ? QString::fromLocal8Bit(argv[2]) : forThisRun.path());
    bench::measureUnit(catalogue);
    bench::measureFleet(catalogue, true, rounds, folder);
    bench::measureFleet(catalogue, false, rounds, folder);
    return 0;
}
