// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/bounded_number.h"
#include "core/catalogue/sections.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace padside {

namespace {

constexpr std::array plainFields{
    OutlookField{"unit_life_years", PADSIDE_SAY("Median life of parts that last as long as the unit, in years"),
                 PADSIDE_SAY("It stands in where a part kind has no median life of its own."),
                 &OutlookFigures::unitLifeYears, 1, 200},
    OutlookField{"soiling_life_years", PADSIDE_SAY("Time from clean to blocked, in years"),
                 PADSIDE_SAY("The median for zones that get dirty rather than decay."),
                 &OutlookFigures::soilingLifeYears, 0.1, 200},
    OutlookField{
        "pace_sigma", PADSIDE_SAY("Spread of the pace among zones of one kind"),
        PADSIDE_SAY("Each zone has its own pace, spread by this much (standard deviation of the logarithm) round "
                    "that of its kind; the wider, the more a zone's own grades count."),
        &OutlookFigures::paceSigma, 0, 2},
    OutlookField{"slowest_air", PADSIDE_SAY("Slowest a site's air lets zones rust, times the usual"),
                 PADSIDE_SAY("However mild a site's air is, a zone that rusts ages no slower than this."),
                 &OutlookFigures::slowestAir, 0.01, 1},
    OutlookField{"fastest_air", PADSIDE_SAY("Fastest a site's air lets zones rust, times the usual"),
                 PADSIDE_SAY("However salty a site's air is, a zone that rusts ages no faster than this."),
                 &OutlookFigures::fastestAir, 1, 100},
    OutlookField{"damp_factor", PADSIDE_SAY("Rusting zone found damp, times the usual"),
                 PADSIDE_SAY("A zone that rusts and was found damp ages this many times as fast."),
                 &OutlookFigures::dampFactor, 1, 20},
    OutlookField{"wet_factor", PADSIDE_SAY("Rusting zone found wet, times the usual"),
                 PADSIDE_SAY("A zone that rusts and was found wet ages this many times as fast."),
                 &OutlookFigures::wetFactor, 1, 20},
    OutlookField{
        "learning_sigma", PADSIDE_SAY("How far learned rates may lie from ours"),
        PADSIDE_SAY("Rates learned from records are expected to lie within about this much (standard deviation of "
                    "the logarithm) of ours; the larger, the more the records count."),
        &OutlookFigures::learningSigma, 0.01, 5},
    OutlookField{"furthest_years", PADSIDE_SAY("Furthest date that is told, in years"),
                 PADSIDE_SAY("What lies further ahead than this is not given a date."), &OutlookFigures::furthestYears,
                 1, 100}};

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
    for (const OutlookField& field : plainFields)
        figures.*field.value = readBetween(section, field.code, field.lowest, field.highest);
    figures.gradeShares = readShares(section, "grade_shares");
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

std::span<const OutlookField> outlookFields()
{
    return plainFields;
}

bool OutlookFigures::corrodes(const std::string& partKind, const std::string& zoneKind) const
{
    const auto zones = corrodingZones.find(partKind);
    return zones != corrodingZones.end() && std::ranges::find(zones->second, zoneKind) != zones->second.end();
}

} // namespace padside
