// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/site_altitude.h"
#include "app/commands/calc/topics.h"
#include "core/catalogue/catalogue.h"
#include "core/quantity/unit.h"
#include "core/refrigerant/saturation.h"
#include "core/refrigerant/superheat.h"
#include "core/refrigerant/target_superheat.h"
#include "resources/resources.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

/// What was typed behind each option; empty: not given.
struct TypedRefrigerant
{
    std::string refrigerant;
    std::string temperature;
    std::string gauge;
    std::string pressure;
    std::string line;
    std::string wetBulb;
    std::string outdoor;
    std::string altitude;
};

Refrigerant typedRefrigerant(const std::string& typed)
{
    const auto catalogue = orThrow(Catalogue::load(shippedCatalogue()));
    if (const Refrigerant* found = catalogue.refrigerant(typed))
        return *found;
    std::string known;
    for (const Refrigerant& one : catalogue.refrigerants())
        known += (known.empty() ? "" : ", ") + one.code;
    throw StoreError(Problem{ProblemKind::badInput,
                             Sentence{"--refrigerant: \"{0}\" is not in the catalogue. It has {1}.", {typed, known}}});
}

/// refrigerant, composition, safety_class, gwp and the report it stands in.
nlohmann::ordered_json aboutRefrigerant(const Refrigerant& refrigerant)
{
    const WarmingPotential& warming = refrigerant.warmingPotentials.front();
    return {{"refrigerant", refrigerant.code},
            {"composition", refrigerant.composition},
            {"safety_class", std::string(codeOf(refrigerant.safetyClass))},
            {"gwp", warming.value},
            {"gwp_report", warming.report}};
}

double gaugeOf(double absolutePa, double stationPa)
{
    return (absolutePa - stationPa) / 1e3;
}

/// bubble_kPa and dew_kPa of a temperature, or bubble_C and dew_C of a pressure.
nlohmann::ordered_json saturationAnswer(const TypedRefrigerant& typed)
{
    const Refrigerant refrigerant = typedRefrigerant(typed.refrigerant);
    const double stationPa = typedStationPressurePa(typed.altitude);
    nlohmann::ordered_json answer = aboutRefrigerant(refrigerant);
    answer["station_pressure_Pa"] = stationPa;
    if (!typed.temperature.empty()) {
        const double temperatureK = typedSi("--temperature", typed.temperature, QuantityKind::temperature);
        const double bubblePa = orThrow(bubblePressurePa(refrigerant, temperatureK));
        const double dewPa = orThrow(dewPressurePa(refrigerant, temperatureK));
        answer["temperature_C"] = inCelsius(temperatureK);
        answer["bubble_kPa"] = bubblePa / 1e3;
        answer["dew_kPa"] = dewPa / 1e3;
        answer["bubble_gauge_kPa"] = gaugeOf(bubblePa, stationPa);
        answer["dew_gauge_kPa"] = gaugeOf(dewPa, stationPa);
    } else {
        const double absolutePa = typed.gauge.empty()
            ? typedSi("--pressure", typed.pressure, QuantityKind::absolutePressure)
            : orThrow(absolutePressurePa(typedSi("--gauge", typed.gauge, QuantityKind::gaugePressure), stationPa));
        answer["absolute_kPa"] = absolutePa / 1e3;
        answer["bubble_C"] = inCelsius(orThrow(bubbleTemperatureK(refrigerant, absolutePa)));
        answer["dew_C"] = inCelsius(orThrow(dewTemperatureK(refrigerant, absolutePa)));
    }
    answer["source"] = refrigerant.curveSource;
    return answer;
}

/// `saturationKey` and `differenceKey` of a line, by superheat() or subcooling().
nlohmann::ordered_json lineAnswer(const TypedRefrigerant& typed,
                                  Result<LineState> (*stateOf)(const Refrigerant&, const LineReading&),
                                  const char* saturationKey, const char* differenceKey)
{
    const Refrigerant refrigerant = typedRefrigerant(typed.refrigerant);
    const LineReading reading{typedSi("--gauge", typed.gauge, QuantityKind::gaugePressure),
                              typedSi("--line", typed.line, QuantityKind::temperature), typedAltitudeM(typed.altitude)};
    const LineState state = orThrow(stateOf(refrigerant, reading));
    return {{"refrigerant", refrigerant.code},
            {"line_C", inCelsius(reading.lineTemperatureK)},
            {"station_pressure_Pa", state.stationPressurePa},
            {"absolute_kPa", state.absolutePa / 1e3},
            {saturationKey, inCelsius(state.saturationK)},
            {differenceKey, state.differenceK}};
}

