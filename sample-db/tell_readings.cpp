// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/rough_saturation.h"
#include "sample-db/unit_life.h"

#include <cmath>

namespace padside {

namespace {

constexpr double psi = 6894.757293168;

double kelvinOf(double fahrenheit)
{
    return (fahrenheit + 459.67) * 5 / 9;
}
double fahrenheitOf(double kelvin)
{
    return kelvin * 9 / 5 - 459.67;
}

/// Puts readings into the record, in the units this technician types.
class Gauge
{
public:
    explicit Gauge(Telling& telling)
        : m_telling(telling)
    {
    }

    void read(const std::string& kind, double si, const char* metricUnit, int metricDecimals, const char* customaryUnit,
              int customaryDecimals, const char* partKind = nullptr, const ZoneState* zone = nullptr)
    {
        auto reading = m_telling.entry<Reading, ReadingId>();
        reading.kind = kind;
        if (const Part* part = partKind ? m_telling.life.fitted(partKind) : nullptr)
            reading.partId = part->id;
        if (zone)
            reading.zoneId = zone->id;
        const bool metric = m_telling.metric();
        reading.value = typedMeasure(si, *unitByCode(metric ? metricUnit : customaryUnit),
                                     metric ? metricDecimals : customaryDecimals);
        m_telling.life.record.readings.push_back(std::move(reading));
    }

    void temperature(const std::string& kind, double fahrenheit, const char* partKind = nullptr)
    {
        read(kind, kelvinOf(fahrenheit), "degC", 1, "degF", 0, partKind);
    }

