// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/part_choices.h"

#include "core/outlook/transition.h"
#include "core/quantity/amounts.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double stepYears = 0.5; // spring and fall
constexpr double longestHorizon = 50;
constexpr std::size_t working = gradeCount - 1; // grades in which the part still does its work

/// Cost to come (or years to come) by grade and by half-years the treatment still lasts.
using Table = std::vector<std::array<double, working>>;

class Process
{
public:
    Process(const PartDecay& decay, const PartCosts& costs, const MoneyHorizon& horizon)
        : m_decay(decay)
        , m_costs(costs)
        , m_steps(static_cast<int>(std::lround(horizon.years / stepYears)))
        , m_treatedSteps(decay.treats && !decay.treatmentResets
                             ? static_cast<std::size_t>(std::lround(decay.treatmentYears / stepYears))
                             : 0)
        , m_treatedAtFirst(std::min(
              m_treatedSteps, static_cast<std::size_t>(std::lround(std::max(0.0, decay.treatedYears) / stepYears))))
        , m_discount(std::pow(1 + horizon.rate, -stepYears))
        , m_bare(transitionAfter(decay.rates, stepYears))
        , m_treated(transitionAfter(slowed(decay), stepYears))
    {
    }

    [[nodiscard]] double spentCost(bool spareAtHand) const
    {
        const double days = spareAtHand ? 1 : std::max(1.0, m_costs.leadDays);
        return m_costs.part + m_costs.labour + m_costs.charge + m_costs.damage * m_costs.damageChance
            + m_costs.outageADay * days;
    }
    [[nodiscard]] double plannedCost() const { return m_costs.part + m_costs.labour + m_costs.outageADay; }
    [[nodiscard]] std::size_t treatedSteps() const { return m_treatedSteps; }
    /// Half-years an earlier treatment still lasts.
    [[nodiscard]] std::size_t treatedAtFirst() const { return m_treatedAtFirst; }

    /// Cost from here on when nothing is done in this step, with `after` to come.
    [[nodiscard]] double untouched(const Table& after, std::size_t grade, std::size_t treated, double spent) const
    {
        const Transition& moves = treated > 0 ? m_treated : m_bare;
        const std::size_t left = treated > 0 ? treated - 1 : 0;
        double cost = moves[grade][working] * (spent + after[0][0]); // a new one from there on
        for (std::size_t next = grade; next < working; ++next)
            cost += moves[grade][next] * after[left][next];
        return cost * m_discount;
    }

    [[nodiscard]] double treatedNow(const Table& after, std::size_t grade, double spent) const
    {
        const std::size_t from = m_decay.treatmentResets ? 0 : grade;
        return m_costs.treatment + untouched(after, from, m_treatedSteps, spent);
    }

    [[nodiscard]] double replacedNow(const Table& after, double spent) const
    {
        return plannedCost() + untouched(after, 0, 0, spent);
    }

    /// What the best choice at every step from the second on comes to.
    [[nodiscard]] Table bestFromNextStep() const
    {
        Table after = nothing();
        const double spent = spentCost(false);
        for (int step = 1; step < m_steps; ++step) {
            Table now = nothing();
            for (std::size_t treated = 0; treated < now.size(); ++treated) {
                for (std::size_t grade = 0; grade < working; ++grade) {
                    double least = std::min(untouched(after, grade, treated, spent), replacedNow(after, spent));
                    if (m_decay.treats)
                        least = std::min(least, treatedNow(after, grade, spent));
                    now[treated][grade] = least;
                }
            }
            after = std::move(now);
        }
        return after;
    }

    /// Cost of doing nothing until the part is spent, again and again.
    [[nodiscard]] Table untouchedFromNow(bool spareAtHand) const
    {
        Table after = nothing();
        const double spent = spentCost(spareAtHand);
        const double holding = spareAtHand ? m_costs.spareAYear * stepYears : 0;
        for (int step = 0; step < m_steps; ++step) {
            Table now = nothing();
            for (std::size_t treated = 0; treated < now.size(); ++treated) {
                for (std::size_t grade = 0; grade < working; ++grade)
                    now[treated][grade] = holding + untouched(after, grade, treated, spent);
            }
            after = std::move(now);
        }
        return after;
    }

