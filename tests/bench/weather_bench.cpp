// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Measures what a person waits for who gives a site a weather file: from the text of a file to the means of its year,
// against merely reading the lines of the same text and splitting them at their commas. Times depend on the machine,
// the ratios hardly do.

#include "core/exchange/weather_file.h"
#include "tests/support/made_up_weather.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace padside::bench {

namespace {

constexpr int rounds = 25;
constexpr double surfaceK = 281.15; // a suction line of 8 °C

template <typename Action> double secondsOf(const Action& action)
{
    const auto start = std::chrono::steady_clock::now();
    action();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The lines of the text as the standard library reads them.
std::size_t readLines(const std::string& text)
{
    std::istringstream stream(text);
    std::size_t bytes = 0;
    for (std::string line; std::getline(stream, line);)
        bytes += line.size();
    return bytes;
}

/// The same, and each line split at its commas; nothing is copied, nothing is understood.
std::size_t readAndSplitLines(const std::string& text)
{
    std::istringstream stream(text);
    std::vector<std::string_view> values;
    std::size_t count = 0;
    for (std::string line; std::getline(stream, line);) {
        values.clear();
        std::string_view rest = line;
        for (auto comma = rest.find(','); comma != std::string_view::npos; comma = rest.find(',')) {
            values.push_back(rest.substr(0, comma));
            rest.remove_prefix(comma + 1);
        }
        values.push_back(rest);
        benchmark::DoNotOptimize(values.data());
        count += values.size();
    }
    return count;
}

WeatherYear digest(const std::string& text, const char* name)
{
    return digestWeather(readWeatherFile(text, name).value().steps, surfaceK).value();
}

void measure(const char* name, const std::string& text)
{
    double bestLines = 1e9;
    double bestSplit = 1e9;
    double bestDigest = 1e9;
    for (int round = 0; round < rounds; ++round) { // in turns, so that a busy machine disturbs all alike
        bestLines = std::min(bestLines, secondsOf([&] { benchmark::DoNotOptimize(readLines(text)); }));
        bestSplit = std::min(bestSplit, secondsOf([&] { benchmark::DoNotOptimize(readAndSplitLines(text)); }));
        bestDigest = std::min(bestDigest, secondsOf([&] { benchmark::DoNotOptimize(digest(text, name)); }));
    }
    std::printf("%s: digested in %.2f ms; its lines read and split in %.2f ms, ratio %.2f; only read in %.2f ms, "
                "ratio %.2f\n",
                name, bestDigest * 1e3, bestSplit * 1e3, bestDigest / bestSplit, bestLines * 1e3,
                bestDigest / bestLines);
}

void digestYear(benchmark::State& state)
{
    const std::string text = test::madeUpEpw(8760);
    for ([[maybe_unused]] const auto round : state)
        benchmark::DoNotOptimize(digest(text, "year.epw"));
    state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(text.size()));
}
BENCHMARK(digestYear);

} // namespace

} // namespace padside::bench

int main(int argc, char** argv)
{
    using namespace padside;
    bench::measure("year.epw (8 760 rows)", test::madeUpEpw(8760));
    bench::measure("quarters.epw (35 040 rows)", test::madeUpEpw(8760, 4));
    bench::measure("year.csv (8 760 rows)", test::madeUpWeatherCsv(8760));
    bench::measure("quarters.csv (35 040 rows)", test::madeUpWeatherCsv(8760, 4));
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
