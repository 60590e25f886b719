// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/sections.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace padside {

namespace {

std::array<double, 4> readShares(JsonObject& fields, std::string_view field)
{
    const std::vector<double> shares = fields.numbers(field);
    std::array<double, 4> four{0.25, 0.25, 0.25, 0.25};
    const bool fits = shares.size() == four.size()
        && std::ranges::all_of(shares, [](double share) { return share >= 0.001; })
        && std::abs(std::accumulate(shares.begin(), shares.end(), -1.0)) < 1e-6;
    if (fits)
        std::ranges::copy(shares, four.begin());
    else
        fields.trouble().report(fields.pathOf(field),
                                PADSIDE_SAY("{0}: four shares of at least 0.001 that add up to 1 are needed here."));
    return four;
}

std::optional<Date> readDay(JsonObject& fields, std::string_view field)
{
    const auto day = parseDate(fields.text(field));
    if (!day)
        fields.trouble().report(fields.pathOf(field), PADSIDE_SAY("{0}: a day like 2026-05-04 is needed here."));
    return day;
}

std::map<TreatmentKind, Protection> readProtections(JsonObject section)
{
    std::map<TreatmentKind, Protection> all;
    for (auto& [code, fields] : section.members()) {
        const auto kind = fromCode<TreatmentKind>(code);
        if (!kind)
            fields.trouble().report(fields.path(), PADSIDE_SAY("{0}: there is no treatment of this kind."));
        Protection protection;
        protection.effect = readBetween(fields, "effect", 0, 0.9);
        protection.years = readAboveZero(fields, "years", 30);
        fields.nothingElse();
        if (kind)
            all.emplace(*kind, protection);
    }
    return all;
}

std::map<std::string, OutlookOfKind> readKinds(JsonObject section)
{
    std::map<std::string, OutlookOfKind> all;
    for (auto& [code, fields] : section.members()) {
        OutlookOfKind kind;
        if (fields.has("grade_shares"))
            kind.gradeShares = readShares(fields, "grade_shares");
        if (fields.has("median_life_years"))
            kind.medianLifeYears = readBetween(fields, "median_life_years", 0.1, 200);
        if (fields.has("learned_on"))
            kind.learntOn = readDay(fields, "learned_on");
        if (fields.has("soiling_grade_shares"))
            kind.soilingGradeShares = readShares(fields, "soiling_grade_shares");
        if (fields.has("soiling_life_years"))
            kind.soilingLifeYears = readBetween(fields, "soiling_life_years", 0.1, 200);
        if (fields.has("soiling_learned_on"))
            kind.soilingLearntOn = readDay(fields, "soiling_learned_on");
        fields.nothingElse();
        all.emplace(code, kind);
    }
    return all;
}

} // namespace

OutlookFigures readOutlook(JsonObject section)
{
    OutlookFigures figures;
    figures.paceSigma = readBetween(section, "pace_sigma", 0, 2);
    figures.gradeShares = readShares(section, "grade_shares");
    figures.unitLifeYears = readBetween(section, "unit_life_years", 1, 200);
    figures.soilingLifeYears = readBetween(section, "soiling_life_years", 0.1, 200);
    figures.slowestAir = readBetween(section, "slowest_air", 0.01, 1);
    figures.fastestAir = readBetween(section, "fastest_air", 1, 100);
    figures.dampFactor = readBetween(section, "damp_factor", 1, 20);
    figures.wetFactor = readBetween(section, "wet_factor", 1, 20);
    figures.learningSigma = readBetween(section, "learning_sigma", 0.01, 5);
    figures.furthestYears = readBetween(section, "furthest_years", 1, 100);
    figures.protections = readProtections(section.object("protections"));
    JsonObject corroding = section.object("corroding_zones");
    for (auto& [code, fields] : corroding.members()) {
        std::vector<std::string> zones = fields.texts("zones");
        fields.nothingElse();
        figures.corrodingZones.emplace(code, std::move(zones));
    }
    figures.kinds = readKinds(section.object("part_kinds"));
    figures.source = section.text("source");
    section.nothingElse();
    return figures;
}

bool OutlookFigures::corrodes(const std::string& partKind, const std::string& zoneKind) const
{
    const auto zones = corrodingZones.find(partKind);
    return zones != corrodingZones.end() && std::ranges::find(zones->second, zoneKind) != zones->second.end();
}

} // namespace padside
