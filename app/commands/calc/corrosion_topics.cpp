// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/topics.h"
#include "core/corrosion/corrosivity.h"
#include "core/corrosion/inspection_interval.h"
#include "core/corrosion/long_term_loss.h"
#include "core/corrosion/required_wall.h"
#include "core/corrosion/rust_grade.h"
#include "core/corrosion/weather_year.h"
#include "core/exchange/text_file.h"
#include "core/exchange/wall_file.h"
#include "core/exchange/weather_file.h"
#include "core/exchange/weather_words.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

using Json = nlohmann::ordered_json;

constexpr double zeroCelsiusK = 273.15;

template <typename T> Json numberOrNull(const std::optional<T>& value)
{
    return value ? Json(*value) : Json(nullptr);
}

Json saidOf(const std::vector<Sentence>& sentences)
{
    auto said = Json::array();
    for (const Sentence& sentence : sentences)
        said.push_back(say(sentence));
    return said;
}

/// What is typed behind the options of a topic, kept until the topic answers.
template <typename Typed> std::shared_ptr<Typed> typedOptions()
{
    return std::make_shared<Typed>();
}

struct CorrosivityTyped
{
    std::string temperature, humidity, sulphurDioxide, chloride;
};

/// steel, zinc, copper {rate_um_per_a, category}, aluminium {rate_g_per_m2a, category}, extrapolated, outside.
Json corrosivityAnswer(const CorrosivityTyped& typed)
{
    AnnualAir air;
    air.temperatureK = typedSi("--temperature", typed.temperature, QuantityKind::temperature);
    air.relativeHumidity = typedSi("--rh", typed.humidity, QuantityKind::ratio);
    air.sulphurDioxide = typedNumber("--so2", typed.sulphurDioxide);
    air.chloride = typedNumber("--chloride", typed.chloride);
    const Corrosivity corrosivity = orThrow(corrosivityOf(air));
    Json answer;
    for (const FirstYearLoss& loss : corrosivity.metals) {
        const char* const key = loss.metal == Metal::aluminium ? "rate_g_per_m2a" : "rate_um_per_a";
        answer[std::string(codeOf(loss.metal))] = {{key, loss.loss}, {"category", codeOf(loss.category)}};
    }
    answer["extrapolated"] = corrosivity.isExtrapolated();
    answer["outside"] = Json::array();
    for (const AirInput input : corrosivity.outside)
        answer["outside"].push_back(codeOf(input));
    return answer;
}

void addCorrosivityTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = typedOptions<CorrosivityTyped>();
    CLI::App* topic = addTopic(calc, chosen, "corrosivity",
                               "First-year loss and corrosivity category of four metals (ISO 9223), means of a year",
                               [typed] { return corrosivityAnswer(*typed); });
    topic->add_option("--temperature", typed->temperature, "mean temperature, with unit (10C)")->required();
    topic->add_option("--rh", typed->humidity, "mean relative humidity (75%)")->required();
    topic->add_option("--so2", typed->sulphurDioxide, "deposition of sulphur dioxide, mg/(m2 d)")->required();
    topic->add_option("--chloride", typed->chloride, "deposition of chloride, mg/(m2 d)")->required();
}

struct WeatherTyped
{
    std::string file;
    std::string surface = "8C";
};

