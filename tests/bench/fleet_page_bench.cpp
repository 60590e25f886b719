// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Measures what a person waits for who opens the fleet: 5 000 units with 20 visits each, from the file to rows sorted
// the gravest first, and one letter typed into the search; against what SQLite itself needs to step over the same rows.
// Times depend on the machine, the ratios hardly do.

#include "core/store/record_reader.h"
#include "resources/resources.h"
#include "tests/bench/bench_fleet.h"
#include "tests/bench/raw_read.h"
#include "ui/models/fleet_filter.h"
#include "ui/models/fleet_model.h"
#include "ui/models/speaker.h"

#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>

namespace padside::bench {

namespace {

constexpr int rounds = 9;

template <typename Action> double secondsOf(const Action& action)
{
    const auto start = std::chrono::steady_clock::now();
    action();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

void measure()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("fleet.padside"));
    const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    FleetSize size;
    size.units = 5000;
    const Fleet fleet = buildFleet(path, catalogue, size);
    RawRead raw(path);
    const LocalSpeaker speaker(QLocale::c(), UnitSystem::metric);
    FleetModel model(catalogue, speaker, lastVisitDay());
    FleetFilter filter(model);
    filter.sort(FleetModel::grade, Qt::DescendingOrder);

    double bestRaw = 1e9;
    double bestOpened = 1e9;
    double bestTyped = 1e9;
    for (int round = 0; round < rounds; ++round) { // in turns, so that a busy machine disturbs all alike
        bestRaw = std::min(bestRaw, secondsOf([&] { benchmark::DoNotOptimize(raw.fleetLines()); }));
        filter.setWish({});
        bestOpened = std::min(bestOpened, secondsOf([&] { model.setLines(fleet.store->records().unitLines()); }));
        FleetWish letter;
        letter.text = "1";
        bestTyped = std::min(bestTyped, secondsOf([&] { filter.setWish(letter); }));
    }
    std::printf("the fleet of %d units opened: %.1f ms, raw SQLite over %llu rows %.1f ms, ratio %.2f\n",
                model.rowCount(), bestOpened * 1e3, static_cast<unsigned long long>(raw.rows()), bestRaw * 1e3,
                bestOpened / bestRaw);
    std::printf("one letter typed into its search: %.1f ms, ratio %.2f\n", bestTyped * 1e3, bestTyped / bestRaw);
}

} // namespace

} // namespace padside::bench

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    padside::bench::measure();
    return 0;
}