/// formula_F and chart_F (null where the chart gives none), steps of °F as their sources print them.
nlohmann::ordered_json targetAnswer(const TypedRefrigerant& typed)
{
    const TargetSuperheat target
        = orThrow(targetSuperheat(typedSi("--wet-bulb", typed.wetBulb, QuantityKind::temperature),
                                  typedSi("--outdoor", typed.outdoor, QuantityKind::temperature)));
    const MeasuringUnit& step = *unitByCode("dF");
    nlohmann::ordered_json answer{{"formula_F", fromSi(target.byFormulaK, step)}, {"chart_F", nullptr}};
    if (target.byChartK)
        answer["chart_F"] = fromSi(*target.byChartK, step);
    answer["formula_K"] = target.byFormulaK;
    answer["chart_K"] = target.byChartK ? nlohmann::ordered_json(*target.byChartK) : nullptr;
    if (target.byFormulaK < leastTargetK)
        answer["note"] = "A target below 5 °F is no valid test: change the load indoors or come back another day.";
    return answer;
}

void addRefrigerantOption(CLI::App& topic, std::string& typed)
{
    topic.add_option("--refrigerant", typed, "as on the nameplate: R-22, R-410A")->required()->type_name("NAME");
}

void addLineTopic(CLI::App& calc, Command& chosen, const std::string& name, const std::string& about,
                  Result<LineState> (*stateOf)(const Refrigerant&, const LineReading&), const char* saturationKey,
                  const char* differenceKey)
{
    const auto typed = std::make_shared<TypedRefrigerant>();
    CLI::App* topic = addTopic(calc, chosen, name, about, [typed, stateOf, saturationKey, differenceKey] {
        return lineAnswer(*typed, stateOf, saturationKey, differenceKey);
    });
    addRefrigerantOption(*topic, typed->refrigerant);
    topic->add_option("--gauge", typed->gauge, "pressure of the line above the air around")
        ->required()
        ->type_name("PRESSURE");
    topic->add_option("--line", typed->line, "temperature of the line at the same place")
        ->required()
        ->type_name("TEMPERATURE");
    addAltitudeOption(*topic, typed->altitude);
}

void addSaturationTopic(CLI::App& calc, Command& chosen)
{
    const auto typed = std::make_shared<TypedRefrigerant>();
    CLI::App* topic = addTopic(calc, chosen, "saturation",
                               "Saturation of a refrigerant at a temperature or a pressure; its safety "
                               "class and warming potential",
                               [typed] { return saturationAnswer(*typed); });
    addRefrigerantOption(*topic, typed->refrigerant);
    CLI::Option_group* at = topic->add_option_group("at", "where on the curves");
    at->add_option("--temperature", typed->temperature, "saturation temperature")->type_name("TEMPERATURE");
    at->add_option("--gauge", typed->gauge, "pressure above the air around")->type_name("PRESSURE");
    at->add_option("--pressure", typed->pressure, "absolute pressure")->type_name("PRESSURE");
    at->require_option(1);
    addAltitudeOption(*topic, typed->altitude);
}

} // namespace

void addRefrigerantTopics(CLI::App& calc, Command& chosen)
{
    addSaturationTopic(calc, chosen);
    addLineTopic(calc, chosen, "superheat", "Superheat of a suction line, from the dew temperature of its pressure",
                 &superheat, "dew_C", "superheat_K");
    addLineTopic(calc, chosen, "subcooling", "Subcooling of a liquid line, from the bubble temperature of its pressure",
                 &subcooling, "bubble_C", "subcooling_K");
    const auto typed = std::make_shared<TypedRefrigerant>();
    CLI::App* target = addTopic(calc, chosen, "target-superheat",
                                "Superheat that a fixed orifice should show, by formula and by the printed chart",
                                [typed] { return targetAnswer(*typed); });
    target->add_option("--wet-bulb", typed->wetBulb, "wet bulb of the return air")
        ->required()
        ->type_name("TEMPERATURE");
    target->add_option("--outdoor", typed->outdoor, "dry bulb outdoors")->required()->type_name("TEMPERATURE");
}

} // namespace padside
