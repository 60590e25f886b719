// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The panel fit against a plain one and, where R is installed, against its package msm on the same data, as ratios of
// the processor's time; and what one belief costs. Nothing passes or fails by the clock, but the fits must find the
// same rates.

#include "core/outlook/first_passage.h"
#include "core/outlook/panel_fit.h"
#include "tests/bench/plain_panel_fit.h"
#include "tests/support/reference_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <sstream>
#include <string>
#include <vector>

using namespace padside; // NOLINT(google-build-using-namespace): a program of its own

namespace {

std::vector<PanelStep> stepsOfTable(int copies)
{
    const test::ReferenceTable table("panel500.csv");
    std::vector<PanelStep> steps;
    for (int copy = 0; copy < copies; ++copy) {
        for (std::size_t row = 1; row < table.rows(); ++row) {
            if (table.text(row, "unit") == table.text(row - 1, "unit")) {
                steps.push_back({table.number(row, "years") - table.number(row - 1, "years"),
                                 static_cast<Grade>(table.number(row - 1, "grade")),
                                 static_cast<Grade>(table.number(row, "grade"))});
            }
        }
    }
    return steps;
}

/// The best of several runs, ms of the processor's time.
template <typename Work> double milliseconds(int runs, const Work& work)
{
    double best = 1e300;
    for (int run = 0; run < runs; ++run) {
        const std::clock_t start = std::clock();
        work();
        best = std::min(best, static_cast<double>(std::clock() - start) * 1000 / CLOCKS_PER_SEC);
    }
    return best;
}

void requireSameRates(const PanelFit& ours, const Rates& others, const char* whose)
{
    for (std::size_t k = 0; k < 4; ++k) {
        if (std::abs(ours.rates[k].perYear / others[k] - 1) > 1e-3) {
            std::printf("ours and %s disagree in rate %zu: %.8f %.8f\n", whose, k + 1, ours.rates[k].perYear,
                        others[k]);
            std::exit(1);
        }
    }
}

constexpr int fitRuns = 25;

void compareFits(int copies)
{
    const std::vector<PanelStep> steps = stepsOfTable(copies);
    PanelFit ours;
    bench::PlainFit plain;
    const double ourTime = milliseconds(fitRuns, [&] { ours = fitPanel(steps).value(); });
    const double plainTime = milliseconds(copies > 1 ? 1 : 3, [&] { plain = bench::fitPlainly(steps); });
    requireSameRates(ours, plain.rates, "the plain ones");
    std::printf("%zu steps: ours %.3f ms (%d rounds), plain %.1f ms (%d rounds), ratio %.1f\n", steps.size(), ourTime,
                ours.rounds, plainTime, plain.rounds, plainTime / ourTime);
}

/// What a program prints; empty where it can't be run.
std::string outputOf(const std::string& command)
{
    std::string output;
    if (FILE* pipe = popen(command.c_str(), "r")) { // NOLINT(cert-env33-c): a developer's own machine, fixed words
        std::array<char, 256> part{};
        while (std::fgets(part.data(), part.size(), pipe) != nullptr)
            output += part.data();
        if (pclose(pipe) != 0)
            output.clear();
    }
    return output;
}

/// Debian's r-base-core and r-cran-msm; neither the program nor its tests need them.
void compareWithMsm()
{
    if (outputOf("command -v Rscript").empty()) {
        std::printf("R is not installed: left out\n");
        return;
    }
    std::istringstream answer(
        outputOf("Rscript " PADSIDE_SOURCE_DIR "/tests/bench/msm_fit.R '" + test::referencePath("panel500.csv") + "'"));
    double seconds = 0;
    double minusTwoLogLikelihood = 0;
    Rates rates{};
    if (!(answer >> seconds >> minusTwoLogLikelihood >> rates[0] >> rates[1] >> rates[2] >> rates[3])) {
        std::printf("R's package msm is not installed: left out\n");
        return;
    }
    const std::vector<PanelStep> steps = stepsOfTable(1);
    PanelFit ours;
    const double ourTime = milliseconds(fitRuns, [&] { ours = fitPanel(steps).value(); });
    requireSameRates(ours, rates, "those of msm");
    std::printf("%zu steps: ours %.3f ms, R's msm %.0f ms, ratio %.0f; -2 log L ours %.7f, msm %.7f\n", steps.size(),
                ourTime, 1000 * seconds, 1000 * seconds / ourTime, ours.minusTwoLogLikelihood, minusTwoLogLikelihood);
}

void timeBelief()
{
    const auto pace = std::make_shared<const Pace>(*logNormalPace(0.6));
    const Rates rates{0.15, 0.2, 0.3, 0.6};
    const PacedChain chain(rates, pace);
    constexpr int visits = 20;
    double sum = 0;
    double exposure = 0.4;
    Belief last(pace, Grade::sound);
    const double follow = milliseconds(50, [&] { // no two times are alike
        Belief belief(pace, Grade::sound);
        for (int visit = 0; visit < visits; ++visit) {
            belief.carryForward(chain, exposure += 1e-4);
            sum += belief.see(visit < 10 ? Grade::sound : Grade::worn) ? 1 : 0;
        }
        last = belief;
    });
    const double range = milliseconds(50, [&] { sum += exposureRangeToSpent(last, chain).middle.value_or(0); });
    std::printf("one zone: belief over %d visits, no two times alike, %.1f us, its range of dates %.1f us (%g)\n",
                visits, 1000 * follow, 1000 * range, sum);
}

} // namespace

int main()
{
    compareFits(1);
    compareFits(10);
    compareWithMsm();
    timeBelief();
    return 0;
}
