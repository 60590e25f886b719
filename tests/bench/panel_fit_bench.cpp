// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The panel fit against a plain one on the same data, as a ratio; and what one belief costs. Nothing passes or fails by
// the clock, but both fits must find the same rates.

#include "core/outlook/first_passage.h"
#include "core/outlook/panel_fit.h"
#include "tests/bench/plain_panel_fit.h"
#include "tests/support/reference_table.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
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

/// The best of several runs, ms.
template <typename Work> double milliseconds(int runs, const Work& work)
{
    double best = 1e300;
    for (int run = 0; run < runs; ++run) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
        best = std::min(best, took.count());
    }
    return best;
}

void compareFits(int copies)
{
    const std::vector<PanelStep> steps = stepsOfTable(copies);
    PanelFit ours;
    bench::PlainFit plain;
    const double ourTime = milliseconds(5, [&] { ours = fitPanel(steps).value(); });
    const double plainTime = milliseconds(copies > 1 ? 1 : 3, [&] { plain = bench::fitPlainly(steps); });
    for (std::size_t k = 0; k < 4; ++k) {
        if (std::abs(ours.rates[k].perYear / plain.rates[k] - 1) > 1e-3) {
            std::printf("the fits disagree in rate %zu: %.8f %.8f\n", k + 1, ours.rates[k].perYear, plain.rates[k]);
            std::exit(1);
        }
    }
    std::printf("%zu steps: ours %.2f ms (%d rounds), plain %.1f ms (%d rounds), ratio %.1f\n", steps.size(), ourTime,
                ours.rounds, plainTime, plain.rounds, plainTime / ourTime);
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
    std::printf("one zone: belief over %d visits, no two times alike, %.1f us, its range of dates %.1f us (%g)\n", visits, 1000 * follow,
                1000 * range, sum);
}

} // namespace

int main()
{
    compareFits(1);
    compareFits(10);
    timeBelief();
    return 0;
}
