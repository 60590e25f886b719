// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/unit.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace padside {

namespace {

using Spelling = std::string_view;
using enum QuantityKind;

// Keyboards differ: the masculine ordinal for the degree sign, Greek mu for the micro sign, the ohm sign for omega.
constexpr std::array<Spelling, 7> celsius{"C", "degC", "°C", "deg C", "celsius", "\u00baC", "\u2103"};
constexpr std::array<Spelling, 7> fahrenheit{"F", "degF", "°F", "deg F", "fahrenheit", "\u00baF", "\u2109"};
constexpr std::array<Spelling, 1> kelvin{"kelvin"};
constexpr std::array<Spelling, 3> celsiusStep{"C", "°C", "degC"};
constexpr std::array<Spelling, 4> fahrenheitStep{"F", "°F", "degF", "F deg"};
constexpr std::array<Spelling, 3> psig{"psi", "psi g", "lb/in2"};
constexpr std::array<Spelling, 2> barg{"bar", "bar g"};
constexpr std::array<Spelling, 2> kpag{"kPa", "kPa g"};
constexpr std::array<Spelling, 5> mpag{"MPa", "MPa g", "mpa", "N/mm2", "N/mm²"}; // a stress is one too
constexpr std::array<Spelling, 2> pag{"Pa", "Pa g"};
constexpr std::array<Spelling, 4> inwc{"in.w.c.", "inwc", "in wc", "inH2O"};
constexpr std::array<Spelling, 2> bara{"bar", "bar a"};
constexpr std::array<Spelling, 2> kpaa{"kPa", "kPa a"};
constexpr std::array<Spelling, 1> psia{"psi a"};
constexpr std::array<Spelling, 3> mpaa{"MPa", "MPa a", "mpa"};
constexpr std::array<Spelling, 5> inch{"\"", "inch", "inches", "in.", "″"};
constexpr std::array<Spelling, 3> foot{"'", "feet", "foot"};
constexpr std::array<Spelling, 4> micrometre{"um", "micron", "microns", "\u03bcm"};
constexpr std::array<Spelling, 2> pound{"lbs", "pound"};
constexpr std::array<Spelling, 1> ampere{"amp"};
constexpr std::array<Spelling, 2> volt{"volt", "volts"};
constexpr std::array<Spelling, 3> ohm{"ohm", "ohms", "\u2126"};
constexpr std::array<Spelling, 4> kiloohm{"kohm", "k ohm", "kΩ", "k\u2126"};
constexpr std::array<Spelling, 5> megohm{"megohm", "megohms", "Mohm", "meg", "M\u2126"};
constexpr std::array<Spelling, 4> gigaohm{"gigohm", "Gohm", "gig", "G\u2126"};
constexpr std::array<Spelling, 4> microfarad{"uF", "mfd", "µF", "\u03bcF"};
constexpr std::array<Spelling, 3> minute{"min", "mins", "minutes"};
constexpr std::array<Spelling, 3> hour{"hr", "hours", "hour"};
constexpr std::array<Spelling, 2> second{"sec", "seconds"};
constexpr std::array<Spelling, 2> percent{"pct", "percent"};
constexpr std::array<Spelling, 2> cubicMetrePerHour{"m3/h", "m³/h"};

constexpr std::array temperatureUnits{MeasuringUnit{"degC", "°C", temperature, 1, 273.15, 1, celsius},
                                      MeasuringUnit{"degF", "°F", temperature, 5.0 / 9, 459.67 * 5 / 9, 0, fahrenheit},
                                      MeasuringUnit{"K", "K", temperature, 1, 0, 1, kelvin}};
constexpr std::array differenceUnits{MeasuringUnit{"dK", "K", temperatureDifference, 1, 0, 1, celsiusStep},
                                     MeasuringUnit{"dF", "°F", temperatureDifference, 5.0 / 9, 0, 0, fahrenheitStep}};
constexpr std::array gaugeUnits{MeasuringUnit{"kPag", "kPa", gaugePressure, 1e3, 0, 0, kpag},
                                MeasuringUnit{"psig", "psig", gaugePressure, 6894.757293168, 0, 1, psig},
                                MeasuringUnit{"barg", "bar", gaugePressure, 1e5, 0, 2, barg},
                                MeasuringUnit{"MPag", "MPa", gaugePressure, 1e6, 0, 3, mpag},
                                MeasuringUnit{"Pag", "Pa", gaugePressure, 1, 0, 0, pag},
                                MeasuringUnit{"inwc", "in. w.c.", gaugePressure, 249.08891, 0, 2, inwc}};
constexpr std::array absoluteUnits{MeasuringUnit{"kPa", "kPa abs.", absolutePressure, 1e3, 0, 0, kpaa},
                                   MeasuringUnit{"psia", "psia", absolutePressure, 6894.757293168, 0, 1, psia},
                                   MeasuringUnit{"bara", "bar abs.", absolutePressure, 1e5, 0, 2, bara},
                                   MeasuringUnit{"MPaa", "MPa abs.", absolutePressure, 1e6, 0, 3, mpaa}};
constexpr std::array lengthUnits{
    MeasuringUnit{"mm", "mm", length, 1e-3, 0, 2, {}},     MeasuringUnit{"in", "in", length, 0.0254, 0, 3, inch},
    MeasuringUnit{"ft", "ft", length, 0.3048, 0, 1, foot}, MeasuringUnit{"cm", "cm", length, 1e-2, 0, 1, {}},
    MeasuringUnit{"m", "m", length, 1, 0, 2, {}},          MeasuringUnit{"um", "µm", length, 1e-6, 0, 0, micrometre}};
constexpr std::array massUnits{
    MeasuringUnit{"kg", "kg", mass, 1, 0, 2, {}}, MeasuringUnit{"lb", "lb", mass, 0.45359237, 0, 2, pound},
    MeasuringUnit{"oz", "oz", mass, 0.028349523125, 0, 1, {}}, MeasuringUnit{"g", "g", mass, 1e-3, 0, 0, {}}};
constexpr std::array currentUnits{MeasuringUnit{"A", "A", current, 1, 0, 2, ampere},
                                  MeasuringUnit{"mA", "mA", current, 1e-3, 0, 0, {}}};
constexpr std::array voltageUnits{MeasuringUnit{"V", "V", voltage, 1, 0, 1, volt},
                                  MeasuringUnit{"mV", "mV", voltage, 1e-3, 0, 0, {}}};
constexpr std::array resistanceUnits{MeasuringUnit{"ohm", "Ω", resistance, 1, 0, 1, ohm},
                                     MeasuringUnit{"kohm", "kΩ", resistance, 1e3, 0, 2, kiloohm},
                                     MeasuringUnit{"Mohm", "MΩ", resistance, 1e6, 0, 1, megohm},
                                     MeasuringUnit{"Gohm", "GΩ", resistance, 1e9, 0, 2, gigaohm}};
constexpr std::array capacitanceUnits{MeasuringUnit{"uF", "µF", capacitance, 1e-6, 0, 1, microfarad}};
constexpr std::array durationUnits{MeasuringUnit{"min", "min", duration, 60, 0, 1, minute},
                                   MeasuringUnit{"h", "h", duration, 3600, 0, 1, hour},
                                   MeasuringUnit{"s", "s", duration, 1, 0, 0, second}};
constexpr std::array ratioUnits{MeasuringUnit{"pct", "%", ratio, 0.01, 0, 1, percent}};
constexpr std::array airflowUnits{MeasuringUnit{"m3h", "m³/h", airflow, 1.0 / 3600, 0, 0, cubicMetrePerHour},
                                  MeasuringUnit{"cfm", "cfm", airflow, 0.3048 * 0.3048 * 0.3048 / 60, 0, 0, {}}};
constexpr std::array velocityUnits{MeasuringUnit{"mms", "mm/s", velocity, 1e-3, 0, 1, {}},
                                   MeasuringUnit{"ips", "in/s", velocity, 0.0254, 0, 2, {}}};
constexpr std::array powerUnits{MeasuringUnit{"kW", "kW", power, 1e3, 0, 2, {}},
                                MeasuringUnit{"W", "W", power, 1, 0, 0, {}},
                                MeasuringUnit{"Btuh", "Btu/h", power, 0.29307107017, 0, 0, {}}};
constexpr std::array countUnits{MeasuringUnit{"1", "", count, 1, 0, 1, {}}};

constexpr std::array allKinds{temperature,   temperatureDifference,
                              gaugePressure, absolutePressure,
                              length,        mass,
                              current,       voltage,
                              resistance,    capacitance,
                              duration,      ratio,
                              airflow,       velocity,
                              power,         count};

/// ASCII only, whatever the locale.
constexpr char lowerCase(char character)
{
    return character >= 'A' && character <= 'Z' ? static_cast<char>(character - 'A' + 'a') : character;
}

/// Without regard to case, but a typed "m" (milli) is never taken for a known "M" (mega): a thousand million apart.
bool sameIgnoringCase(std::string_view known, std::string_view spelling)
{
    if (known.starts_with('M') && spelling.starts_with('m'))
        return false;
    return std::ranges::equal(known, spelling, {}, lowerCase, lowerCase);
}

} // namespace

