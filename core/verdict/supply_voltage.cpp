// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/electrical.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"
#include "core/verdict/voltage_imbalance.h"

#include <array>

namespace padside {

namespace {

void judgeLevel(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto volts = measured.value("line-voltage");
    if (!volts)
        return;
    const Told told{"line-voltage",
                    {"line-voltage"},
                    PADSIDE_SAY("Line voltage"),
                    PADSIDE_SAY("motors draw more current and run hot."),
                    PADSIDE_SAY("insulation and capacitors suffer."),
                    measured.sourceOf("line-voltage-tolerance")};
    const auto rated = measured.plate("supply-voltage");
    if (!rated) {
        verdicts.push_back(noAnswer(told,
                                    {PADSIDE_SAY("{0} {1}; note the nameplate's voltage to know what to ask for."),
                                     {Word{told.name}, Amount{*volts, QuantityKind::voltage}}}));
        return;
    }
    const double far = measured.limit("line-voltage-tolerance");
    const double near = far - measured.limit("line-voltage-near-edge");
    verdicts.push_back(heldAgainst(*volts, QuantityKind::voltage, around(*rated, *rated * near, *rated * far), told));
}

/// How unequal the three readings of `told` are, held against a highest share; empty unless all three were taken.
std::optional<Verdict> imbalanceVerdict(const Measured& measured, const Told& told, const Range& range)
{
    std::array<double, 3> phases{};
    for (std::size_t phase = 0; phase < phases.size(); ++phase) {
        const auto taken = measured.value(told.from.at(phase));
        if (!taken)
            return std::nullopt;
        phases[phase] = *taken;
    }
    const auto imbalance = imbalanceOf(phases);
    return imbalance ? heldAgainst(*imbalance, QuantityKind::ratio, range, told)
                     : question(told.code, told.from, imbalance.error().what);
}

void judgeImbalance(const Measured& measured, std::vector<Verdict>& verdicts)
{
    auto verdict = imbalanceVerdict(measured,
                                    {"voltage-imbalance",
                                     {"line-voltage-1-2", "line-voltage-2-3", "line-voltage-3-1"},
                                     PADSIDE_SAY("Voltage imbalance"),
                                     {},
                                     PADSIDE_SAY("the windings run hotter."),
                                     measured.sourceOf("voltage-imbalance-good")},
                                    {std::nullopt, measured.limit("voltage-imbalance-good"), std::nullopt,
                                     measured.limit("voltage-imbalance-far")});
    if (!verdict)
        return;
    if (verdict->side == Side::above) {
        verdict->sentence
            = {PADSIDE_SAY("Voltage imbalance {0}, above {1}: the windings warm by about {2} more; past 5 % the motor "
                           "must not run."),
               {*verdict->value, *verdict->highest, Amount{extraWindingHeat(verdict->value->si), QuantityKind::ratio}}};
    }
    verdicts.push_back(*std::move(verdict));
}

void judgeLegCurrents(const Measured& measured, std::vector<Verdict>& verdicts)
{
    auto verdict = imbalanceVerdict(measured,
                                    {"current-imbalance",
                                     {"leg-current-1", "leg-current-2", "leg-current-3"},
                                     PADSIDE_SAY("Current imbalance"),
                                     {},
                                     PADSIDE_SAY("one leg works harder: voltage, a connection, or the winding."),
                                     measured.sourceOf("current-imbalance-highest")},
                                    {std::nullopt, measured.limit("current-imbalance-highest"), {}, {}});
    if (verdict)
        verdicts.push_back(*std::move(verdict));
}

} // namespace

void judgeSupplyVoltage(const Measured& measured, std::vector<Verdict>& verdicts)
{
    judgeLevel(measured, verdicts);
    judgeImbalance(measured, verdicts);
    judgeLegCurrents(measured, verdicts);
}

} // namespace padside
