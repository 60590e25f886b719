// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/sections.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace padside {

namespace {

double positive(JsonObject& fields, std::string_view field)
{
    const double value = fields.number(field);
    if (!(value > 0))
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: a number above zero is needed here."));
    return value;
}

char capital(char c)
{
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

/// Records and people find a refrigerant by its designation, so key and designation must be the same but for capitals.
std::string readDesignation(const std::string& key, JsonObject& fields)
{
    std::string designation = fields.text("designation");
    if (!std::ranges::equal(key, designation, {}, capital, capital)) {
        fields.trouble().report(fields.pathOf("designation"),
                                PADSIDE_SAY("{0}: \"{1}\" must be the entry's code but for capitals."), {designation});
    }
    return designation;
}

std::vector<WarmingPotential> readWarmingPotentials(JsonObject section)
{
    std::vector<WarmingPotential> all;
    for (auto& [code, fields] : section.members()) {
        WarmingPotential potential;
        std::ranges::transform(code, std::back_inserter(potential.report), capital);
        potential.value = fields.number("value");
        if (potential.value < 0)
            fields.trouble().report(fields.pathOf("value"), PADSIDE_SAY("{0}: this can't be below 0."));
        potential.source = fields.text("source");
        fields.nothingElse();
        all.push_back(std::move(potential));
    }
    if (all.empty())
        section.trouble().report(section.path(), PADSIDE_SAY("{0}: at least one is needed."));
    return all;
}

SaturationCurve readCurve(JsonObject fields)
{
    SaturationCurve curve;
    curve.reducingTemperatureK = positive(fields, "reducing_K");
    curve.reducingPressurePa = positive(fields, "reducing_Pa");
    curve.coefficients = fields.numbers("coefficients");
    curve.exponents = fields.numbers("exponents");
    if (curve.coefficients.empty() || curve.coefficients.size() != curve.exponents.size()) {
        fields.trouble().report(fields.path(),
                                PADSIDE_SAY("{0}: as many exponents as coefficients are needed, at least one."));
        curve.coefficients.clear();
        curve.exponents.clear();
    }
    fields.nothingElse();
    return curve;
}

/// Every kelvin of its range: a curve that falls or is no number would give wrong temperatures without a word.
bool isSound(const Refrigerant& refrigerant)
{
    const double highest = highestSaturationK(refrigerant);
    double bubbleBelow = 0;
    double dewBelow = 0;
    for (double at = refrigerant.lowestK; at <= highest; at += 1) {
        const double bubble = curvePressurePa(refrigerant.bubble, at);
        const double dew = curvePressurePa(refrigerant.dew, at);
        if (!std::isfinite(bubble) || !(bubble > bubbleBelow) || !(dew > dewBelow) || dew > bubble * 1.001)
            return false;
        bubbleBelow = bubble;
        dewBelow = dew;
    }
    return true;
}

void readSaturation(Refrigerant& refrigerant, JsonObject fields)
{
    refrigerant.lowestK = positive(fields, "lowest_K");
    refrigerant.highestK = positive(fields, "highest_K");
    refrigerant.bubble = readCurve(fields.object("bubble"));
    refrigerant.glides = fields.has("dew");
    refrigerant.dew = refrigerant.glides ? readCurve(fields.object("dew")) : refrigerant.bubble;
    refrigerant.curveSource = fields.text("source");
    fields.nothingElse();

    constexpr double hottest = 1000; // K; no refrigerant is used anywhere near
    const double highest = highestSaturationK(refrigerant);
    if (!(refrigerant.lowestK < highest) || highest > hottest || highest >= refrigerant.bubble.reducingTemperatureK
        || highest >= refrigerant.dew.reducingTemperatureK) {
        fields.trouble().report(fields.path(),
                                PADSIDE_SAY("{0}: the range must go up from lowest_K to highest_K and stay below the "
                                            "critical temperature and every reducing_K."));
    } else if (!isSound(refrigerant)) {
        fields.trouble().report(fields.path(),
                                PADSIDE_SAY("{0}: the curves must rise all over their range, the dew curve never above "
                                            "the bubble curve. Compare the numbers with their source."));
    }
}

} // namespace

std::vector<Refrigerant> readRefrigerants(JsonObject section)
{
    std::vector<Refrigerant> all;
    for (auto& [code, fields] : section.members()) {
        Refrigerant refrigerant;
        refrigerant.code = readDesignation(code, fields);
        refrigerant.composition = fields.text("composition");
        JsonObject safety = fields.object("safety");
        refrigerant.safetyClass = safety.choice<SafetyClass>("class");
        refrigerant.safetySource = safety.text("source");
        safety.nothingElse();
        refrigerant.warmingPotentials = readWarmingPotentials(fields.object("gwp"));
        JsonObject critical = fields.object("critical");
        refrigerant.criticalTemperatureK = positive(critical, "temperature_K");
        refrigerant.criticalSource = critical.text("source");
        critical.nothingElse();
        readSaturation(refrigerant, fields.object("saturation"));
        fields.nothingElse();
        all.push_back(std::move(refrigerant));
    }
    return all;
}

} // namespace padside
