// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/kind_lesson.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

LifeInYears lifeInYears(const LifeFigures& part, const LifeFigures& zone)
{
    LifeInYears life;
    life.medianLife = part.medianLifeYears;
    for (std::size_t grade = 0; grade < life.inGrade.size(); ++grade)
        life.inGrade[grade] = zone.gradeShares[grade] * zone.medianLifeYears;
    return life;
}

LifeInYears lifeInYears(const Rates& rates, std::size_t zones, const std::shared_ptr<const Pace>& pace)
{
    return lifeInYears(lifeOfRates(rates, zones, pace), lifeOfRates(rates, 1, pace));
}

/// The spread of the logarithm of a life whose parts have these spreads.
double spreadOf(const std::array<double, 4>& shares, const std::array<double, 4>& logSigma)
{
    double variance = 0;
    for (std::size_t grade = 0; grade < shares.size(); ++grade)
        variance += shares[grade] * shares[grade] * logSigma[grade] * logSigma[grade];
    return std::sqrt(variance);
}

void takeLearnt(KindLesson& lesson, const LearntRates& learnt, std::size_t zones, double priorSigma,
                const std::shared_ptr<const Pace>& pace)
{
    lesson.zonesUsed = learnt.zones;
    lesson.sightings = learnt.sightings;
    lesson.learnt = lifeOfRates(learnt.rates, zones, pace);
    lesson.learntLife = lifeInYears(*lesson.learnt, lifeOfRates(learnt.rates, 1, pace));
    const double after = spreadOf(lesson.learnt->gradeShares, learnt.logSigma);
    const double before = spreadOf(lesson.learnt->gradeShares, {priorSigma, priorSigma, priorSigma, priorSigma});
    lesson.lowLife = lesson.learntLife.medianLife * std::exp(-after);
    lesson.highLife = lesson.learntLife.medianLife * std::exp(after);
    lesson.dataShare = std::max(0.0, 1 - after * after / (before * before));
}

/// The lives of a kind without and with what was learned before.
KindLesson lessonOf(const PartKind& kind, bool soils, const Catalogue& catalogue, const OutlookModel& priors,
                    const OutlookModel& used)
{
    KindLesson lesson;
    lesson.partKind = kind.code;
    lesson.soils = soils;
    const std::size_t zones = zonesOfLife(kind, soils);
    lesson.prior = lifeInYears(priors.ratesOf(kind.code, soils), zones, priors.pace());
    lesson.inUse = lifeInYears(used.ratesOf(kind.code, soils), zones, used.pace());
    lesson.learntOn = lifeLearntOn(catalogue, kind.code, soils);
    return lesson;
}

} // namespace

std::optional<Date> lifeLearntOn(const Catalogue& catalogue, const std::string& partKind, bool soils)
{
    const auto& kinds = catalogue.outlook().kinds;
    const auto own = kinds.find(partKind);
    if (own == kinds.end())
        return std::nullopt;
    return soils ? own->second.soilingLearntOn : own->second.learntOn;
}

std::vector<KindLesson> kindLessons(std::span<const LearntKind> learnt, const Catalogue& catalogue,
                                    const OutlookModel& priors, const OutlookModel& used)
{
    std::vector<KindLesson> lessons;
    const double learningSigma = catalogue.outlook().learningSigma;
    for (const LearntKind& of : learnt) {
        const PartKind* kind = catalogue.partKind(of.partKind);
        if (kind == nullptr)
            continue;
        KindLesson& lesson = lessons.emplace_back(lessonOf(*kind, of.soils, catalogue, priors, used));
        lesson.zonesMet = of.zonesMet;
        if (of.learnt)
            takeLearnt(lesson, *of.learnt, zonesOfLife(*kind, of.soils), learningSigma, priors.pace());
        else
            lesson.failure = of.learnt.error().what;
    }
    for (const PartKind& kind : catalogue.partKinds()) {
        for (const bool soils : {false, true}) {
            const auto isIt = [&](const KindLesson& one) { return one.partKind == kind.code && one.soils == soils; };
            if (std::ranges::any_of(lessons, isIt))
                continue;
            KindLesson lesson = lessonOf(kind, soils, catalogue, priors, used);
            if (lesson.learntOn)
                lessons.push_back(std::move(lesson));
        }
    }
    return lessons;
}

} // namespace padside
