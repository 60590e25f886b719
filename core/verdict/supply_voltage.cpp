// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/electrical.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"
#include "core/verdict/voltage_imbalance.h"

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
    verdicts.push_back(heldAgainst(*volts, QuantityKind::voltage,
                                   {*rated * (1 - near), *rated * (1 + near), *rated * (1 - far), *rated * (1 + far)},
                                   told));
}

void judgeImbalance(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto first = measured.value("line-voltage-1-2");
    const auto second = measured.value("line-voltage-2-3");
    const auto third = measured.value("line-voltage-3-1");
    if (!first || !second || !third)
        return;
    const std::vector<std::string> from{"line-voltage-1-2", "line-voltage-2-3", "line-voltage-3-1"};
    const auto imbalance = imbalanceOf({*first, *second, *third});
    if (!imbalance) {
        verdicts.push_back(question("voltage-imbalance", from, imbalance.error().what));
        return;
    }
    Verdict verdict = heldAgainst(
        *imbalance, QuantityKind::ratio,
        {std::nullopt, measured.limit("voltage-imbalance-good"), std::nullopt, measured.limit("voltage-imbalance-far")},
        {"voltage-imbalance",
         from,
         PADSIDE_SAY("Voltage imbalance"),
         {},
         PADSIDE_SAY("the windings run hotter."),
         measured.sourceOf("voltage-imbalance-good")});
    if (verdict.side == Side::above) {
        verdict.sentence
            = {PADSIDE_SAY("Voltage imbalance {0}, above {1}: the windings warm by about {2} more; past 5 % the motor "
                           "must not run."),
               {*verdict.value, *verdict.highest, Amount{extraWindingHeat(*imbalance), QuantityKind::ratio}}};
    }
    verdicts.push_back(std::move(verdict));
}

void judgeLegCurrents(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const auto first = measured.value("leg-current-1");
    const auto second = measured.value("leg-current-2");
    const auto third = measured.value("leg-current-3");
    if (!first || !second || !third)
        return;
    const std::vector<std::string> from{"leg-current-1", "leg-current-2", "leg-current-3"};
    const auto imbalance = imbalanceOf({*first, *second, *third});
    if (!imbalance) {
        verdicts.push_back(question("current-imbalance", from, imbalance.error().what));
        return;
    }
    verdicts.push_back(heldAgainst(*imbalance, QuantityKind::ratio,
                                   {std::nullopt, measured.limit("current-imbalance-highest"), {}, {}},
                                   {"current-imbalance",
                                    from,
                                    PADSIDE_SAY("Current imbalance"),
                                    {},
                                    PADSIDE_SAY("one leg works harder: voltage, a connection, or the winding."),
                                    measured.sourceOf("current-imbalance-highest")}));
}

} // namespace

void judgeSupplyVoltage(const Measured& measured, std::vector<Verdict>& verdicts)
{
    judgeLevel(measured, verdicts);
    judgeImbalance(measured, verdicts);
    judgeLegCurrents(measured, verdicts);
}

} // namespace padside