    /// Expected years until it is spent, within the horizon, if nothing more is done.
    [[nodiscard]] Table yearsLeft() const
    {
        Table after = nothing();
        for (int step = 0; step < m_steps; ++step) {
            Table now = nothing();
            for (std::size_t treated = 0; treated < now.size(); ++treated) {
                const Transition& moves = treated > 0 ? m_treated : m_bare;
                const std::size_t left = treated > 0 ? treated - 1 : 0;
                for (std::size_t grade = 0; grade < working; ++grade) {
                    double years = stepYears * (1 - moves[grade][working] / 2); // half the step where it ends in it
                    for (std::size_t next = grade; next < working; ++next)
                        years += moves[grade][next] * after[left][next];
                    now[treated][grade] = years;
                }
            }
            after = std::move(now);
        }
        return after;
    }

private:
    [[nodiscard]] static Rates slowed(const PartDecay& decay)
    {
        Rates rates = decay.rates;
        for (double& rate : rates)
            rate *= 1 - decay.treatmentEffect;
        return rates;
    }
    [[nodiscard]] Table nothing() const { return Table(m_treatedSteps + 1); }

    const PartDecay& m_decay;
    const PartCosts& m_costs;
    int m_steps;
    std::size_t m_treatedSteps;
    std::size_t m_treatedAtFirst;
    double m_discount;
    Transition m_bare;
    Transition m_treated;
};

std::optional<Problem> whatCantBe(const PartDecay& decay, const PartCosts& costs, const MoneyHorizon& horizon)
{
    for (const double money : {costs.part, costs.labour, costs.treatment, costs.charge, costs.damage, costs.outageADay,
                               costs.leadDays, costs.spareAYear}) {
        if (!(money >= 0) || !std::isfinite(money))
            return Problem{ProblemKind::badInput,
                           {PADSIDE_SAY("Costs and days are numbers of 0 or more. Check the part's costs."), {}}};
    }
    for (const double share : {costs.damageChance, decay.treatmentEffect}) {
        if (!(share >= 0 && share <= 1))
            return Problem{ProblemKind::badInput,
                           {PADSIDE_SAY("A chance and an effect lie between 0 and 100 %. Check them."), {}}};
    }
    for (const double rate : decay.rates) {
        if (!(rate >= 0) || !std::isfinite(rate))
            return Problem{ProblemKind::badInput, {PADSIDE_SAY("Rates are numbers of 0 or more a year."), {}}};
    }
    if (!(horizon.years >= stepYears && horizon.years <= longestHorizon) || !(horizon.rate >= 0 && horizon.rate <= 1)
        || !(decay.treatmentYears >= 0 && decay.treatmentYears <= longestHorizon) || !(decay.treatedYears >= 0)) {
        return Problem{ProblemKind::badInput,
                       {PADSIDE_SAY("Money is reckoned over half a year to {0} years, at an interest of 0 to 100 %."),
                        {static_cast<std::int64_t>(longestHorizon)}}};
    }
    return std::nullopt;
}

/// The mean over the grades the part still works in, and what is due for the chance that it is spent already.
double expected(const GradeChances& belief, const std::array<double, working>& byGrade, double ifSpent)
{
    double sum = belief[working] * ifSpent;
    for (std::size_t grade = 0; grade < working; ++grade)
        sum += belief[grade] * byGrade[grade];
    return sum;
}

