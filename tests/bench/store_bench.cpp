// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Measures the two reads people wait for, on a fleet of 2 000 units with 20 visits each, against what SQLite itself
// needs for the same rows. Times depend on the machine, the ratios at the end hardly do.

#include "core/review/unit_review.h"
#include "core/store/record_reader.h"
#include "resources/resources.h"
#include "tests/bench/bench_fleet.h"
#include "tests/bench/raw_read.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>

using namespace Qt::Literals::StringLiterals;

namespace padside::bench {

namespace {

/// The fleet and what reads it; made once.
struct Bench
{
    QTemporaryDir folder;
    Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    OutlookModel outlook{catalogue};
    Fleet fleet = buildFleet(folder.filePath(u"fleet.padside"_s), catalogue, {});
    RawRead raw{folder.filePath(u"fleet.padside"_s)};

    [[nodiscard]] UnitRecord readUnit() const { return fleet.store->records().unitRecord(fleet.longUnit); }
    [[nodiscard]] UnitReview readAndReview() const { return review(readUnit(), catalogue, outlook, lastVisitDay()); }
    [[nodiscard]] std::size_t passOverFleet() const
    {
        std::size_t worse = 0;
        fleet.store->records().lastTwoGrades([&worse](const LastTwoGrades& grades) {
            worse += grades.previous && grades.last > *grades.previous ? 1U : 0U;
        });
        return worse;
    }
};

template <typename Action> double secondsOf(const Action& action)
{
    const auto start = std::chrono::steady_clock::now();
    action();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Ours over raw: measured in turns, the best of each, so that a busy machine disturbs both alike.
template <typename Ours, typename Raw>
void printRatio(const char* what, double aim, int rounds, const Ours& ours, const Raw& raw)
{
    double best = 1e9;
    double bestRaw = 1e9;
    for (int round = 0; round < rounds; ++round) {
        bestRaw = std::min(bestRaw, secondsOf(raw));
        best = std::min(best, secondsOf(ours));
    }
    std::printf("%s: %.3f ms, raw SQLite %.3f ms, ratio %.2f (aim %.0f or less)%s\n", what, best * 1e3, bestRaw * 1e3,
                best / bestRaw, aim, best / bestRaw <= aim ? "" : "  MISSED");
}

void runAll(Bench& bench)
{
    benchmark::RegisterBenchmark("raw/unit", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.raw.unit(bench.fleet.longUnit));
        state.counters["rows"] = static_cast<double>(bench.raw.rows());
    });
    benchmark::RegisterBenchmark("store/unit", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.readUnit());
    });
    benchmark::RegisterBenchmark("store/unit_and_review", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.readAndReview());
    });
    benchmark::RegisterBenchmark("raw/last_two_grades", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.raw.lastTwoGrades());
        state.counters["rows"] = static_cast<double>(bench.raw.rows());
    })->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("store/last_two_grades", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.passOverFleet());
    })->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("store/unit_lines", [&](benchmark::State& state) {
        for (auto turn : state)
            benchmark::DoNotOptimize(bench.fleet.store->records().unitLines());
    })->Unit(benchmark::kMillisecond);
    benchmark::RunSpecifiedBenchmarks();

    std::printf("\n");
    const auto rawUnit = [&] { benchmark::DoNotOptimize(bench.raw.unit(bench.fleet.longUnit)); };
    printRatio(
        "one unit of 40 visits, read", 5, 300, [&] { benchmark::DoNotOptimize(bench.readUnit()); }, rawUnit);
    printRatio(
        "one unit of 40 visits, read and reviewed", 5, 300, [&] { benchmark::DoNotOptimize(bench.readAndReview()); },
        rawUnit);
    printRatio(
        "last two grades of the fleet", 3, 9, [&] { benchmark::DoNotOptimize(bench.passOverFleet()); },
        [&] { benchmark::DoNotOptimize(bench.raw.lastTwoGrades()); });
}

} // namespace

} // namespace padside::bench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    padside::bench::Bench bench;
    padside::bench::runAll(bench);
    return 0;
}