std::span<const MeasuringUnit> unitsOf(QuantityKind kind)
{
    switch (kind) {
    case temperature:
        return temperatureUnits;
    case temperatureDifference:
        return differenceUnits;
    case gaugePressure:
        return gaugeUnits;
    case absolutePressure:
        return absoluteUnits;
    case length:
        return lengthUnits;
    case mass:
        return massUnits;
    case current:
        return currentUnits;
    case voltage:
        return voltageUnits;
    case resistance:
        return resistanceUnits;
    case capacitance:
        return capacitanceUnits;
    case duration:
        return durationUnits;
    case ratio:
        return ratioUnits;
    case airflow:
        return airflowUnits;
    case velocity:
        return velocityUnits;
    case power:
        return powerUnits;
    case count:
        return countUnits;
    }
    return {};
}

const MeasuringUnit* unitByCode(std::string_view code)
{
    for (const QuantityKind kind : allKinds) {
        for (const MeasuringUnit& unit : unitsOf(kind)) {
            if (unit.code == code)
                return &unit;
        }
    }
    return nullptr;
}

const MeasuringUnit* unitBySpelling(std::string_view spelling, QuantityKind kind)
{
    // Exact first: "mV" and "MV" must not meet through their case.
    for (const MeasuringUnit& unit : unitsOf(kind)) {
        if (unit.code == spelling || unit.symbol == spelling || std::ranges::count(unit.otherSpellings, spelling) > 0)
            return &unit;
    }
    for (const MeasuringUnit& unit : unitsOf(kind)) {
        const auto same = [spelling](std::string_view known) { return sameIgnoringCase(known, spelling); };
        if (same(unit.code) || same(unit.symbol) || std::ranges::any_of(unit.otherSpellings, same))
            return &unit;
    }
    return nullptr;
}

double toSi(double typed, const MeasuringUnit& unit)
{
    return typed * unit.factor + unit.offset;
}

double fromSi(double si, const MeasuringUnit& unit)
{
    return (si - unit.offset) / unit.factor;
}

const MeasuringUnit& shownUnit(QuantityKind kind, UnitSystem system)
{
    const auto units = unitsOf(kind);
    if (system == UnitSystem::metric)
        return units.front();
    switch (kind) {
    case temperature:
    case temperatureDifference:
    case gaugePressure:
    case absolutePressure:
    case length:
    case mass:
    case airflow:
    case velocity:
        return units[1];
    case power:
        return units[2];
    case current:
    case voltage:
    case resistance:
    case capacitance:
    case duration:
    case ratio:
    case count:
        return units.front();
    }
    return units.front();
}

const MeasuringUnit& fittingUnit(QuantityKind kind, UnitSystem system, double si)
{
    const MeasuringUnit* fitting = &shownUnit(kind, system);
    if (kind != resistance)
        return *fitting;
    for (const MeasuringUnit& unit : unitsOf(kind)) { // from Ω upwards
        if (si >= unit.factor)
            fitting = &unit;
    }
    return *fitting;
}

} // namespace padside