Sentence reasonFor(const ChoiceWorth& worth, const ChoiceWorth& leaving)
{
    const Number gained{worth.yearsGained, 1};
    switch (worth.choice) {
    case Choice::leave:
        return {PADSIDE_SAY("{0} is to be expected over the years if it is left now and the best is done later."),
                {roundMoney(worth.presentCost)}};
    case Choice::treat:
    case Choice::replaceNow:
        if (worth.presentCost < leaving.presentCost) {
            return {PADSIDE_SAY("It saves {0} against leaving it, and {1} years are gained before it is spent."),
                    {roundMoney(leaving.presentCost - worth.presentCost), gained}};
        }
        return {PADSIDE_SAY("{0} years are gained before it is spent, for {1} more than leaving it."),
                {gained, roundMoney(worth.presentCost - leaving.presentCost)}};
    case Choice::replaceWhenSpent:
        if (worth.presentCost - leaving.presentCost < 0.5)
            return {PADSIDE_SAY("At no visit is there anything better to do."), {}};
        return {PADSIDE_SAY("Doing nothing until the end costs {0} more than the best choice at each visit."),
                {roundMoney(std::max(0.0, worth.presentCost - leaving.presentCost))}};
    case Choice::spareAtHand:
        return {PADSIDE_SAY("With the spare at hand {0} is to be expected until then and after."),
                {roundMoney(worth.presentCost)}};
    }
    return {};
}

} // namespace

Result<std::vector<ChoiceWorth>> partChoices(const GradeChances& belief, const PartDecay& decay, const PartCosts& costs,
                                             const MoneyHorizon& horizon)
{
    if (const auto wrong = whatCantBe(decay, costs, horizon))
        return tl::unexpected(*wrong);
    const Process process(decay, costs, horizon);
    const Table later = process.bestFromNextStep();
    const Table years = process.yearsLeft();
    const double spent = process.spentCost(false);
    // A part that is spent already is replaced at once, whatever is chosen.
    const double ifSpent = spent + process.untouched(later, 0, 0, spent);
    const auto costOf = [&](const auto& byGrade, double already) {
        std::array<double, working> values{};
        for (std::size_t grade = 0; grade < working; ++grade)
            values[grade] = byGrade(grade);
        return expected(belief, values, already);
    };

    std::vector<ChoiceWorth> all;
    const auto add = [&](Choice choice, double cost, double yearsUntilSpent) {
        ChoiceWorth worth;
        worth.choice = choice;
        worth.presentCost = cost;
        worth.yearsUntilSpent = yearsUntilSpent;
        all.push_back(std::move(worth));
    };
    const std::size_t treated = process.treatedAtFirst();
    const double yearsLeaving = expected(belief, years[treated], 0);
    add(Choice::leave,
        costOf([&](std::size_t grade) { return process.untouched(later, grade, treated, spent); }, ifSpent),
        yearsLeaving);
    if (decay.treats) {
        const double yearsTreated = decay.treatmentResets ? (1 - belief[working]) * years[0][0]
                                                          : expected(belief, years[process.treatedSteps()], 0);
        add(Choice::treat, costOf([&](std::size_t grade) { return process.treatedNow(later, grade, spent); }, ifSpent),
            yearsTreated);
    }
    add(Choice::replaceNow, costOf([&](std::size_t) { return process.replacedNow(later, spent); }, ifSpent),
        years[0][0]);
    const Table untouched = process.untouchedFromNow(false);
    const Table withSpare = process.untouchedFromNow(true);
    add(Choice::replaceWhenSpent, expected(belief, untouched[treated], spent + untouched[0][0]), yearsLeaving);
    add(Choice::spareAtHand, expected(belief, withSpare[treated], process.spentCost(true) + withSpare[0][0]),
        yearsLeaving);

    const ChoiceWorth leaving = all.front();
    for (ChoiceWorth& worth : all) {
        worth.yearsGained = worth.yearsUntilSpent - leaving.yearsUntilSpent;
        worth.reason = reasonFor(worth, leaving);
    }
    std::ranges::stable_sort(all, {}, &ChoiceWorth::presentCost);
    return all;
}

} // namespace padside
