// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/sample_lessons.h"

#include <array>
#include <nlohmann/json.hpp>

namespace padside {

namespace {

struct Lesson
{
    const char* partKind;
    bool soils;
    double medianLifeYears;
    std::array<double, 4> gradeShares;
};

// What learning (RateLearner) made of the town's record as it was on the day of the lessons, written down as it is kept
// when a person accepts it. As invented as the record it was learned from: it says nothing of how long parts last
// anywhere. Whoever changes the scenario learns it anew.
constexpr std::array lessons{Lesson{"base-pan", false, 22.0, {0.2398, 0.2441, 0.41, 0.1061}},
                             Lesson{"base-pan", true, 5.42, {0.1797, 0.5809, 0.1803, 0.0591}},
                             Lesson{"bonding", false, 28.3, {0.3062, 0.5069, 0.1326, 0.0543}},
                             Lesson{"cabinet", false, 20.3, {0.2168, 0.3119, 0.3862, 0.0851}},
                             Lesson{"clearances", true, 7.31, {0.1544, 0.5054, 0.2456, 0.0946}},
                             Lesson{"compressor", false, 19.0, {0.2208, 0.331, 0.3213, 0.1269}},
                             Lesson{"contactor", false, 10.2, {0.1796, 0.4329, 0.2679, 0.1196}},
                             Lesson{"crankcase-heater", false, 15.2, {0.2581, 0.4174, 0.2402, 0.0843}},
                             Lesson{"defrost-control", false, 13.8, {0.4882, 0.2403, 0.1273, 0.1442}},
                             Lesson{"disconnect", false, 28.4, {0.2871, 0.4305, 0.1716, 0.1108}},
                             Lesson{"fan-blade", false, 24.6, {0.5036, 0.2753, 0.1013, 0.1198}},
                             Lesson{"fan-motor", false, 15.9, {0.26, 0.3614, 0.3187, 0.0599}},
                             Lesson{"filter-drier", false, 19.1, {0.2876, 0.3094, 0.2759, 0.1271}},
                             Lesson{"fins", false, 20.4, {0.378, 0.3069, 0.2059, 0.1092}},
                             Lesson{"line-insulation", false, 8.56, {0.304, 0.3505, 0.2095, 0.136}},
                             Lesson{"outdoor-coil", false, 21.1, {0.3698, 0.3942, 0.1273, 0.1087}},
                             Lesson{"outdoor-coil", true, 6.49, {0.1355, 0.5845, 0.2204, 0.0596}},
                             Lesson{"outdoor-metering", false, 23.5, {0.5628, 0.2532, 0.1227, 0.0613}},
                             Lesson{"overcurrent-device", false, 42.2, {0.6698, 0.199, 0.0875, 0.0437}},
                             Lesson{"pad", false, 31.4, {0.369, 0.3603, 0.2039, 0.0668}},
                             Lesson{"reversing-valve", false, 26.0, {0.4248, 0.3802, 0.13, 0.065}},
                             Lesson{"run-capacitor", false, 11.9, {0.3287, 0.3181, 0.2378, 0.1154}},
                             Lesson{"service-valves", false, 30.6, {0.2559, 0.4116, 0.267, 0.0655}},
                             Lesson{"start-device", false, 12.6, {0.3186, 0.4464, 0.1588, 0.0762}},
                             Lesson{"suction-accumulator", false, 15.8, {0.1685, 0.2804, 0.4063, 0.1448}},
                             Lesson{"switches-and-tubing", false, 27.5, {0.3549, 0.4837, 0.1085, 0.0529}},
                             Lesson{"whip", false, 21.3, {0.2542, 0.4483, 0.2022, 0.0953}}};

constexpr int monthsBefore = 24; ///< the last day
constexpr int shortestRecord = 5; ///< years

} // namespace

std::optional<Date> lessonsLearntOn(int years, Date lastDay)
{
    if (years < shortestRecord)
        return std::nullopt;
    return addMonths(lastDay, -monthsBefore);
}

std::string lessonsPatch(Date learntOn)
{
    nlohmann::ordered_json kinds = nlohmann::ordered_json::object();
    for (const Lesson& lesson : lessons) {
        nlohmann::ordered_json& kind = kinds[lesson.partKind];
        kind[lesson.soils ? "soiling_life_years" : "median_life_years"] = lesson.medianLifeYears;
        kind[lesson.soils ? "soiling_grade_shares" : "grade_shares"] = lesson.gradeShares;
        kind[lesson.soils ? "soiling_learned_on" : "learned_on"] = isoText(learntOn);
    }
    return nlohmann::ordered_json{{"outlook", {{"part_kinds", kinds}}}}.dump();
}

void useLessons(OutlookModel& model, const Catalogue& catalogue)
{
    for (const Lesson& lesson : lessons) {
        if (const PartKind* kind = catalogue.partKind(lesson.partKind))
            model.setRates(lesson.partKind, lesson.soils,
                           ratesFromLife(lesson.medianLifeYears, lesson.gradeShares, zonesOfLife(*kind, lesson.soils),
                                         model.pace()));
    }
}

} // namespace padside