    void pressure(const std::string& kind, double psig)
    {
        // Thinner air on the hill: the gauge reads against it.
        const double thinner
            = 14.696 * (1 - std::pow(1 - 2.25577e-5 * m_telling.life.place->altitudeM, 5.25588)); // ICAO atmosphere
        read(kind, (psig + thinner) * psi, "barg", 1, "psig", 0);
    }

private:
    Telling& m_telling;
};

double dirtOf(const UnitLife& life)
{
    for (const ZoneState& zone : life.zones) {
        if (zone.nature->part == "outdoor-coil" && zone.nature->zone == "faces")
            return zone.decay - 1;
    }
    return 0;
}

/// With the unit cooling: pressures, line temperatures, air.
void readCircuit(Telling& telling, Gauge& gauge)
{
    UnitLife& life = telling.life;
    Dice& dice = telling.dice;
    const double outdoor = fahrenheitOf(*telling.visit.conditions.airTemperatureK);
    const double low = life.missingCharge;
    const bool fixedOrifice = life.record.unit.metering == Metering::fixedOrifice;
    const double evaporating = 41 - 26 * low + dice.bell();
    const double condensing = outdoor + 23 + 2.2 * dirtOf(life) - 14 * low + dice.bell();
    const double superheat = (fixedOrifice ? 14 : 10) + 70 * low + 1.2 * dice.bell();
    const double subcooling = std::max(0.5, 10 - 32 * low + 0.9 * dice.bell());
    const std::string& refrigerant = life.record.unit.refrigerant;
    gauge.pressure("suction-pressure", roughSaturationPsig(refrigerant, evaporating));
    gauge.temperature("suction-line-temperature", evaporating + superheat);
    gauge.pressure("liquid-pressure", roughSaturationPsig(refrigerant, condensing));
    gauge.temperature("liquid-line-temperature", condensing - subcooling);
    const double returned = 74 + 1.5 * dice.bell();
    gauge.temperature("return-dry-bulb", returned);
    gauge.temperature("return-wet-bulb", returned - 11 + dice.bell());
    gauge.temperature("supply-dry-bulb", returned - 19 + 22 * low + dice.bell());
    if (dice.chance(0.4))
        gauge.temperature("discharge-line-temperature", 165 + 0.6 * (outdoor - 70) + 90 * low + 4 * dice.bell(),
                          "compressor");
    if (dice.chance(0.3))
        gauge.read("drier-drop", std::abs(0.4 + 0.3 * dice.bell()) * 5 / 9, "dK", 1, "dF", 0, "filter-drier");
}

void readElectrical(Telling& telling, Gauge& gauge)
{
    UnitLife& life = telling.life;
    Dice& dice = telling.dice;
    const double voltage = 236 + 3 * dice.bell();
    gauge.read("line-voltage", voltage, "V", 0, "V", 0);
    const double load = 0.62 + 0.03 * dirtOf(life) + 0.0025 * (*telling.visit.conditions.airTemperatureK - 288)
        - 0.12 * life.missingCharge;
    gauge.read("compressor-current", life.ratedAmps * (load + 0.015 * dice.bell()), "A", 1, "A", 1, "compressor");
    gauge.read("fan-current", 1.05 + 0.04 * dice.bell(), "A", 2, "A", 1, "fan-motor");
    if (dice.chance(0.35)) {
        const ZoneState* points = life.zone("contactor", "points");
        gauge.read("contactor-volt-drop", 0.06 + 0.10 * (points ? points->decay - 1 : 0) + 0.01 * dice.bell(), "V", 2,
                   "V", 2, "contactor");
    }
}

/// How much of a zone has rusted when it has decayed so far (1 sound .. 5 spent): 0.3 % at 2, 30 % at 5; ours.
double rustedShareAt(double decay)
{
    return std::min(0.003 * std::exp(1.535 * (decay - 2)), 0.6);
}

void readWithPowerOff(Telling& telling, Gauge& gauge)
{
    UnitLife& life = telling.life;
    Dice& dice = telling.dice;
    gauge.read("capacitor-compressor", life.capacitorUf * (1.008 - life.capacitorDrift + 0.002 * dice.bell()) * 1e-6,
               "uF", 1, "uF", 1, "run-capacitor");
    gauge.read("capacitor-fan", life.fanCapacitorUf * (1.01 - 0.8 * life.capacitorDrift + 0.003 * dice.bell()) * 1e-6,
               "uF", 2, "uF", 2, "run-capacitor");
    if (dice.chance(0.35))
        gauge.read("insulation-resistance", std::round(300 + 90 * dice.bell()) * 1e6, "Mohm", 0, "Mohm", 0,
                   "compressor");
    if (dice.chance(0.5))
        gauge.read("coil-face-open", std::clamp(1.0 - 0.11 * dirtOf(life), 0.4, 0.98), "pct", 0, "pct", 0,
                   "outdoor-coil");
    const ZoneState* bottom = life.zone("suction-accumulator", "bottom");
    if (life.scenario->gauged && bottom && telling.visit.reason == VisitReason::fall)
        gauge.read("wall-thickness", (life.wallMm + 0.02 * dice.bell()) * 1e-3, "mm", 2, "in", 3, "suction-accumulator",
                   bottom);
    if (life.scenario->gauged) {
        for (const char* where : {"crown", "bottom"}) {
            if (const ZoneState* zone = life.zone("suction-accumulator", where))
                gauge.read("rust-share", rustedShareAt(zone->decay), "pct", 1, "pct", 1, "suction-accumulator", zone);
        }
    }
}

void readHeating(Telling& telling, Gauge& gauge)
{
    Dice& dice = telling.dice;
    const double outdoor = fahrenheitOf(*telling.visit.conditions.airTemperatureK);
    const double returned = 68 + dice.bell();
    gauge.temperature("return-dry-bulb", returned);
    gauge.temperature("supply-dry-bulb", returned + 9.5 + 0.37 * outdoor + dice.bell()); // a maker's table, fitted
    if (dice.chance(0.6)) {
        gauge.read("defrost-time", std::round(60 * (4.2 + 0.8 * dice.bell()) / 6) * 6, "min", 1, "min", 1,
                   "defrost-control");
        gauge.temperature("defrost-end-temperature", 57 + 2 * dice.bell(), "defrost-control");
    }
    if (dice.chance(0.5))
        gauge.read("reversing-valve-rise", (2.6 + 0.6 * dice.bell()) * 5 / 9, "dK", 1, "dF", 0, "reversing-valve");
}

} // namespace

void tellReadings(Telling& telling)
{
    Gauge gauge(telling);
    const Visit& visit = telling.visit;
    Dice& dice = telling.dice;
    gauge.temperature("outdoor-dry-bulb", fahrenheitOf(*visit.conditions.airTemperatureK));
    if (visit.reason != VisitReason::callOut || telling.life.scenario->story == Story::capacitorFailure)
        readWithPowerOff(telling, gauge);
    if (visit.reason == VisitReason::fall) {
        gauge.temperature("shell-temperature", fahrenheitOf(*visit.conditions.airTemperatureK) + 17 + 3 * dice.bell(),
                          "compressor");
        if (dice.chance(0.4))
            gauge.read("heater-current", 0.17 + 0.006 * dice.bell(), "A", 2, "A", 2, "crankcase-heater");
    }
    switch (visit.conditions.running) {
    case Running::cooling:
        readElectrical(telling, gauge);
        return readCircuit(telling, gauge);
    case Running::heating:
        readElectrical(telling, gauge);
        return readHeating(telling, gauge);
    case Running::unknown:
    case Running::off:
    case Running::defrosting:
        return;
    }
}

} // namespace padside
