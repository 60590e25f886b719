// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/refrigerant/target_superheat.h"
#include "core/verdict/charge_test.h"
#include "core/verdict/judges.h"
#include "core/verdict/range.h"

namespace padside {

namespace {

Told superheatTold(std::vector<std::string> from, std::string source)
{
    return {"superheat",
            std::move(from),
            PADSIDE_SAY("Superheat"),
            PADSIDE_SAY("more liquid reaches the coil's end than it boils; liquid may get to the compressor."),
            PADSIDE_SAY("the coil gets less refrigerant than it could boil."),
            std::move(source)};
}

/// What superheat to expect and from which source.
struct SuperheatAsked
{
    Range range;
    std::vector<std::string> from;
    std::string source;
};

SuperheatAsked askedAround(double targetK, const Measured& measured, std::vector<std::string> from, std::string source)
{
    const double tolerance = measured.limit("superheat-tolerance");
    return {around(targetK, tolerance, 2 * tolerance), std::move(from), std::move(source)};
}

/// The nameplate first, then the chart for a fixed orifice, then the wide range of a valve.
std::optional<SuperheatAsked> asked(const Measured& measured)
{
    const std::vector<std::string> pair{"suction-pressure", "suction-line-temperature"};
    if (const auto plate = measured.plate("superheat-target"))
        return askedAround(*plate, measured, pair, PADSIDE_SAY("nameplate or the maker's data"));
    if (measured.unit().metering == Metering::fixedOrifice) {
        const auto wetBulb = measured.value("return-wet-bulb");
        const auto outdoor = measured.outdoorK();
        if (!wetBulb || !outdoor)
            return std::nullopt;
        const auto target = targetSuperheat(*wetBulb, *outdoor);
        if (!target || !target->byChartK)
            return std::nullopt;
        return askedAround(*target->byChartK, measured,
                           {"return-wet-bulb", "suction-pressure", "suction-line-temperature"},
                           std::string(targetChartSource));
    }
    if (measured.unit().metering == Metering::unknown)
        return std::nullopt;
    return SuperheatAsked{{measured.limit("superheat-valve-lowest"), measured.limit("superheat-valve-highest"), {}, {}},
                          pair,
                          measured.sourceOf("superheat-valve-lowest")};
}

/// Why a superheat that is known can't be judged.
Sentence whyNotAsked(const Measured& measured, double superheatK)
{
    const Amount value{superheatK, QuantityKind::temperatureDifference};
    if (measured.unit().metering != Metering::fixedOrifice)
        return {PADSIDE_SAY("Superheat {0}; note how the refrigerant is metered to know what to ask for."), {value}};
    if (!measured.value("return-wet-bulb") || !measured.outdoorK())
        return {PADSIDE_SAY("Superheat {0}; a fixed orifice needs the return air wet bulb and the outdoor temperature "
                            "to know what to ask for."),
                {value}};
    return {
        PADSIDE_SAY("Superheat {0}; for this wet bulb and outdoor temperature the chart gives no target: the charge "
                    "can't be judged by superheat now."),
        {value}};
}

/// Below what a gas can be: liquid at the port, or a reading is off. Says what the gauge would read had the pressure
/// been absolute, where that would make sense of it.
Sentence belowBoiling(const Measured& measured, double superheatK)
{
    const Amount short0{-superheatK, QuantityKind::temperatureDifference};
    const double gauge = *measured.value("suction-pressure");
    const double line = *measured.value("suction-line-temperature");
    const auto boiling = measured.boilingK(gauge - measured.stationPressurePa().value_or(0));
    if (boiling && line > *boiling) {
        return {PADSIDE_SAY("The suction line is {0} colder than the refrigerant boils at this pressure: liquid at the "
                            "port, or a reading is off. If the pressure was absolute, the gauge pressure is {1}."),
                {short0, Amount{gauge - *measured.stationPressurePa(), QuantityKind::gaugePressure}}};
    }
    return {
        PADSIDE_SAY("The suction line is {0} colder than the refrigerant boils at this pressure: liquid at the port, "
                    "or a reading is off."),
        {short0}};
}

} // namespace

void judgeSuperheat(const Measured& measured, std::vector<Verdict>& verdicts)
{
    const std::vector<std::string> pair{"suction-pressure", "suction-line-temperature"};
    const Told told = superheatTold(pair, {});
    const auto superheat = measured.superheatK();
    if (!superheat) {
        if (auto why = whyNoSaturation(measured, "suction-pressure"))
            verdicts.push_back(noAnswer(told, std::move(*why)));
        return;
    }
    if (*superheat < 0) {
        Verdict doubt = question("superheat", pair, belowBoiling(measured, *superheat));
        doubt.value = Amount{*superheat, QuantityKind::temperatureDifference};
        doubt.side = Side::below;
        verdicts.push_back(std::move(doubt));
        return;
    }
    if (auto why = whyNoChargeTest(measured)) {
        verdicts.push_back(noAnswer(told, std::move(*why)));
        return;
    }
    const auto want = asked(measured);
    if (!want) {
        verdicts.push_back(noAnswer(told, whyNotAsked(measured, *superheat)));
        return;
    }
    verdicts.push_back(heldAgainst(*superheat, QuantityKind::temperatureDifference, want->range,
                                   superheatTold(want->from, want->source)));
}

} // namespace padside