/// rows (used), skipped, gaps, mean_temperature_C, mean_rh_percent, wet_hours, …, faults (the first of the rows not
/// used), notes.
Json weatherAnswer(const WeatherTyped& typed)
{
    const double surfaceK = typedSi("--surface", typed.surface, QuantityKind::temperature);
    const WeatherFile file = orThrow(readWeatherFile(orThrow(readTextFile(typed.file)), typed.file));
    const WeatherYear year = orThrow(digestWeather(file.steps, surfaceK));
    Json answer{{"rows", file.steps.size()},
                {"skipped", file.skipped},
                {"gaps", file.gaps},
                {"hours", year.hours},
                {"mean_temperature_C", year.meanTemperatureK - zeroCelsiusK},
                {"mean_rh_percent", year.meanHumidity * 100},
                {"wet_hours", year.wetHours},
                {"wet_hours_per_a", year.wetHoursPerYear},
                {"wetness_class", "t" + std::to_string(year.wetnessClass)},
                {"surface_C", surfaceK - zeroCelsiusK},
                {"sweating_hours", year.sweatingHours},
                {"sweating_percent", year.sweatingShare * 100}};
    if (!file.place.empty())
        answer["place"] = file.place;
    answer["notes"] = saidOf(weatherReservations(file, year, 0));
    answer["faults"] = Json::array();
    for (const WeatherFault& fault : file.faults)
        answer["faults"].push_back(say(fault.what));
    return answer;
}

void addWeatherTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = typedOptions<WeatherTyped>();
    CLI::App* topic = addTopic(calc, chosen, "weather",
                               "Means, wet hours (ISO 9223) and sweating hours of a weather file (EPW, or CSV with "
                               "columns like time, temperature_C, rh_percent)",
                               [typed] { return weatherAnswer(*typed); });
    topic->add_option("file", typed->file, "EPW or CSV")->required()->type_name("FILE");
    topic->add_option("--surface", typed->surface, "temperature of a line or shell that may sweat, with unit")
        ->capture_default_str();
}

struct LossTyped
{
    std::string metal, rate, years;
    bool upper = false;
};

/// loss_um, exponent.
Json lossAnswer(const LossTyped& typed)
{
    constexpr double umInAMetre = 1e6;
    const Metal metal = *fromCode<Metal>(typed.metal); // CLI11 let no other through
    const double exponent = exponentOf(metal, typed.upper ? LossExponent::upper : LossExponent::mean);
    const double rateM = typedSi("--rate", typed.rate, QuantityKind::length);
    const double years = typedNumber("--years", typed.years);
    return {{"loss_um", orThrow(longTermLoss(rateM * umInAMetre, exponent, years))}, {"exponent", exponent}};
}

void addLossTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = typedOptions<LossTyped>();
    CLI::App* topic = addTopic(calc, chosen, "loss", "Loss of metal after years from that of the first (ISO 9224)",
                               [typed] { return lossAnswer(*typed); });
    topic->add_option("--metal", typed->metal, "steel, zinc, copper or aluminium")
        ->required()
        ->check(CLI::IsMember({"steel", "zinc", "copper", "aluminium"}));
    topic->add_option("--rate", typed->rate, "loss in the first year, with unit (50um)")->required();
    topic->add_option("--years", typed->years, "how long")->required();
    topic->add_flag("--upper", typed->upper, "the exponent two standard deviations above the mean");
}

/// iso4628_3, astm_d610.
void addRustGradeTopic(CLI::App& calc, Command& chosen)
{
    const auto percent = typedOptions<std::string>();
    CLI::App* topic
        = addTopic(calc, chosen, "rust-grade",
                   "Grades of a rusted area: ISO 4628-3 (smallest nominal area not below it), ASTM D610", [percent] {
                       const RustGrades grades = orThrow(rustGradesOf(typedNumber("--percent", *percent)));
                       return Json{{"iso4628_3", "Ri" + std::to_string(grades.ri)}, {"astm_d610", grades.d610}};
                   });
    topic->add_option("--percent", *percent, "share of the surface that is rusted, in %")->required();
}

struct RequiredWallTyped
{
    std::string pressure, outside, inside, stress;
    std::string efficiency = "1";
};

