// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/zone_measure.h"

#include "core/corrosion/rust_grade.h"
#include "core/quantity/date.h"
#include "core/trend/reading_series.h"
#include "core/verdict/known_figures.h"
#include "core/verdict/range.h"

#include <array>

namespace padside {

namespace {

constexpr double leastRatePerYear = 0.001; // less than 0.1 % a year is not worth a word; ours

Verdict wallVerdict(const WallOutlook& outlook, const WallAsked& asked, const Catalogue& catalogue)
{
    Verdict verdict;
    verdict.code = "wall-thickness";
    verdict.from = {"wall-thickness"};
    verdict.value = Amount{outlook.thicknessM, QuantityKind::length};
    verdict.lowest = Amount{asked.metres, QuantityKind::length};
    verdict.sentence = outlook.said;
    const double watch = limitOf(catalogue, "wall-watch");
    if (outlook.thicknessM <= asked.metres) {
        verdict.side = Side::below;
        verdict.judgement = Judgement::outside;
    } else if (outlook.remainingYears && *outlook.remainingYears < watch) {
        verdict.side = Side::inside;
        verdict.judgement = Judgement::watch;
    } else {
        verdict.side = Side::inside;
        verdict.judgement = outlook.longTerm ? Judgement::within : Judgement::unjudged;
    }
    return verdict;
}

void judgeWall(ZoneMeasure& measure, const UnitRecord& record, const Catalogue& catalogue)
{
    std::vector<WallReading> readings;
    for (const TrendPoint& point : measure.points)
        readings.push_back({point.time / daysInAYear, point.value});
    measure.wallAsked = requiredWallOf(record.unit, catalogue, readings.front().thicknessM);
    const auto outlook = wallOutlook(readings, WallRule{measure.wallAsked->metres});
    if (!outlook) {
        measure.verdict = question("wall-thickness", {"wall-thickness"}, outlook.error().what);
        return;
    }
    measure.wall = *outlook;
    measure.verdict = wallVerdict(*outlook, *measure.wallAsked, catalogue);
}

void judgeRust(ZoneMeasure& measure, const Catalogue& catalogue)
{
    const double share = measure.points.back().value;
    const auto grades = rustGradesOf(share * 100);
    if (!grades) {
        measure.verdict = question("rust-share", {"rust-share"}, grades.error().what);
        return;
    }
    measure.verdict = heldAgainst(
        share, QuantityKind::ratio,
        {std::nullopt, limitOf(catalogue, "rust-share-good"), std::nullopt, limitOf(catalogue, "rust-share-far")},
        {"rust-share",
         {"rust-share"},
         PADSIDE_SAY("Rusted"),
         {},
         {},
         catalogue.readingLimit("rust-share-good")->source});
    const std::vector<Argument> words{*measure.verdict.value, static_cast<std::int64_t>(grades->ri),
                                      static_cast<std::int64_t>(grades->d610)};
    measure.verdict.sentence = {PADSIDE_SAY("Rusted {0}: Ri {1} by ISO 4628-3, grade {2} by ASTM D610."), words};
    const auto rate = measure.summary.ratePerYear ? measure.summary.ratePerYear : measure.summary.lastRatePerYear;
    if (rate && *rate >= leastRatePerYear) {
        measure.verdict.sentence.pattern
            = PADSIDE_SAY("Rusted {0}: Ri {1} by ISO 4628-3, grade {2} by ASTM D610; {3} more a year.");
        measure.verdict.sentence.arguments.emplace_back(Amount{*rate, QuantityKind::ratio});
    }
}

/// Work that makes a series start anew: paint hides rust; nothing brings a wall back but a new part.
std::vector<TreatmentKind> resetsOf(const std::string& readingKind)
{
    if (readingKind == "rust-share")
        return {TreatmentKind::brushAndCoat, TreatmentKind::repair};
    return {};
}

} // namespace

std::optional<ZoneMeasure> zoneMeasure(const UnitRecord& record, const Catalogue& catalogue, const Part& part,
                                       const Zone& zone, const std::string& readingKind, std::optional<TrendPoint> now)
{
    if ((readingKind != "wall-thickness" && readingKind != "rust-share") || catalogue.readingLimits().empty())
        return std::nullopt;
    ZoneMeasure measure;
    measure.partId = part.id;
    measure.zoneId = zone.id;
    measure.readingKind = readingKind;
    const auto resets = resetsOf(readingKind);
    measure.points = seriesSinceReset(record, {readingKind, part.id, zone.id}, resets);
    if (now) {
        std::erase_if(measure.points, [&](const TrendPoint& point) { return point.time >= now->time; });
        measure.points.push_back(*now);
    }
    if (measure.points.empty())
        return std::nullopt;
    measure.summary = summariseSeries(measure.points);
    if (readingKind == "wall-thickness")
        judgeWall(measure, record, catalogue);
    else
        judgeRust(measure, catalogue);
    return measure;
}

std::vector<ZoneMeasure> zoneMeasures(const UnitRecord& record, const Catalogue& catalogue)
{
    std::vector<ZoneMeasure> measures;
    for (const Part& part : record.parts) {
        if (part.removedOn)
            continue;
        for (const Zone& zone : part.zones) {
            for (const char* kind : {"wall-thickness", "rust-share"}) {
                if (auto measure = zoneMeasure(record, catalogue, part, zone, kind))
                    measures.push_back(*std::move(measure));
            }
        }
    }
    return measures;
}

} // namespace padside
