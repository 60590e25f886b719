// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/panel_counts.h"

#include "core/outlook/misgrading.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

/// Calls `use`(years, from, to, how many) for every sort of step that says something.
template <typename Use> void forEachSort(std::span<const PanelCounts> counts, const Use& use)
{
    for (const PanelCounts& group : counts) {
        if (group.years <= 0)
            continue; // no time, no news
        for (std::size_t from = 0; from < gradeCount; ++from) {
            for (std::size_t to = from; to < gradeCount; ++to) {
                if (group.steps[from][to] > 0)
                    use(group.years, from, to, group.steps[from][to]);
            }
        }
    }
}

std::optional<Problem> misfit(const PanelStep& step, std::size_t number)
{
    const auto place = static_cast<std::int64_t>(number);
    const std::int64_t from = numeral(step.from);
    const std::int64_t to = numeral(step.to);
    if (!std::isfinite(step.years) || step.years < 0) {
        return Problem{ProblemKind::badInput,
                       {PADSIDE_SAY("Step {0} takes no number of years from 0 on. Check its dates."), {place}}};
    }
    if (to < from) {
        return Problem{
            ProblemKind::badInput,
            {PADSIDE_SAY("Step {0} goes from grade {1} to {2}, which is better; rates are learned from decay "
                         "alone. Begin a new unit after a repair."),
             {place, from, to}}};
    }
    if (to > from && step.years == 0) {
        return Problem{
            ProblemKind::badInput,
            {PADSIDE_SAY("Step {0} goes from grade {1} to {2} in no time. Check its dates."), {place, from, to}}};
    }
    return std::nullopt;
}

} // namespace

Result<std::vector<PanelCounts>> countPanel(std::span<const PanelStep> steps)
{
    for (std::size_t place = 0; place < steps.size(); ++place) {
        if (auto wrong = misfit(steps[place], place + 1))
            return tl::unexpected(*std::move(wrong));
    }
    std::vector<PanelStep> sorted(steps.begin(), steps.end());
    std::ranges::sort(sorted, {}, &PanelStep::years);
    std::vector<PanelCounts> counts;
    for (const PanelStep& step : sorted) {
        // Lengths in years are whole days divided by 365.25 and then subtracted: the same but for their last digits.
        if (counts.empty() || step.years - counts.back().years > 1e-9 * step.years)
            counts.push_back({step.years, {}});
        counts.back().steps[indexOf(step.from)][indexOf(step.to)] += 1;
    }
    return counts;
}

std::array<RateKnowledge, 4> knowableRates(std::span<const PanelCounts> counts)
{
    std::array<bool, 4> left{};
    std::array<bool, 4> seenIn{};
    std::array<bool, 4> endedIn{};
    forEachSort(counts, [&](double, std::size_t from, std::size_t to, double) {
        for (std::size_t grade = from; grade < to; ++grade)
            left[grade] = true;
        if (from < 4)
            seenIn[from] = true;
        if (to < 4)
            seenIn[to] = endedIn[to] = true;
    });
    std::array<RateKnowledge, 4> knowledge{};
    for (std::size_t grade = 0; grade < 4; ++grade) {
        if (left[grade])
            knowledge[grade] = seenIn[grade] ? RateKnowledge::fitted : RateKnowledge::unbounded;
        else
            knowledge[grade] = endedIn[grade] ? RateKnowledge::neverLeft : RateKnowledge::neverEntered;
    }
    return knowledge;
}

Rates roughRates(std::span<const PanelCounts> counts)
{
    Rates left{};
    Rates time{};
    forEachSort(counts, [&](double years, std::size_t from, std::size_t to, double many) {
        const double share = years * many / static_cast<double>(to - from + 1);
        for (std::size_t grade = from; grade <= to && grade < 4; ++grade) {
            time[grade] += share;
            if (grade < to)
                left[grade] += many;
        }
    });
    Rates rates{};
    for (std::size_t grade = 0; grade < 4; ++grade)
        rates[grade] = left[grade] > 0 ? left[grade] / time[grade] : 0;
    return rates;
}

} // namespace padside
