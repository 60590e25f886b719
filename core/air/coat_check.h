// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/air/moist_air.h"
#include "core/air/run_hours.h"
#include "core/catalogue/coating.h"
#include "core/quantity/date.h"
#include "core/quantity/problem.h"
#include "core/quantity/sentence.h"
#include "core/record/grade.h"

#include <chrono>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace padside {

/// A surface to be coated is at least this far above the dew point (ISO 8502-4).
inline constexpr double leastDewPointMarginK = 3;
/// The most humid air to coat in, unless the data sheet says otherwise (usual on data sheets beside the 3 K of
/// ISO 8502-4).
inline constexpr double usualHighestHumidity = 0.85;

/// What the product asks for; empty where it is not known.
struct CoatProduct
{
    std::optional<double> dryTimeS; ///< until it may get wet, at the reference temperature
    double referenceTemperatureK = 293.15;
    std::optional<double> lowestTemperatureK;
    std::optional<double> highestHumidity; ///< 0..1; empty: usualHighestHumidity
    std::string source; ///< of these figures
};

[[nodiscard]] CoatProduct productOf(const Coating& coating);

/// It stays off until somebody puts it on again.
struct OffUntilPutOn
{
    friend bool operator==(const OffUntilPutOn&, const OffUntilPutOn&) = default;
};

/// std::monostate: not known.
using RunPlan = std::variant<std::monostate, RunHours, OffUntilPutOn>;

struct CoatDay
{
    MoistAir air;
    double surfaceTemperatureK = 0;
    std::optional<Wetness> wetness; ///< as recorded; empty: not recorded
    CoatProduct product;
    Instant now;
    RunPlan runs;
    /// The offset of the local clock at a moment; empty: as now. Without it a change to or from summer time before the
    /// coating is dry is not seen.
    std::function<std::chrono::minutes(std::chrono::sys_seconds)> offsetAt;
};

enum class CoatReasonKind {
    nearDewPoint,
    humid,
    wet,
    wetnessNotRecorded,
    cold,
    dryTimeUnknown,
    runsBeforeDry,
    runHoursUnknown
};

/// Something that speaks against coating, or that must be seen to.
struct CoatReason
{
    CoatReasonKind kind = CoatReasonKind::nearDewPoint;
    bool forbids = true; ///< false: it may be coated if what the sentence says is seen to
    Sentence sentence;
    std::string source; ///< of the limit

    friend bool operator==(const CoatReason&, const CoatReason&) = default;
};

enum class CoatVerdict { mayCoat, mayCoatIf, mayNotCoat };

struct CoatAnswer
{
    CoatVerdict verdict = CoatVerdict::mayNotCoat;
    std::vector<CoatReason> reasons; ///< those that forbid first
    double dewPointMarginK = 0; ///< surface above dew point; below 0 it is wet
    double dryingTemperatureK = 0; ///< the colder of air and surface
    std::optional<double> dryTimeS; ///< at that temperature
    std::optional<Instant> keepOffUntil; ///< whole minutes, local clock as it will be then
    std::optional<Instant> runsAgain; ///< by the usual hours; now if it is within them
};

/// Time to dry at a temperature: doubling for each 10 K colder than the reference (common practice, no source; water-
/// based and moisture-cured products depart from it). Seconds; all arguments finite.
[[nodiscard]] double dryTimeAtS(double dryTimeS, double referenceTemperatureK, double temperatureK);

/// Whether a surface may be coated now, every reason against it, how long it takes to dry and until when the unit has
/// to stay off. A Problem: surface outside -60..120 °C, product figures that can't be (dry time not above 0 or beyond
/// 1000 h, humidity outside 0..1), run hours outside 0..1439.
[[nodiscard]] Result<CoatAnswer> coatCheck(const CoatDay& day);

/// The day's conditions in one sentence, to be kept with the work: air, humidity, surface, dew point, margin.
[[nodiscard]] Sentence coatConditions(const CoatDay& day, const CoatAnswer& answer);

} // namespace padside