/// shell_mm, head_mm, least_mm (with the least wall of UG-16), cautions.
Json requiredWallAnswer(const RequiredWallTyped& typed)
{
    constexpr double mmInAMetre = 1e3;
    VesselLoad load;
    load.pressurePa = typedSi("--pressure", typed.pressure, QuantityKind::gaugePressure);
    load.stressPa = typedSi("--stress", typed.stress, QuantityKind::gaugePressure);
    load.efficiency = typedNumber("--efficiency", typed.efficiency);
    const bool fromOutside = typed.inside.empty();
    const double diameterM = fromOutside ? typedSi("--outside-diameter", typed.outside, QuantityKind::length)
                                         : typedSi("--inside-diameter", typed.inside, QuantityKind::length);
    const RequiredWall wall
        = orThrow(requiredWall(load, diameterM, fromOutside ? DiameterOf::outside : DiameterOf::inside));
    return {{"shell_mm", wall.shellM * mmInAMetre},
            {"head_mm", wall.headM * mmInAMetre},
            {"least_mm", wall.mostM * mmInAMetre},
            {"cautions", saidOf(wall.cautions)}};
}

void addRequiredWallTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = typedOptions<RequiredWallTyped>();
    CLI::App* topic = addTopic(calc, chosen, "required-wall",
                               "Wall that a cylinder and a 2:1 head need (ASME VIII-1, UG-27 and UG-32)",
                               [typed] { return requiredWallAnswer(*typed); });
    topic->add_option("--pressure", typed->pressure, "inside, above the air around, with unit (2.21MPa)")->required();
    auto* outside = topic->add_option("--outside-diameter", typed->outside, "with unit (127mm)");
    auto* inside = topic->add_option("--inside-diameter", typed->inside, "when rusted, with unit");
    inside->excludes(outside);
    topic->add_option("--stress", typed->stress, "allowable stress of the steel, with unit (118MPa)")->required();
    topic->add_option("--efficiency", typed->efficiency, "of the welded joint, above 0 to 1")->capture_default_str();
}

struct WallTyped
{
    std::string file, required;
    std::string gaugeError = "0.05mm";
};

Json perYear(const std::optional<TwoPointRate>& rate)
{
    return rate ? Json(rate->mPerYear * 1e3) : Json(nullptr);
}

/// long_rate, short_rate (mm/a), remaining_life_a (null: no loss could be measured), at_least_a, next_interval_a,
/// next_on, says.
Json wallAnswer(const WallTyped& typed)
{
    const WallRule rule{typedSi("--required", typed.required, QuantityKind::length),
                        typedSi("--gauge-error", typed.gaugeError, QuantityKind::length)};
    const WallFile file = orThrow(readWallFile(orThrow(readTextFile(typed.file)), typed.file));
    const WallOutlook outlook = orThrow(wallOutlook(file.readings, rule));
    return {{"long_rate", perYear(outlook.longTerm)},
            {"short_rate", perYear(outlook.shortTerm)},
            {"rate_error", outlook.longTerm ? Json(outlook.longTerm->errorMPerYear * 1e3) : Json(nullptr)},
            {"remaining_life_a", numberOrNull(outlook.remainingYears)},
            {"at_least_a", numberOrNull(outlook.atLeastYears)},
            {"next_interval_a", outlook.nextIntervalYears},
            {"next_on", isoText(dayAfter(file.last, outlook.nextIntervalYears))},
            {"says", say(outlook.said)}};
}

void addWallTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = typedOptions<WallTyped>();
    CLI::App* topic = addTopic(calc, chosen, "wall",
                               "Rates, remaining life and next interval from wall readings (columns date, "
                               "thickness_mm; rules of API 510)",
                               [typed] { return wallAnswer(*typed); });
    topic->add_option("file", typed->file, "comma-separated values with a line of column names")
        ->required()
        ->type_name("FILE.csv");
    topic->add_option("--required", typed->required, "wall that must be left, with unit (2.0mm)")->required();
    topic->add_option("--gauge-error", typed->gaugeError, "standard error of one reading, with unit")
        ->capture_default_str();
}

} // namespace

void addCorrosionTopics(CLI::App& calc, Command& chosen)
{
    addCorrosivityTopic(calc, chosen);
    addWeatherTopic(calc, chosen);
    addLossTopic(calc, chosen);
    addRustGradeTopic(calc, chosen);
    addRequiredWallTopic(calc, chosen);
    addWallTopic(calc, chosen);
}

} // namespace padside
