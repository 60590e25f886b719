// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/electrical.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

namespace {

constexpr double fallingShare = 0.5; // half of what it was last time; common practice, no source

void judgeResistance(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const Taken* taken = measured.find("insulation-resistance");
    if (taken == nullptr)
        return;
    Verdict verdict
        = heldAgainst(taken->si, QuantityKind::resistance,
                      {measured.limit("insulation-good"), std::nullopt, measured.limit("insulation-low"), std::nullopt},
                      {"insulation-resistance",
                       {"insulation-resistance"},
                       PADSIDE_SAY("Insulation resistance"),
                       PADSIDE_SAY("moisture or wear in the winding; liquid in a cold sump reads low too, so test "
                                   "again warm before anything is condemned."),
                       {},
                       measured.sourceOf("insulation-good"),
                       taken->partId});
    const auto winding = measured.value("shell-temperature");
    if (winding && insulationAt40C(taken->si, *winding) < measured.limit("insulation-least-at-40")) {
        verdict.judgement = Judgement::outside;
        verdict.side = Side::below;
        verdict.source = measured.sourceOf("insulation-least-at-40");
        verdict.sentence
            = {PADSIDE_SAY("Insulation resistance {0} at {1}, {2} at 40 °C: below {3}. Dry it and test again "
                           "before anything is condemned."),
               {*verdict.value, Amount{*winding, QuantityKind::temperature},
                Amount{insulationAt40C(taken->si, *winding), QuantityKind::resistance},
                Amount{measured.limit("insulation-least-at-40"), QuantityKind::resistance}}};
    }
    const auto last = measured.before(*taken);
    if (verdict.judgement == Judgement::within && last && taken->si < *last * fallingShare) {
        verdict.judgement = Judgement::watch;
        verdict.side = Side::below;
        verdict.sentence = {PADSIDE_SAY("Insulation resistance {0}, less than half of the {1} of last time."),
                            {*verdict.value, Amount{*last, QuantityKind::resistance}}};
    }
    verdicts.push_back(std::move(verdict));
}

void judgeRatio(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const Taken* taken = measured.find("insulation-ratio");
    if (taken == nullptr)
        return;
    verdicts.push_back(heldAgainst(taken->si, QuantityKind::count,
                                   {measured.limit("insulation-ratio-good"), std::nullopt,
                                    measured.limit("insulation-ratio-lowest"), std::nullopt},
                                   {"insulation-ratio",
                                    {"insulation-ratio"},
                                    PADSIDE_SAY("Insulation resistance, 60 s over 30 s,"),
                                    PADSIDE_SAY("the winding may be damp or dirty."),
                                    {},
                                    measured.sourceOf("insulation-ratio-good"),
                                    taken->partId}));
}

} // namespace

void judgeInsulation(const Measured& measured, std::vector<Verdict>& verdicts)
{
    judgeResistance(measured, verdicts);
    judgeRatio(measured, verdicts);
}

} // namespace padside
