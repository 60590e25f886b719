// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/coat_check.h"

#include "core/quantity/amounts.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using std::chrono::sys_seconds;

constexpr int minutesInDay = 24 * 60;
constexpr double longestDryTimeS = 1000 * 3600.0;
constexpr double coldestSurfaceK = 213.15;
constexpr double hottestSurfaceK = 393.15;
constexpr double doublingK = 10;
constexpr const char* marginSource = "ISO 8502-4";
constexpr const char* usualSource = "usual on data sheets, beside ISO 8502-4";
constexpr const char* practice = "common practice, no source";

Argument differenceOf(double kelvin)
{
    return Amount{kelvin, QuantityKind::temperatureDifference};
}

Argument shareOf(double share)
{
    return Amount{share, QuantityKind::ratio};
}

/// "22:00".
std::string clockText(int minuteOfDay)
{
    constexpr int ten = 10;
    const auto two = [](int value) { return std::string{char('0' + value / ten), char('0' + value % ten)}; };
    return two(minuteOfDay / 60) + ":" + two(minuteOfDay % 60);
}

minutes offsetAt(const CoatDay& day, sys_seconds moment)
{
    return day.offsetAt ? day.offsetAt(moment) : day.now.offset;
}

/// The moment at which the local clock shows `local`, a local time written as if it were UTC.
Instant whenClockShows(const CoatDay& day, sys_seconds local)
{
    minutes offset = offsetAt(day, local - day.now.offset);
    offset = offsetAt(day, local - offset); // the first guess may lie on the other side of a change of the clock
    return Instant{local - offset, offset};
}

/// When the unit runs next by its usual hours: now if it is within them.
Instant nextRun(const CoatDay& day, const RunHours& hours)
{
    const sys_seconds local = day.now.utc + day.now.offset;
    const auto midnight = std::chrono::floor<std::chrono::days>(local);
    const auto minute = static_cast<int>(std::chrono::floor<minutes>(local - midnight).count());
    const bool within = hours.fromMinute < hours.toMinute ? minute >= hours.fromMinute && minute < hours.toMinute
                                                          : minute >= hours.fromMinute || minute < hours.toMinute;
    if (within)
        return day.now;
    const auto start = midnight + minutes(hours.fromMinute);
    return whenClockShows(day, start > local ? sys_seconds(start) : sys_seconds(start + std::chrono::days(1)));
}

/// Rounded up to whole minutes.
Instant later(const CoatDay& day, double spanS)
{
    const sys_seconds exact = day.now.utc + seconds(static_cast<std::int64_t>(std::ceil(spanS)));
    const sys_seconds whole = std::chrono::ceil<minutes>(exact);
    return Instant{whole, offsetAt(day, whole)};
}

std::optional<Problem> misfit(const CoatDay& day)
{
    const auto bad = [](std::string pattern, std::vector<Argument> arguments = {}) {
        return Problem{ProblemKind::badInput, Sentence{std::move(pattern), std::move(arguments)}};
    };
    if (!(day.surfaceTemperatureK >= coldestSurfaceK && day.surfaceTemperatureK <= hottestSurfaceK))
        return bad(
            PADSIDE_SAY("The surface's temperature must lie between {0} and {1}. Look at the value and its unit."),
            {temperatureAmount(coldestSurfaceK), temperatureAmount(hottestSurfaceK)});
    const CoatProduct& product = day.product;
    if (product.dryTimeS && !(*product.dryTimeS > 0 && *product.dryTimeS <= longestDryTimeS))
        return bad(PADSIDE_SAY("The product's drying time must be above 0 and at most 1000 hours."));
    if (product.highestHumidity && !(*product.highestHumidity > 0 && *product.highestHumidity <= 1))
        return bad(PADSIDE_SAY("The product's highest humidity must lie between 0 and 100 %."));
    const auto isTemperature = [](double kelvin) { return kelvin >= coldestSurfaceK && kelvin <= hottestSurfaceK; };
    if (!isTemperature(product.referenceTemperatureK)
        || (product.lowestTemperatureK && !isTemperature(*product.lowestTemperatureK)))
        return bad(PADSIDE_SAY("The product's temperatures must lie between {0} and {1}."),
                   {temperatureAmount(coldestSurfaceK), temperatureAmount(hottestSurfaceK)});
    const auto* hours = std::get_if<RunHours>(&day.runs);
    const auto isMinute = [](int minute) { return minute >= 0 && minute < minutesInDay; };
    if (hours != nullptr && !(isMinute(hours->fromMinute) && isMinute(hours->toMinute)))
        return bad(PADSIDE_SAY("The hours the unit runs must be times of day, from 00:00 to 23:59."));
    return std::nullopt;
}

void judgeAir(const CoatDay& day, CoatAnswer& answer)
{
    if (answer.dewPointMarginK < 0) {
        answer.reasons.push_back({CoatReasonKind::nearDewPoint,
                                  true,
                                  {PADSIDE_SAY("The surface is {0} below the dew point of {1}: it sweats."),
                                   {differenceOf(-answer.dewPointMarginK), temperatureAmount(day.air.dewPointK)}},
                                  marginSource});
    } else if (answer.dewPointMarginK < leastDewPointMarginK) {
        answer.reasons.push_back(
            {CoatReasonKind::nearDewPoint,
             true,
             {PADSIDE_SAY("The surface is only {0} above the dew point of {1}; it must be at least {2} above it."),
              {differenceOf(answer.dewPointMarginK), temperatureAmount(day.air.dewPointK),
               differenceOf(leastDewPointMarginK)}},
             marginSource});
    }
    const double highest = day.product.highestHumidity.value_or(usualHighestHumidity);
    if (day.air.relativeHumidity > highest) {
        answer.reasons.push_back({CoatReasonKind::humid,
                                  true,
                                  {PADSIDE_SAY("The air is too humid: {0}, at most {1}."),
                                   {shareOf(day.air.relativeHumidity), shareOf(highest)}},
                                  day.product.highestHumidity ? day.product.source : usualSource});
    }
}

