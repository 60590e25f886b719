// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/measured.h"

#include "core/air/moist_air.h"
#include "core/air/station_pressure.h"
#include "core/refrigerant/saturation.h"
#include "core/verdict/known_figures.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace padside {

namespace {

template <typename T> std::optional<T> held(const Result<T>& result)
{
    return result ? std::optional<T>(*result) : std::nullopt;
}

Taken taken(const Reading& reading)
{
    return {reading.kind, reading.partId, reading.value.si, reading.zoneId};
}

template <typename One, typename Other> bool ofSameThing(const One& one, const Other& other)
{
    return one.kind == other.kind && one.partId == other.partId && one.zoneId == other.zoneId;
}

/// A damaged record must not make sentences with numbers that are none; no quantity here comes near the bound.
bool isNoNumber(const Taken& reading)
{
    constexpr double beyondAnyReading = 1e15;
    return !(std::abs(reading.si) < beyondAnyReading);
}

constexpr std::array<std::string_view, 3> airReadings{"outdoor-dry-bulb", "return-dry-bulb", "return-wet-bulb"};

} // namespace

Measured::Measured(std::vector<Taken> taken, std::vector<Taken> before, const Unit& unit, double altitudeM,
                   const Conditions& conditions, const Catalogue& catalogue)
    : m_taken(std::move(taken))
    , m_before(std::move(before))
    , m_unit(unit)
    , m_conditions(conditions)
    , m_catalogue(catalogue)
    , m_refrigerant(catalogue.refrigerant(unit.refrigerant))
    , m_stationPressurePa(held(padside::stationPressurePa(altitudeM)))
{
    std::erase_if(m_taken, isNoNumber);
    std::erase_if(m_before, isNoNumber);
    if (const auto suction = value("suction-pressure"))
        m_boilingK = boilingK(*suction);
    if (const auto liquid = value("liquid-pressure"); liquid && m_refrigerant != nullptr && m_stationPressurePa)
        m_condensingK = held(bubbleTemperatureK(*m_refrigerant, *liquid + *m_stationPressurePa));
}

const Taken* Measured::find(std::string_view kind) const
{
    const auto found = std::ranges::find(m_taken, kind, &Taken::kind);
    return found == m_taken.end() ? nullptr : &*found;
}

std::optional<double> Measured::value(std::string_view kind) const
{
    const Taken* found = find(kind);
    return found != nullptr ? std::optional(found->si) : std::nullopt;
}

std::optional<double> Measured::before(const Taken& reading) const
{
    const auto found = std::ranges::find_if(m_before, [&](const Taken& one) { return ofSameThing(one, reading); });
    return found == m_before.end() ? std::nullopt : std::optional(found->si);
}

std::optional<double> Measured::plate(std::string_view item) const
{
    return plateOf(m_unit, item);
}

double Measured::limit(std::string_view code) const
{
    return limitOf(m_catalogue, code);
}

std::string Measured::sourceOf(std::string_view limitCode) const
{
    const ReadingLimit* found = m_catalogue.readingLimit(limitCode);
    return found != nullptr ? found->source : std::string();
}

bool Measured::mayBeCooling() const
{
    return m_conditions.running == Running::cooling || m_conditions.running == Running::unknown;
}

std::optional<double> Measured::outdoorK() const
{
    const auto measured = value("outdoor-dry-bulb");
    return measured ? measured : m_conditions.airTemperatureK;
}

std::optional<double> Measured::dewPointK() const
{
    if (!m_conditions.relativeHumidity || !outdoorK() || !m_stationPressurePa)
        return std::nullopt;
    // The humidity was noted with its own air temperature; the dew point stays the same when the air warms.
    AirReadings readings;
    readings.dryBulbK = m_conditions.airTemperatureK ? m_conditions.airTemperatureK : outdoorK();
    readings.relativeHumidity = m_conditions.relativeHumidity;
    const auto air = moistAir(readings, *m_stationPressurePa);
    return air ? std::optional(air->dewPointK) : std::nullopt;
}

std::optional<double> Measured::boilingK(double suctionGaugePa) const
{
    if (m_refrigerant == nullptr || !m_stationPressurePa)
        return std::nullopt;
    return held(dewTemperatureK(*m_refrigerant, suctionGaugePa + *m_stationPressurePa));
}

std::optional<double> Measured::superheatK() const
{
    const auto line = value("suction-line-temperature");
    const auto boiling = boilingK();
    return line && boiling ? std::optional(*line - *boiling) : std::nullopt;
}

std::optional<double> Measured::subcoolingK() const
{
    const auto line = value("liquid-line-temperature");
    const auto condensing = condensingK();
    return line && condensing ? std::optional(*condensing - *line) : std::nullopt;
}

std::vector<Taken> withAirAsFound(std::vector<Taken> asLeft, const std::vector<Taken>& asFound)
{
    for (const Taken& found : asFound) {
        if (std::ranges::find(airReadings, found.kind) != airReadings.end()
            && std::ranges::find(asLeft, found.kind, &Taken::kind) == asLeft.end())
            asLeft.push_back(found);
    }
    return asLeft;
}

Measured measuredAt(const UnitRecord& record, const Visit& visit, Phase phase, const Catalogue& catalogue)
{
    std::vector<Taken> found;
    std::vector<Taken> left;
    std::vector<const Reading*> last; // the last earlier one of each thing
    for (const Reading* reading : standingAmong(record.readings)) {
        if (reading->visitId == visit.id) {
            (reading->phase == Phase::asFound ? found : left).push_back(taken(*reading));
            continue;
        }
        if (reading->on > visit.on)
            continue;
        const auto same = std::ranges::find_if(last, [&](const Reading* one) { return ofSameThing(*one, *reading); });
        if (same != last.end())
            *same = reading;
        else
            last.push_back(reading);
    }
    std::vector<Taken> before;
    before.reserve(last.size());
    for (const Reading* reading : last)
        before.push_back(taken(*reading));
    if (phase == Phase::asLeft)
        found = withAirAsFound(std::move(left), found);
    return {std::move(found), std::move(before), record.unit, record.site.altitudeM, visit.conditions, catalogue};
}

} // namespace padside