void judgeSurface(const CoatDay& day, CoatAnswer& answer)
{
    if (day.wetness == Wetness::wet || day.wetness == Wetness::damp) {
        answer.reasons.push_back(
            {CoatReasonKind::wet,
             true,
             {PADSIDE_SAY("It was found {0}: a surface is coated dry."), {Word{std::string(wordOf(*day.wetness))}}},
             practice});
    }
    const auto& lowest = day.product.lowestTemperatureK;
    if (lowest && answer.dryingTemperatureK < *lowest) {
        answer.reasons.push_back({CoatReasonKind::cold,
                                  true,
                                  {PADSIDE_SAY("Too cold for the product: {0}, at least {1}."),
                                   {temperatureAmount(answer.dryingTemperatureK), temperatureAmount(*lowest)}},
                                  day.product.source});
    }
    if (!day.wetness) {
        answer.reasons.push_back({CoatReasonKind::wetnessNotRecorded,
                                  false,
                                  {PADSIDE_SAY("Whether it is dry is not recorded: only if it is dry all over."), {}},
                                  practice});
    }
}

void judgeRunning(const CoatDay& day, CoatAnswer& answer)
{
    if (std::holds_alternative<OffUntilPutOn>(day.runs))
        return;
    const auto* hours = std::get_if<RunHours>(&day.runs);
    if (hours == nullptr) {
        answer.reasons.push_back(
            {CoatReasonKind::runHoursUnknown,
             false,
             {PADSIDE_SAY("When the unit runs again is not known: only if it is kept off until the "
                          "coating is dry."),
              {}},
             practice});
        return;
    }
    answer.runsAgain = nextRun(day, *hours);
    if (!answer.keepOffUntil) {
        answer.reasons.push_back(
            {CoatReasonKind::dryTimeUnknown,
             false,
             {PADSIDE_SAY("How long it takes to dry is not known: only if the unit is kept off until "
                          "the data sheet's time has passed."),
              {}},
             practice});
        return;
    }
    if (answer.keepOffUntil->utc <= answer.runsAgain->utc)
        return;
    answer.reasons.push_back(
        {CoatReasonKind::runsBeforeDry,
         false,
         {PADSIDE_SAY(
              "It would still be wet when the unit runs (usually {0} to {1}): only if the unit is kept off until "
              "then."),
          {clockText(hours->fromMinute), clockText(hours->toMinute)}},
         practice});
}

} // namespace

CoatProduct productOf(const Coating& coating)
{
    return CoatProduct{coating.dryTimeS, coating.referenceTemperatureK, coating.lowestTemperatureK,
                       coating.highestHumidity, coating.source};
}

double dryTimeAtS(double dryTimeS, double referenceTemperatureK, double temperatureK)
{
    return dryTimeS * std::exp2((referenceTemperatureK - temperatureK) / doublingK);
}

Result<CoatAnswer> coatCheck(const CoatDay& day)
{
    if (auto problem = misfit(day))
        return tl::unexpected(std::move(*problem));
    CoatAnswer answer;
    answer.dewPointMarginK = day.surfaceTemperatureK - day.air.dewPointK;
    answer.dryingTemperatureK = std::min(day.surfaceTemperatureK, day.air.dryBulbK);
    if (day.product.dryTimeS) {
        answer.dryTimeS
            = dryTimeAtS(*day.product.dryTimeS, day.product.referenceTemperatureK, answer.dryingTemperatureK);
        answer.keepOffUntil = later(day, *answer.dryTimeS);
    }
    judgeAir(day, answer);
    judgeSurface(day, answer);
    judgeRunning(day, answer);
    std::stable_partition(answer.reasons.begin(), answer.reasons.end(),
                          [](const CoatReason& reason) { return reason.forbids; });
    if (answer.reasons.empty())
        answer.verdict = CoatVerdict::mayCoat;
    else
        answer.verdict = answer.reasons.front().forbids ? CoatVerdict::mayNotCoat : CoatVerdict::mayCoatIf;
    return answer;
}

Sentence coatConditions(const CoatDay& day, const CoatAnswer& answer)
{
    std::vector<Argument> arguments{temperatureAmount(day.air.dryBulbK), shareOf(day.air.relativeHumidity),
                                    temperatureAmount(day.surfaceTemperatureK), temperatureAmount(day.air.dewPointK),
                                    differenceOf(std::abs(answer.dewPointMarginK))};
    if (answer.dewPointMarginK < 0)
        return {PADSIDE_SAY("Air {0}, {1}; surface {2}, {4} below the dew point of {3}."), std::move(arguments)};
    return {PADSIDE_SAY("Air {0}, {1}; surface {2}, {4} above the dew point of {3}."), std::move(arguments)};
}

} // namespace padside
